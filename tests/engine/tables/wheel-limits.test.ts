import { expect, test } from 'vitest';
import { buttLength, spokeThreads } from '../../../server/engine/tables/spoke-facts.ts';
import { smallestTensions, tensionSpread, tyreLoss } from '../../../server/engine/tables/wheel-limits.ts';

test('smallest tensions are those of JIS D 9301:2019: 400 N, 300 N up to 22 inch and on the slack side, none at 150 N', () => {
  expect(smallestTensions).toEqual({
    mean: { over22Inch: 400, upTo22Inch: 300 },
    slackSideMean: 300,
    single: 150,
  });
});

test('threads are rolled: each stands proud of its wire by two to four tenths (DIN 79012)', () => {
  for (const { major, minor, wire } of Object.values(spokeThreads)) {
    expect(major - wire).toBeGreaterThan(0.2);
    expect(major - wire).toBeLessThan(0.4);
    expect(minor).toBeLessThan(wire);
  }
});

test('thick ends of a butted spoke are the 71 mm of a research spoke, both together (Ford 2018)', () => {
  expect(2 * buttLength).toBe(71);
});

test('a 25 mm tyre at 8 bar took 7 % of the tension (Brandt, as quoted), inside the range for narrow tyres', () => {
  const narrow = tyreLoss.find(({ upTo }) => 25 <= upTo);
  expect(narrow?.lo).toBeLessThan(1 - 5300 / 5700);
  expect(1 - 5300 / 5700).toBeLessThan(narrow?.hi ?? 0);
  // Trade texts: 10 % within a side is good, 20 % acceptable (common practice).
  expect(tensionSpread).toEqual({ good: 0.1, acceptable: 0.2 });
});
