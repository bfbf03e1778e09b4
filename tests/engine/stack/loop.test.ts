import fc from 'fast-check';
import { expect, test } from 'vitest';
import { closeLoop } from '../../../server/engine/stack/loop.ts';
import { arbitraryTerms, term } from './terms.ts';

// The stack of the README: two end caps 14.03 ±0.02, two bearings 5 wide with 0/−0.12 (ISO 492, class Normal),
// a sleeve 62.06 ±0.01; nominal 100.12, mean 100.00 by hand.
const front = [
  term('end-cap.left', 14.03, -0.02, 0.02),
  term('bearing.left', 5, -0.12, 0),
  term('spacer.centre', 62.06, -0.01, 0.01),
  term('bearing.right', 5, -0.12, 0),
  term('end-cap.right', 14.03, -0.02, 0.02),
];

test('one-sided ring widths take the mean off the nominal', () => {
  const result = closeLoop(front);
  expect(result.nominal).toBeCloseTo(100.12, 9);
  expect(result.mean).toBeCloseTo(100, 9);
});

test('the worst case is the corner of all limits and the root-sum-square lies inside it', () => {
  const result = closeLoop(front);
  // By hand: lowest 14.01 + 4.88 + 62.05 + 4.88 + 14.01, highest 14.05 + 5 + 62.07 + 5 + 14.05.
  expect(result.worst[0]).toBeCloseTo(99.83, 9);
  expect(result.worst[1]).toBeCloseTo(100.17, 9);
  const band = Math.sqrt(2 * 0.02 ** 2 + 2 * 0.06 ** 2 + 0.01 ** 2);
  expect(result.rss[0]).toBeCloseTo(100 - band, 9);
  expect(result.rss[1]).toBeCloseTo(100 + band, 9);
  expect(result.sigma).toBeCloseTo(band / 3, 12);
});

test('each dimension has its share of the variance', () => {
  const result = closeLoop(front);
  const variance = 2 * 0.02 ** 2 + 2 * 0.06 ** 2 + 0.01 ** 2;
  expect(result.contributions.map(({ id }) => id)).toEqual(front.map(({ id }) => id));
  expect(result.contributions[1]?.share).toBeCloseTo(0.06 ** 2 / variance, 9);
  expect(result.contributions[2]?.share).toBeCloseTo(0.01 ** 2 / variance, 9);
});

test('a count stands for that many parts made apart', () => {
  // The same shims written one by one: an independent way to the same numbers.
  const shims = term('shim.left', 0.1, -0.01, 0.03, { count: 3, sign: -1 });
  const single = ['a', 'b', 'c'].map((id) => term(id, 0.1, -0.01, 0.03, { sign: -1 }));
  const [together, apart] = [closeLoop([...front, shims]), closeLoop([...front, ...single])];
  expect(together.nominal).toBeCloseTo(apart.nominal, 9);
  expect(together.mean).toBeCloseTo(apart.mean, 9);
  expect(together.worst[0]).toBeCloseTo(apart.worst[0], 9);
  expect(together.worst[1]).toBeCloseTo(apart.worst[1], 9);
  expect(together.sigma).toBeCloseTo(apart.sigma, 12);
  const sharesApart = apart.contributions.slice(5).reduce((sum, { share }) => sum + share, 0);
  expect(together.contributions[5]?.share).toBeCloseTo(sharesApart, 12);
  expect(together.contributions[5]?.halfTolerance).toBeCloseTo(0.06, 12);
});

test('a count of zero leaves the loop as it is', () => {
  const without = closeLoop(front);
  const result = closeLoop([...front, term('shim.none', 5, -1, 1, { count: 0 })]);
  expect(result.mean).toBe(without.mean);
  expect(result.worst).toEqual(without.worst);
  expect(result.contributions[5]?.share).toBe(0);
});

test('an exact loop has no spread and no shares', () => {
  const result = closeLoop([term('a', 10, 0, 0), term('b', 4, 0, 0, { sign: -1 })]);
  expect(result).toMatchObject({ mean: 6, worst: [6, 6], rss: [6, 6], sigma: 0 });
  expect(result.contributions.map(({ share }) => share)).toEqual([0, 0]);
});

test('a loop without terms is zero', () => {
  expect(closeLoop([])).toMatchObject({ nominal: 0, mean: 0, worst: [0, 0], contributions: [] });
});

test('the root-sum-square never leaves the worst case', () => {
  fc.assert(
    fc.property(arbitraryTerms, (terms) => {
      const { worst, rss, mean } = closeLoop(terms);
      expect(worst[0]).toBeLessThanOrEqual(rss[0] + 1e-9);
      expect(rss[0]).toBeLessThanOrEqual(mean + 1e-9);
      expect(mean).toBeLessThanOrEqual(rss[1] + 1e-9);
      expect(rss[1]).toBeLessThanOrEqual(worst[1] + 1e-9);
    }),
  );
});

test('the shares sum to one wherever something varies', () => {
  fc.assert(
    fc.property(arbitraryTerms, (terms) => {
      const total = closeLoop(terms).contributions.reduce((sum, { share }) => sum + share, 0);
      const varies = terms.some(({ count, lower, upper }) => count > 0 && upper > lower);
      expect(total).toBeCloseTo(varies ? 1 : 0, 9);
    }),
  );
});

test('the worst case is the least and the greatest over every corner', () => {
  fc.assert(
    fc.property(
      arbitraryTerms.filter((terms) => terms.length <= 6),
      (terms) => {
        const corners = terms.reduce<number[]>(
          (sums, { sign, count, nominal, lower, upper }) =>
            sums.flatMap((sum) => [lower, upper].map((d) => sum + sign * count * (nominal + d))),
          [0],
        );
        const { worst } = closeLoop(terms);
        expect(worst[0]).toBeCloseTo(Math.min(...corners), 6);
        expect(worst[1]).toBeCloseTo(Math.max(...corners), 6);
      },
    ),
  );
});
