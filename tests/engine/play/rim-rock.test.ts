import { expect, test } from 'vitest';
import { type RockedBearing, rimRock, roughRimRock } from '../../../server/engine/play/rim-rock.ts';

const bearing = (at: number, offset = 0, clearance = 0.012): RockedBearing => ({
  at,
  offset,
  reach: 0.16,
  centres: 0.16 - clearance / 2,
  radius: 10.75,
});

/**
 * The slow way: every ball of each bearing on a grid of tilt and shift, the rim's farthest place either way. A ball is
 * free while its groove centres are within reach of each other.
 */
function byGrid(bearings: readonly RockedBearing[], rim: number): number {
  const azimuths = Array.from({ length: 24 }, (_, k) => (k * Math.PI) / 12);
  const free = (x: number, y: number, tilt: number): boolean =>
    bearings.every((one) =>
      azimuths.every((azimuth) => {
        const cosine = Math.cos(azimuth);
        const along = one.offset - x + tilt * one.radius * cosine;
        const across = one.centres - (y + tilt * one.at) * cosine;
        return Math.hypot(along, across) <= one.reach;
      }),
    );
  let [least, most] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (let t = -60; t <= 60; t++) {
    for (let i = -60; i <= 60; i++) {
      for (let k = -6; k <= 6; k++) {
        const [tilt, x, y] = [t * 6e-6, i * 1e-3, k * 1e-3];
        const place = x + tilt * rim;
        if ((place < least || place > most) && free(x, y, tilt)) {
          least = Math.min(least, place);
          most = Math.max(most, place);
        }
      }
    }
  }
  return most - least;
}

test('the rock of the rim is what a grid over tilt and shift finds', () => {
  for (const bearings of [
    [bearing(-30), bearing(30)],
    [bearing(-30), bearing(30, -0.04)],
    [bearing(-20), bearing(45, 0.03, 0.02)],
  ]) {
    const exact = rimRock(bearings, 311).travel;
    const grid = byGrid(bearings, 311);
    // The grid can only miss, by at most a step or two of each of its directions.
    expect(exact).toBeGreaterThanOrEqual(grid - 1e-9);
    expect(exact - grid).toBeLessThan(0.006);
  }
});

test('the rough rule of radial clearance over span gives the order of the rock', () => {
  // Common practice: 2·G·R/L.
  const found = rimRock([bearing(-30), bearing(30)], 311).travel;
  const rough = roughRimRock(0.012, 311, 60);
  expect(found / rough).toBeGreaterThan(0.8);
  expect(found / rough).toBeLessThan(1.6);
});

test('a mirrored wheel rocks alike, and one without play does not rock', () => {
  const there = rimRock([bearing(-20, 0, 0.008), bearing(45, -0.03, 0.02)], 311).travel;
  const back = rimRock([bearing(-45, 0.03, 0.02), bearing(20, 0, 0.008)], 311).travel;
  expect(back).toBeCloseTo(there, 6);
  expect(rimRock([bearing(-30), bearing(30, -0.2)], 311).travel).toBe(0);
});
