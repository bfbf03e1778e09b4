import { expect, test } from 'vitest';
import { erfc, normalBelow, normalOutside } from '../../../server/engine/stack/normal.ts';

// Abramowitz and Stegun, Handbook of Mathematical Functions, table 7.1 (erf) and 26.1 (normal), ten digits or fewer.
test.each([
  [0, 0],
  [0.1, 0.112462916],
  [0.5, 0.5204998778],
  [1, 0.8427007929],
  [1.5, 0.9661051465],
  [1.9, 0.9927904292],
  [2, 0.995322265],
])('erf of %d is the tabled one', (x, erf) => {
  expect(1 - erfc(x)).toBeCloseTo(erf, 9);
  expect(1 - erfc(-x)).toBeCloseTo(-erf, 9);
});

// Normal tail beyond z, the same handbook's table 26.1 and 26.2: Q(3), Q(4), Q(5), Q(6).
test.each([
  [3, 1.349898e-3],
  [4, 3.167124e-5],
  [5, 2.866516e-7],
  [6, 9.865876e-10],
])('the tail beyond %d standard deviations keeps its accuracy', (z, tail) => {
  expect(normalBelow(-z) / tail).toBeCloseTo(1, 5);
  expect(1 - normalBelow(z)).toBeCloseTo(tail, 9);
});

test('the two ways of computing meet where one takes over', () => {
  expect(erfc(2 - 1e-12)).toBeCloseTo(erfc(2 + 1e-12), 12);
});

test('both tails outside the limits are added, and no spread gives all or none', () => {
  expect(normalOutside(0, 1, [-3, 3])).toBeCloseTo(0.0026998, 6);
  expect(normalOutside(0, 1, [-3, 1e9])).toBeCloseTo(0.0013499, 6);
  expect(normalOutside(5, 0, [4, 6])).toBe(0);
  expect(normalOutside(5, 0, [5, 6])).toBe(0);
  expect(normalOutside(5, 0, [5.001, 6])).toBe(1);
});
