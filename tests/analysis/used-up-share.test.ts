import { expect, test } from 'vitest';
import { usedUpShare } from '../../server/analysis/mechanics/used-up-share.ts';
import { asWritten } from '../support/analyze-text.ts';
import { pressByHand } from '../support/press-by-hand.ts';
import { sanderling } from '../support/sanderling.ts';

const shareOf = (text: string, temperature = 20): number => {
  const [bearing] = asWritten(text).mechanics('drawn', { temperature, clampForce: null }).bearings;
  return (bearing && usedUpShare(bearing)) ?? Number.NaN;
};

/** Tail of the normal distribution below z; Abramowitz and Stegun, Handbook of Mathematical Functions, 26.2.18, error under 2.5e-4. */
const below = (z: number): number => {
  const x = Math.abs(z);
  const tail = 0.5 * (1 + 0.196854 * x + 0.115194 * x ** 2 + 0.000344 * x ** 3 + 0.019527 * x ** 4) ** -4;
  return z < 0 ? tail : 1 - tail;
};

test('the share of builds without clearance is the tail of the normal spread of what makes it', () => {
  // An axle that is loose in every build leaves the seat alone to take clearance.
  const text = sanderling().replace('17 h6', '17 d6');
  // N7 −7/−28, ring 0/−9, group N 3 to 18 µm (ISO 286-2, ISO 492, ISO 5753-1); limits at ±3σ.
  const ring = { inner: 21.5 + 2.778, outer: 26, E: 208_000, nu: 0.3 };
  const wall = { inner: 26, outer: 34, E: 68_900, nu: 0.33 };
  const factor = pressByHand(ring, wall, 1).innermostShrinks * (26 / 29);
  const mean = 10.5 - 13 * factor;
  const sigma = Math.hypot(15 / 6, (factor * 21) / 6, (factor * 9) / 6);
  expect(Math.abs(shareOf(text) - below(-mean / sigma))).toBeLessThan(0.01);
});

test('cold leaves more builds without clearance, a larger group fewer', () => {
  const bench = shareOf(sanderling());
  expect(shareOf(sanderling(), -15)).toBeGreaterThan(bench);
  expect(shareOf(sanderling({ code: '6803-2RS C3' }))).toBeLessThan(bench);
});
