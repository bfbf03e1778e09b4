import { expect, test } from 'vitest';
import { standardNormals } from '../../../server/engine/base/random.ts';
import { axialBearing } from '../../../server/engine/contact/axial-load.ts';
import {
  type ClampedLine,
  type ClampedLineInput,
  clampedLine,
} from '../../../server/engine/play/clamped-line.ts';
import { clamped, hub, smallRow, thin } from './pairs.ts';

const deep = (bearing = thin()) => ({ bearing, carries: 'both', flush: 0 }) as const;
const gap = (mismatch: number) => ({
  mismatch,
  spacerCompliance: hub.spacerCompliance,
  housingCompliance: hub.housingCompliance,
});

/** Energy of a line at given places of inner and outer rings, measured from the shoulders' places. */
function energy(input: ClampedLineInput, inner: readonly number[], outer: readonly number[]): number {
  let total = 0;
  input.bearings.forEach(({ bearing }, i) => {
    const offset = (inner[i] ?? 0) - (outer[i] ?? 0);
    const squeezed = Math.max(0, Math.hypot(offset, bearing.centres) - bearing.reach);
    total += 0.4 * bearing.stiffness * bearing.geometry.count * squeezed ** 2.5;
  });
  input.gaps.forEach(({ mismatch, spacerCompliance, housingCompliance }, i) => {
    const closed = mismatch - ((inner[i + 1] ?? 0) - (inner[i] ?? 0));
    total += Math.max(0, closed) ** 2 / (2 * spacerCompliance);
    total += ((outer[i + 1] ?? 0) - (outer[i] ?? 0)) ** 2 / (2 * housingCompliance);
  });
  return total + input.clampForce * ((inner.at(-1) ?? 0) - (inner[0] ?? 0));
}

/** The energy is convex: a place that no small step lowers is its least. */
function expectLeast(input: ClampedLineInput, found: ClampedLine): void {
  const outer = [0];
  let sum = 0;
  input.gaps.forEach(({ housingCompliance }, i) => {
    sum += found.forces[i] ?? 0;
    outer.push((outer[i] ?? 0) - housingCompliance * sum);
  });
  const inner = found.offsets.map((offset, i) => offset + (outer[i] ?? 0));
  const least = energy(input, inner, outer);
  const n = inner.length;
  const steps = standardNormals(2 * n * 400, 9);
  for (let k = 0; k < 400; k++) {
    for (const size of [1e-3, 1e-5]) {
      const at = (i: number): number => size * (steps[2 * n * k + i] ?? 0);
      const moved = energy(
        input,
        inner.map((x, i) => x + at(i)),
        outer.map((x, i) => x + at(n + i)),
      );
      expect(moved).toBeGreaterThanOrEqual(least - 1e-9 * Math.max(1, Math.abs(least)));
    }
  }
}

test('a line of two is the pair', () => {
  for (const mismatch of [-0.3, -0.15, -0.06, 0.2]) {
    const line = clampedLine({
      bearings: [deep(), deep()],
      gaps: [gap(mismatch)],
      clampForce: hub.clampForce,
    });
    const pair = clamped({
      mismatch,
      left: { ...hub.left, holdOutward: Number.POSITIVE_INFINITY },
      right: { ...hub.right, holdOutward: Number.POSITIVE_INFINITY },
    });
    expect(Math.abs(line.forces[0] ?? 0)).toBeCloseTo(pair.ballLoad, 1);
    expect(line.spacers[0]).toBeCloseTo(pair.spacerLoad, 1);
  }
});

test('three and four bearings settle where no small step lowers the energy', () => {
  const small = deep(axialBearing(smallRow, 0.006));
  for (const input of [
    { bearings: [deep(), deep(), deep()], gaps: [gap(-0.1), gap(0.02)], clampForce: 5000 },
    { bearings: [deep(), small, deep()], gaps: [gap(0.09), gap(-0.14)], clampForce: 5000 },
    {
      bearings: [deep(), deep(), small, deep()],
      gaps: [gap(-0.05), gap(-0.05), gap(-0.05)],
      clampForce: 8000,
    },
    { bearings: [deep(), small, deep()], gaps: [gap(-0.5), gap(-0.02)], clampForce: 1500 },
  ]) {
    const found = clampedLine(input);
    expect(Math.abs(found.forces.reduce((sum, force) => sum + force, 0))).toBeLessThan(0.01);
    expectLeast(input, found);
  }
});

test('a line with play carries nothing', () => {
  const found = clampedLine({ bearings: [deep(), deep(), deep()], gaps: [gap(0), gap(0)], clampForce: 500 });
  for (const force of found.forces) expect(Math.abs(force)).toBeLessThan(1e-6);
  expect(found.spacers).toEqual([500, 500]);
});
