import { expect, test } from 'vitest';
import { geometryRange } from '../../server/analysis/mechanics/geometry-range.ts';
import { isWorked } from '../../server/analysis/mechanics/pair-mechanics.ts';
import { pairRange } from '../../server/analysis/mechanics/pair-range.ts';
import { asWritten } from '../support/analyze-text.ts';
import { pressByHand } from '../support/press-by-hand.ts';
import { sanderling } from '../support/sanderling.ts';

const known = ', balls: 13 × 2.778, groove: 0.52';
/** A hub round a bearing of 25 × 37 × 7, whose balls no table has. */
const estimated = (inside = '') =>
  sanderling({ code: '6805-2RS', bore: '37 N7', outside: '28', clamp: '3 kN' })
    .replaceAll(known, inside)
    .replace('outside: 34', 'outside: 46')
    .replace('diameter: 17 h6', 'diameter: 25 h6')
    .replace('inside: 17.1', 'inside: 25.1');

function worked(text: string) {
  const { bearings, pairs } = asWritten(text).mechanics('drawn');
  const [bearing] = bearings;
  const [pair] = pairs;
  if (!bearing || !pair || !isWorked(pair)) throw new Error('the hub could not be worked out');
  return { bearing, pair };
}

test('balls and grooves that are known leave no range', () => {
  const { bearing, pair } = worked(sanderling({ clamp: '5 kN' }));
  expect(geometryRange(bearing)).toBeNull();
  expect(pairRange(pair)).toBeNull();
});

test('balls that are known and grooves that are not give the axial clearance of grooves at both ends', () => {
  const { bearing } = worked(sanderling().replaceAll(', groove: 0.52', ''));
  const ring = { inner: 21.5 + 2.778, outer: 26, E: 208_000, nu: 0.3 };
  const wall = { inner: 26, outer: 34, E: 68_900, nu: 0.33 };
  const G = 0.0105 - pressByHand(ring, wall, 0.013 * (26 / 29)).innermostShrinks;
  // Grooves of 0.52 and 0.53 of the ball are what ISO 281 rates deep groove bearings with: fi + fe − 1 = 0.05.
  // Published pairs of balls and factors give 0.030 as the closest (NSK E1102e, axial clearance; NMB, ball sizes).
  // Ga = √(4·m0·G − G²): NSK E1102e, axial clearance of deep groove bearings.
  const along = (openness: number) => Math.sqrt(4 * openness * 2.778 * G - G * G);
  expect(geometryRange(bearing)?.axial?.lo).toBeCloseTo(along(0.03), 7);
  expect(geometryRange(bearing)?.axial?.hi).toBeCloseTo(along(0.05), 7);
});

test('what is taken for the balls lies within what they may be, and more is not known when nothing is', () => {
  const { bearing, pair } = worked(estimated());
  const axial = geometryRange(bearing)?.axial;
  expect(axial?.lo).toBeLessThan(bearing.axial ?? 0);
  expect(bearing.axial ?? 0).toBeLessThan(axial?.hi ?? 0);
  const range = pairRange(pair);
  expect(range?.playUnclamped.lo).toBeLessThan(pair.result.playUnclamped);
  expect(pair.result.playUnclamped).toBeLessThan(range?.playUnclamped.hi ?? 0);
  const half = worked(estimated(', balls: 16 × 3.36'));
  const [wide, narrow] = [axial, geometryRange(half.bearing)?.axial].map(
    (ends) => (ends?.hi ?? 0) - (ends?.lo ?? 0),
  );
  expect(narrow).toBeLessThan(wide ?? 0);
});

test('a hub whose bearings are known to be what an end of the range takes has the play of that end', () => {
  // Grooves of 0.515 all round are fi + fe − 1 = 0.03, of 0.525 are 0.05.
  const { pair } = worked(sanderling({ clamp: '3 kN' }).replaceAll(', groove: 0.52', ''));
  const at = (groove: string) =>
    worked(sanderling({ clamp: '3 kN' }).replaceAll('groove: 0.52', `groove: ${groove}`)).pair.result;
  const range = pairRange(pair);
  expect(range?.playUnclamped.lo).toBeCloseTo(at('0.515').playUnclamped, 8);
  expect(range?.playUnclamped.hi).toBeCloseTo(at('0.525').playUnclamped, 8);
  expect(range?.ballLoad.hi).toBeCloseTo(Math.max(at('0.515').ballLoad, at('0.525').ballLoad), 6);
});

test('what is set by hand, or loaded by a whole line, has no range of its own', () => {
  const { pair } = worked(estimated());
  expect(pairRange(pair)).not.toBeNull();
  const setting = { kind: 'adjuster' } as unknown as NonNullable<typeof pair.setting>;
  expect(pairRange({ ...pair, setting })).toBeNull();
  expect(pairRange({ ...pair, ofLine: true })).toBeNull();
});
