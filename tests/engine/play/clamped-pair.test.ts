import fc from 'fast-check';
import { expect, test } from 'vitest';
import { angularBearing, axialBearing, axialHalfRange } from '../../../server/engine/contact/axial-load.ts';
import { mismatchForPlay, mismatchForPreload } from '../../../server/engine/play/adjusted-pair.ts';
import { type ClampedPairInput, clampedPair } from '../../../server/engine/play/clamped-pair.ts';
import { angularSide, deepGrooveSide, type PairSide } from '../../../server/engine/play/pair-side.ts';
import { type EnergyBearing, settle } from './least-energy.ts';
import { clamped, hub, smallRow, thin, thinRow } from './pairs.ts';

function energyOf({ bearing, flush, carries }: PairSide): EnergyBearing {
  const { reach, centres, stiffness, geometry } = bearing;
  return { reach, centres, stiffness: stiffness * geometry.count, flush, carries };
}

function expectLeastEnergy(input: ClampedPairInput): void {
  const brute = settle({ ...input, left: energyOf(input.left), right: energyOf(input.right) });
  const found = clampedPair(input);
  expect(Math.abs(found.ballLoad - brute.ballLoad)).toBeLessThan(1 + 0.003 * brute.ballLoad);
  expect(Math.abs(found.spacerLoad - brute.spacerLoad)).toBeLessThan(1 + 0.003 * brute.spacerLoad);
}

const strong = Number.POSITIVE_INFINITY;

test('a short spacer loads the balls as the least energy of the same contacts has it', () => {
  for (const mismatch of [-0.06, -0.1, -0.15, -0.2, -0.3]) expectLeastEnergy({ ...hub, mismatch });
});

test('a long spacer held by its grips loads the balls as the least energy has it', () => {
  for (const mismatch of [0.14, 0.18, 0.25]) {
    expectLeastEnergy({
      ...hub,
      mismatch,
      left: deepGrooveSide(thin(), strong),
      right: deepGrooveSide(thin(), strong),
    });
  }
});

test('two unlike bearings, one of them without clearance, settle where the energy is least', () => {
  expectLeastEnergy({
    ...hub,
    mismatch: -0.09,
    left: deepGrooveSide(axialBearing(smallRow, 0.006), strong),
    right: deepGrooveSide(thin(-0.002), strong),
  });
});

test('angular pairs back to back and face to face settle where the energy is least', () => {
  const angle = (15 * Math.PI) / 180;
  const side = (carries: 'inward' | 'outward', loss: number) =>
    angularSide(angularBearing(thinRow, angle, loss), angle, carries, strong);
  expectLeastEnergy({ ...hub, mismatch: -0.02, left: side('inward', 0.004), right: side('inward', 0) });
  expectLeastEnergy({ ...hub, mismatch: 0.06, left: side('outward', 0), right: side('outward', 0.004) });
});

test('without a mismatch and without a clamp the play is the axial clearance of one bearing', () => {
  const a = axialHalfRange(thin());
  expect(clamped({ clampForce: 0 }).playUnclamped).toBeCloseTo(2 * a, 12);
  expect(clamped({ clampForce: 0, mismatch: -0.03 }).playUnclamped).toBeCloseTo(2 * a - 0.03, 12);
  expect(clamped({ clampForce: 0, mismatch: 0.03 }).playUnclamped).toBeCloseTo(2 * a - 0.03, 12);
  expect(clamped({ clampForce: 0, mismatch: 0.03 }).playShoulders).toBeCloseTo(2 * a + 0.03, 12);
});

test('clamped and unclamped agree at zero force', () => {
  fc.assert(
    fc.property(
      fc.double({ min: -0.2, max: 0.2, noNaN: true }),
      fc.double({ min: -0.005, max: 0.03, noNaN: true }),
      (mismatch, clearance) => {
        const side = deepGrooveSide(thin(clearance), 2000);
        const found = clamped({ clampForce: 0, mismatch, left: side, right: side });
        expect(found.playClampedSigned).toBe(found.playUnclamped);
        expect(found.clampShortening * 1e6).toBeCloseTo(found.spacerLoad * hub.spacerCompliance * 1e6, 9);
        // No clamp presses the inner rings of a short spacer together: nothing reaches the balls.
        if (mismatch < 0) expect(found.ballLoad).toBe(0);
      },
    ),
    { seed: 11, numRuns: 200 },
  );
});

test('a mirrored hub gives mirrored results', () => {
  const [one, other] = [
    deepGrooveSide(axialBearing(smallRow, 0.006), 900),
    deepGrooveSide(axialBearing(thinRow, 0.012), 1500),
  ];
  for (const mismatch of [-0.15, -0.05, 0.02, 0.3]) {
    const there = clamped({ left: one, right: other, mismatch });
    const back = clamped({ left: other, right: one, mismatch });
    expect(back.playUnclamped).toBeCloseTo(there.playUnclamped, 12);
    expect(back.playClamped).toBeCloseTo(there.playClamped, 12);
    expect(back.ballLoad).toBeCloseTo(there.ballLoad, 3);
    expect(back.left.contactStress).toBeCloseTo(there.right.contactStress, 3);
    const mirrored = { left: 'right', right: 'left', no: 'no', either: 'either' } as const;
    expect(back.slid).toBe(mirrored[there.slid]);
  }
});

test('the balls carry no more than the clamp, and all of it where the spacer is not reached', () => {
  const far = clamped({ mismatch: -0.5 });
  expect(far.spacerReached).toBe(false);
  expect(far.ballLoad).toBe(hub.clampForce);
  expect(far.spacerLoad).toBe(0);
  expect(far.clampShortening).toBe(0);
  const near = clamped({ mismatch: -0.12 });
  expect(near.spacerReached).toBe(true);
  expect(near.ballLoad + near.spacerLoad).toBeCloseTo(hub.clampForce, 6);
});

test('threads hold what a clamp could not', () => {
  const held = clamped({ mismatch: -0.3, clampForce: 500, heldBy: 'threads' });
  expect(held.ballLoad).toBeGreaterThan(500);
  expect(held.spacerLoad).toBeLessThan(0);
});

test('a long spacer beyond the grip slides the weaker ring and keeps its grip on the balls', () => {
  const found = clamped({
    mismatch: 0.3,
    left: deepGrooveSide(thin(), 700),
    right: deepGrooveSide(thin(), 900),
  });
  expect(found.ballLoad).toBe(700);
  expect(found.slid).toBe('left');
  expect(found.loadedBy).toBe('long');
  expect(found.spacerLoad).toBe(hub.clampForce + 700);
  expect(clamped({ mismatch: 0.6 }).slid).toBe('either');
});

test('a bearing that only its spacer locates is squeezed by the clamp up to its grip', () => {
  const loose = deepGrooveSide(thin(-0.001), 2000, 150);
  const left = deepGrooveSide(thin(-0.001), 2000);
  const found = clamped({ mismatch: 0, clampForce: 12_000, left, right: loose });
  expect(found.loadedBy).toBe('short');
  expect(found.ballLoad).toBe(150);
  expect(found.slid).toBe('right');
});

test('more clamp never gives more play on the short side, and first gives more on the long side', () => {
  const plays = [0, 1000, 3000, 6000, 9000].map((clampForce) => clamped({ clampForce, mismatch: -0.01 }));
  for (const [i, found] of plays.slice(1).entries()) {
    expect(found.playClamped).toBeLessThanOrEqual(plays[i]?.playClamped ?? 0);
  }
  expect(clamped({ clampForce: 1000, mismatch: 0.03 }).playClamped).toBeGreaterThan(
    clamped({ clampForce: 0, mismatch: 0.03 }).playClamped,
  );
});

test('the load of a wanted preload is that preload', () => {
  const mismatch = mismatchForPreload(hub.left, hub.right, 60, hub.housingCompliance);
  const found = clamped({ mismatch, clampForce: 0, heldBy: 'threads', spacerCompliance: 0 });
  expect(found.ballLoad).toBeCloseTo(60, 3);
  const set = mismatchForPlay(hub.left, hub.right, 0.02);
  expect(clamped({ mismatch: set, clampForce: 0 }).playUnclamped).toBeCloseTo(0.02, 12);
});

test('units scale: twice the size at four times the force gives twice the play and the same stress', () => {
  const scale = (row: typeof thinRow) => ({ ...row, diameter: 2 * row.diameter, pitch: 2 * row.pitch });
  const small = clamped({ mismatch: -0.12 });
  const side = deepGrooveSide(axialBearing(scale(thinRow), 0.02), 8000);
  const big = clamped({
    left: side,
    right: side,
    mismatch: -0.24,
    clampForce: 4 * hub.clampForce,
    spacerCompliance: hub.spacerCompliance / 2,
    housingCompliance: hub.housingCompliance / 2,
  });
  expect(big.playUnclamped).toBeCloseTo(2 * small.playUnclamped, 10);
  expect(big.ballLoad / small.ballLoad).toBeCloseTo(4, 4);
  expect(big.left.contactStress / small.left.contactStress).toBeCloseTo(1, 4);
});
