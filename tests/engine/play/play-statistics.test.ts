import { expect, test } from 'vitest';
import { angularBearing, axialBearing, offsetAtForce } from '../../../server/engine/contact/axial-load.ts';
import type { VaryingSide } from '../../../server/engine/play/build-clearance.ts';
import { buildShares, playHistogram } from '../../../server/engine/play/build-shares.ts';
import { clampedPair } from '../../../server/engine/play/clamped-pair.ts';
import { angularSide, deepGrooveSide, type PairSide } from '../../../server/engine/play/pair-side.ts';
import { buildPairs, type VaryingPair } from '../../../server/engine/play/play-statistics.ts';
import { spacerForYield } from '../../../server/engine/play/spacer-for-yield.ts';
import { smoothingFactor } from '../../../server/engine/seats/smoothing.ts';
import { normalOutside } from '../../../server/engine/stack/normal.ts';
import { hub, smallRow, thin, thinRow } from './pairs.ts';

const meanClearance = 0.018 - 0.45 * smoothingFactor(28, 'turned') * 0.013;

const side = (name: string): VaryingSide => ({
  side: deepGrooveSide(thin(meanClearance), 2000),
  clearance: { id: `${name}.clearance`, mean: 0.018, sigma: 0.014 / 6 },
  outer: {
    mean: 0.013,
    parts: [
      { id: `${name}.outside`, weight: 1, sigma: 0.009 / 6 },
      { id: `${name}.seat`, weight: -1, sigma: 0.021 / 6 },
    ],
    diameter: 28,
    finish: 'turned',
    lossFactor: 0.45,
  },
  inner: null,
  thermalLoss: 0,
});

const pair: VaryingPair = {
  ...hub,
  left: side('left'),
  right: side('right'),
  mismatch: -0.02,
  lengths: [
    { id: 'spacer', weight: 1, sigma: 0.02 / 3 },
    { id: 'shoulders', weight: -1, sigma: 0.04 / 3 },
  ],
};

test('every build is what the exact chain gives for its own clearances and lengths', () => {
  const builds = buildPairs({ ...pair, mismatch: -0.05 }, { builds: 300, seed: 5 });
  // One build at a time: with all sigmas but the lengths' at zero the clearance is known without drawing.
  const fixed = (one: VaryingSide): VaryingSide => ({
    ...one,
    clearance: { ...one.clearance, sigma: 0 },
    outer: one.outer && { ...one.outer, parts: [] },
  });
  const exactPair = { ...pair, mismatch: -0.05, left: fixed(pair.left), right: fixed(pair.right) };
  const lengthsOnly = buildPairs(exactPair, { builds: 300, seed: 5 });
  let loaded = 0;
  for (let i = 0; i < 300; i++) {
    const exact = clampedPair({
      ...hub,
      left: pair.left.side,
      right: pair.right.side,
      mismatch: lengthsOnly.mismatch[i] as number,
    });
    expect(Math.abs(exact.playUnclamped - (lengthsOnly.playUnclamped[i] as number))).toBeLessThan(1e-9);
    expect(Math.abs(exact.playClampedSigned - (lengthsOnly.playClamped[i] as number))).toBeLessThan(1e-9);
    expect(Math.abs(exact.ballLoad - (lengthsOnly.ballLoad[i] as number))).toBeLessThan(0.01);
    if (exact.ballLoad > 0) loaded++;
  }
  expect(loaded).toBeGreaterThan(30);
  expect(builds.ballLoad.some((load) => load > 0)).toBe(true);
});

test('unlike bearings, angular pairs and weak grips are built as the exact chain has them', () => {
  const angle = (15 * Math.PI) / 180;
  const angular = angularSide(angularBearing(thinRow, angle, 0.004), angle, 'inward', 2000);
  const sides: readonly (readonly [PairSide, PairSide, number])[] = [
    [deepGrooveSide(thin(0.012), 300), deepGrooveSide(axialBearing(smallRow, 0.005), 200), 0.11],
    [deepGrooveSide(thin(-0.001), 300), deepGrooveSide(axialBearing(smallRow, 0.005), 200, 100), -0.02],
    [angular, angular, 0],
  ];
  for (const [left, right, mismatch] of sides) {
    const builds = buildPairs(
      { ...pair, left: still(left), right: still(right), mismatch },
      { builds: 200, seed: 3 },
    );
    expect(new Set(builds.ballLoad).size).toBeGreaterThan(1);
    for (let i = 0; i < 200; i++) {
      const exact = clampedPair({ ...hub, left, right, mismatch: builds.mismatch[i] as number });
      expect(Math.abs(exact.playUnclamped - (builds.playUnclamped[i] as number))).toBeLessThan(1e-9);
      expect(Math.abs(exact.playClampedSigned - (builds.playClamped[i] as number))).toBeLessThan(1e-9);
      expect(Math.abs(exact.ballLoad - (builds.ballLoad[i] as number))).toBeLessThan(0.01);
    }
  }
});

/** A side whose clearance does not stray. */
function still(side: PairSide): VaryingSide {
  const mean = 2 * (side.bearing.reach - side.bearing.centres);
  return { side, clearance: { id: 'clearance', mean, sigma: 0 }, outer: null, inner: null, thermalLoss: 0 };
}

test('holding the ball stiffness at the mean clearance moves an offset by less than half a micrometre', () => {
  // The one approximation of the builds: the stiffness belongs to the free contact angle of the mean clearance.
  const mean = thin(0.01);
  for (const clearance of [0.002, 0.006, 0.014, 0.02]) {
    const exact = axialBearing(thinRow, clearance);
    const built = { ...exact, stiffness: mean.stiffness };
    for (const force of [20, 200, 1000]) {
      expect(Math.abs(offsetAtForce(exact, force) - offsetAtForce(built, force))).toBeLessThan(0.0005);
    }
  }
});

test('the share of loaded builds is the normal tail where only the lengths vary', () => {
  const fixed = (one: VaryingSide): VaryingSide => ({
    ...one,
    clearance: { ...one.clearance, sigma: 0 },
    outer: one.outer && { ...one.outer, parts: [] },
  });
  const builds = buildPairs({ ...pair, left: fixed(pair.left), right: fixed(pair.right) });
  const { loaded } = buildShares(builds, 1);
  const exact = clampedPair({
    ...hub,
    left: pair.left.side,
    right: pair.right.side,
    mismatch: pair.mismatch,
  });
  const sigma = Math.hypot(0.02 / 3, 0.04 / 3);
  // Loaded where δ falls below −(travel) + shortening: a tail of one normal quantity.
  const tail = normalOutside(exact.playClampedSigned, sigma, [0, Number.POSITIVE_INFINITY]);
  expect(Math.abs(loaded - tail)).toBeLessThan(4 * Math.sqrt((tail * (1 - tail)) / 20_000));
});

test('the seats that come out loose are the normal tail of the fit', () => {
  const { looseLeft, looseRight } = buildPairs(pair);
  const tail = normalOutside(0.013, Math.hypot(0.009, 0.021) / 6, [0, Number.POSITIVE_INFINITY]);
  for (const loose of [looseLeft, looseRight]) {
    expect(Math.abs(loose - tail)).toBeLessThan(5 * Math.sqrt(tail / 20_000));
  }
});

test('contributions to the play add up to nearly all of it and name the widest dimension first', () => {
  const { contributions } = buildPairs(pair);
  expect(contributions[0]?.id).toBe('shoulders');
  const sum = contributions.reduce((total, { share }) => total + share, 0);
  expect(sum).toBeGreaterThan(0.95);
  expect(sum).toBeLessThan(1.02);
});

test('the same seed builds the same hubs, and no spread gives one play', () => {
  expect(buildPairs(pair).playClamped).toEqual(buildPairs(pair).playClamped);
  const none = buildPairs({ ...pair, lengths: [] }, { builds: 100, seed: 2 });
  const still = new Set(none.mismatch);
  expect(still.size).toBe(1);
});

test('the spacer to write gives the yield it promises when those hubs are built', () => {
  const shortening = pair.clampForce * pair.spacerCompliance;
  const limits = { least: 0, most: 0.06 };
  for (const side of ['short', 'long'] as const) {
    const advice = spacerForYield(buildPairs(pair), shortening, { ...limits, yield: 0.85, side });
    const written = buildPairs({ ...pair, mismatch: pair.mismatch + advice.change });
    const right = written.playClamped.filter((play) => limits.least <= play && play <= limits.most).length;
    expect(right / 20_000).toBeCloseTo(advice.yield, 3);
    // A tenth of a millimetre to either side is worse.
    for (const off of [-0.1, 0.1]) {
      const worse = buildPairs({ ...pair, mismatch: pair.mismatch + advice.change + off });
      const share = worse.playClamped.filter((play) => limits.least <= play && play <= limits.most).length;
      expect(share).toBeLessThan(right);
    }
  }
});

test('a yield that no length gives has no range, and an open pair has no answer', () => {
  const shortening = pair.clampForce * pair.spacerCompliance;
  const builds = buildPairs(pair);
  const wanted = { least: 0, most: 0.005, yield: 0.99, side: 'short' } as const;
  expect(spacerForYield(builds, shortening, wanted).range).toBeNull();
  expect(spacerForYield({ ...builds, closes: 'neither' }, shortening, wanted).yield).toBe(0);
});

test('a histogram counts every build once', () => {
  const histogram = playHistogram(buildPairs(pair).playClamped, 24);
  expect(histogram.counts.reduce((sum, count) => sum + count, 0)).toBe(20_000);
  expect(histogram.counts.length).toBe(24);
});
