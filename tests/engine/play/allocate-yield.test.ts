import { expect, test } from 'vitest';
import { allocateYield } from '../../../server/engine/play/allocate-yield.ts';
import { bestYield } from '../../../server/engine/play/best-yield.ts';
import type { VaryingSide } from '../../../server/engine/play/build-clearance.ts';
import { deepGrooveSide } from '../../../server/engine/play/pair-side.ts';
import { buildPairs, type VaryingPair } from '../../../server/engine/play/play-statistics.ts';
import { straying } from '../../../server/engine/play/vary.ts';
import { widestSpacer } from '../../../server/engine/play/widest-spacer.ts';
import { hub, thin, thinRow } from './pairs.ts';

/** Two bearings with much clearance that leave 0.2 mm of travel: play is then δ and a constant, without a bend. */
const clearance = 0.03;
const roomy = (sigma: number, batch?: string): VaryingSide => ({
  side: deepGrooveSide(thin(clearance), 2000),
  clearance: { id: `clearance ${batch ?? ''}`, mean: clearance, sigma, batch },
  outer: null,
  inner: null,
  thermalLoss: 0,
});

const linear: VaryingPair = {
  ...hub,
  left: roomy(0),
  right: roomy(0),
  mismatch: 0,
  lengths: [
    { id: 'spacer', weight: 1, sigma: 0.01 / 3 },
    { id: 'shoulders', weight: -1, sigma: 0.02 / 3 },
    { id: 'bearing.left', weight: -1, sigma: 0.004 / 3 },
  ],
};
const isFree = (id: string): boolean => !id.startsWith('bearing');

/** Share of a normal quantity inside ±z, from a printed table (Abramowitz and Stegun, table 26.1). */
const insideTable: readonly (readonly [z: number, share: number])[] = [
  [1, 0.682689],
  [2, 0.9545],
  [3, 0.9973],
];

test('where play is a sum of lengths the best yield is the normal integral over the limits', () => {
  for (const [z, share] of insideTable) {
    const sigma = Math.hypot(0.01, 0.02, 0.004) / 3;
    const found = bestYield(linear, { mostPlay: 2 * z * sigma, share: 0.99 });
    expect(Math.abs(found.yield - share)).toBeLessThan(0.007);
  }
});

test('tolerances in proportion and of equal effect come to what the sum of squares leaves them', () => {
  // 99.73 % lie inside ±3σ: the half tolerances together may be half the play allowed, the fixed one taken off.
  const mostPlay = 0.03;
  const left = Math.sqrt((mostPlay / 2) ** 2 - 0.004 ** 2);
  const { proposals } = allocateYield(linear, isFree, { mostPlay, share: 0.9973 });
  const [proportional, equal] = proposals;
  const factor = left / Math.hypot(0.01, 0.02);
  const close = (got: number | undefined, wanted: number) => {
    // A micrometre is rounded down, and a few builds in 20 000 decide.
    expect(got).toBeLessThan(wanted + 0.0004);
    expect(got).toBeGreaterThan(wanted - 0.0017);
  };
  close(proportional?.tolerances.find(({ id }) => id === 'spacer')?.to, 0.01 * factor);
  close(proportional?.tolerances.find(({ id }) => id === 'shoulders')?.to, 0.02 * factor);
  for (const { to } of equal?.tolerances ?? []) close(to, left / Math.SQRT2);
  expect(equal?.tolerances.map(({ id }) => id)).toEqual(['spacer', 'shoulders']);
  for (const proposal of proposals) expect(proposal.yield).toBeGreaterThanOrEqual(0.9973);
});

test('what bought parts alone use up is said, and nothing is proposed', () => {
  // ±0.04 in a window of ±0.02: half of 3σ is 1.5σ, which 86.64 % keep (same table).
  const coarse = straying(linear, ({ id, sigma }) => (isFree(id) ? sigma : 0.04 / 3));
  const { ceiling, proposals } = allocateYield(coarse, isFree, { mostPlay: 0.04, share: 0.95 });
  expect(proposals).toEqual([]);
  expect(Math.abs(ceiling - 0.8664)).toBeLessThan(0.008);
});

test('the best yield agrees with a sweep of lengths over hubs drawn another way', () => {
  const pair: VaryingPair = { ...linear, left: roomy(0.002), right: roomy(0.002) };
  const mostPlay = 0.05;
  const found = bestYield(pair, { mostPlay, share: 0.99 });
  const m0 = thinRow.diameter * (thinRow.innerConformity + thinRow.outerConformity - 1);
  const draw = boxMuller(20_261_125);
  const hubs = Array.from({ length: 20_000 }, () => {
    const [one, other] = [clearance + 0.002 * draw(), clearance + 0.002 * draw()];
    const axial = [one, other].map((g) => Math.sqrt(4 * m0 * g - g * g));
    const stray = (0.01 * draw() - 0.02 * draw() - 0.004 * draw()) / 3;
    return { travel: ((axial[0] ?? 0) + (axial[1] ?? 0)) / 2, own: Math.min(...axial), stray };
  });
  const yieldAt = (delta: number): number =>
    hubs.filter(({ travel, own, stray }) => {
      const play = Math.min(travel - Math.abs(delta + stray), own);
      return 0 <= play && play <= mostPlay;
    }).length / hubs.length;
  const shortening = pair.clampForce * pair.spacerCompliance;
  let best = 0;
  for (let delta = -0.3; delta <= 0; delta += 0.002) best = Math.max(best, yieldAt(delta));
  expect(Math.abs(found.yield - best)).toBeLessThan(0.01);
  expect(Math.abs(found.yield - yieldAt(found.change - shortening))).toBeLessThan(0.01);
});

test('wider tolerances never give a better best yield', () => {
  const pair: VaryingPair = { ...linear, left: roomy(0.002), right: roomy(0.002) };
  const yields = [0.25, 0.5, 1, 2, 4].map(
    (factor) =>
      bestYield(
        straying(pair, ({ sigma }) => factor * sigma),
        { mostPlay: 0.05, share: 0.99 },
      ).yield,
  );
  for (const [at, next] of yields.slice(1).entries()) expect(next).toBeLessThan((yields[at] ?? 0) + 0.003);
  expect(yields[0]).toBeGreaterThan((yields.at(-1) ?? 1) + 0.2);
});

test('the widest usual spacer is the last that the sum of squares allows', () => {
  // Half the play allowed is 0.025; with 0.02 and 0.004 of the others there is room for √(0.025² − 0.0204²) = 0.0145.
  expect(widestSpacer(linear, 'spacer', { mostPlay: 0.05, share: 0.9973 })).toBe(0.01);
  expect(widestSpacer(linear, 'spacer', { mostPlay: 0.036, share: 0.9973 })).toBeNull();
});

test('bearings that are alike stray together: the spread of two is their sum and no longer its root', () => {
  const spread = (batch: string | undefined): number => {
    const sides = { left: roomy(0.0005, batch), right: roomy(0.0005, batch) };
    const { travel } = buildPairs({ ...linear, ...sides, lengths: [] });
    const mean = travel.reduce((sum, x) => sum + x, 0) / travel.length;
    return Math.sqrt(travel.reduce((sum, x) => sum + (x - mean) ** 2, 0) / travel.length);
  };
  expect(spread('one code') / spread(undefined)).toBeCloseTo(Math.SQRT2, 1);
});

/** Normal numbers by another generator and another method than those of the engine. */
function boxMuller(seed: number): () => number {
  let state = seed;
  const unit = (): number => {
    state = (state * 48_271) % 2_147_483_647;
    return state / 2_147_483_647;
  };
  return () => Math.sqrt(-2 * Math.log(unit())) * Math.cos(2 * Math.PI * unit());
}
