import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  lossFactor,
  pressFit,
  pressureFactor,
  type RingSeat,
} from '../../../server/engine/seats/press-fit.ts';
import { pressTubes } from '../../../server/engine/seats/press-tubes.ts';
import { tubeAt } from '../../../server/engine/seats/tube.ts';
import { expectPrinted, numbers, workedExample, workedExamples } from '../../support/worked-examples.ts';
import { radialDisplacements } from './radial-elements.ts';

const steel = { E: 208_000, nu: 0.3 };
const aluminium = { E: 68_900, nu: 0.33 };
const brass = { E: 110_000, nu: 0.33 };

const shellSeat: RingSeat = {
  ring: 'outer',
  diameter: 28,
  raceway: 25.3,
  material: steel,
  walls: [{ to: 36, ...aluminium }],
};

test('three spinning rings of two materials press as in the published case', () => {
  const { radii, E, nu, rho, delta_r, p_out, p_in, omega } = workedExample('fit-04')
    .inputs as unknown as Record<string, number[]> & { p_out: number; p_in: number; omega: number };
  // The source lists the rings from the outside in.
  const tubes = [2, 1, 0].map((i) => ({
    inner: 2 * (radii?.[i + 1] ?? 0),
    outer: 2 * (radii?.[i] ?? 0),
    E: E?.[i] ?? 0,
    nu: nu?.[i] ?? 0,
    density: rho?.[i] ?? 0,
  }));
  const overlaps = [2 * (delta_r?.[1] ?? 0), 2 * (delta_r?.[0] ?? 0)];
  const pressed = pressTubes(tubes, overlaps, { bore: p_in, outside: p_out, speed: omega });
  expectPrinted(workedExample('fit-04'), { p1: pressed.pressures[1] ?? 0, p2: pressed.pressures[0] ?? 0 });
});

test('a steel ring in an aluminium shell loses the clearance that finite elements give', () => {
  const overlap = 0.01;
  const [raceway = 0, , shell = 0] = radialDisplacements(
    [
      { from: 25.3 / 2, to: 14, ...steel },
      { from: 14, to: 18, ...aluminium },
    ],
    [overlap],
  );
  const fit = pressFit(shellSeat, 2 * overlap);
  expect(fit.clearanceLoss / (-2 * raceway)).toBeCloseTo(1, 5);
  expect(fit.wallGrowth / (2 * shell)).toBeCloseTo(1, 5);
});

test('a brass sleeve between ring and shell counts as finite elements have it', () => {
  const overlap = 0.008;
  const [raceway = 0] = radialDisplacements(
    [
      { from: 25.3 / 2, to: 14, ...steel },
      { from: 14, to: 15.5, ...brass },
      { from: 15.5, to: 20, ...aluminium },
    ],
    [overlap, 0],
  );
  const seat: RingSeat = {
    ...shellSeat,
    walls: [
      { to: 31, ...brass },
      { to: 40, ...aluminium },
    ],
  };
  const fit = pressFit(seat, 2 * overlap);
  expect(fit.clearanceLoss / (-2 * raceway)).toBeCloseTo(1, 5);
});

test('an inner ring on a hollow aluminium axle loses the clearance that finite elements give', () => {
  const overlap = 0.006;
  const displaced = radialDisplacements(
    [
      { from: 5, to: 7.5, ...aluminium },
      { from: 7.5, to: 8.9, ...steel },
    ],
    [overlap],
  );
  const fit = pressFit(
    { ring: 'inner', diameter: 15, raceway: 17.8, material: steel, walls: [{ to: 10, ...aluminium }] },
    2 * overlap,
  );
  expect(fit.clearanceLoss / (2 * (displaced[2] as number))).toBeCloseTo(1, 5);
});

test('an inner ring on a brass sleeve on an aluminium axle loses the clearance that finite elements give', () => {
  const overlap = 0.004;
  const displaced = radialDisplacements(
    [
      { from: 3, to: 6, ...aluminium },
      { from: 6, to: 7.5, ...brass },
      { from: 7.5, to: 8.9, ...steel },
    ],
    [0, overlap],
  );
  const walls = [
    { to: 12, ...brass },
    { to: 6, ...aluminium },
  ];
  const fit = pressFit({ ring: 'inner', diameter: 15, raceway: 17.8, material: steel, walls }, 2 * overlap);
  expect(fit.clearanceLoss / (2 * (displaced[3] as number))).toBeCloseTo(1, 5);
  expect(fit.wallEquivalent).toHaveLength(2);
});

test('steel on a solid steel shaft follows the same-material rule of the handbooks', () => {
  // Makers' catalogues (NSK Table 15.1, NTN Table 8.5): ΔDi = k·Δd and p = (E/2)(Δd/d)(1 − k²), k = d/Di.
  const seat: RingSeat = {
    ring: 'inner',
    diameter: 20,
    raceway: 25,
    material: steel,
    walls: [{ to: 0, ...steel }],
  };
  expect(lossFactor(seat)).toBeCloseTo(20 / 25, 10);
  expect(pressureFactor(seat)).toBeCloseTo((208_000 / 2 / 20) * (1 - 0.64), 6);
});

test('a finite steel housing follows the same-material rule of the handbooks', () => {
  // The same tables: ΔDe = h·ΔD·(1 − h0²)/(1 − h²·h0²), h = De/D, h0 = D/Dh.
  const seat: RingSeat = { ...shellSeat, walls: [{ to: 40, ...steel }] };
  const [h, h0] = [25.3 / 28, 28 / 40];
  expect(lossFactor(seat)).toBeCloseTo((h * (1 - h0 * h0)) / (1 - h * h * h0 * h0), 10);
});

test('a hollow shaft needs the interference that a catalogue reads from its diagram', () => {
  const example = workedExample('fit-03');
  const { d = 0, D = 0, k = 0, ci = 0, dS_max_um = 0, dS_min_um = 0 } = numbers(example);
  const raceway = k * (D - d) + d;
  const solid = pressureFactor({
    ring: 'inner',
    diameter: d,
    raceway,
    material: steel,
    walls: [{ to: 0, ...steel }],
  });
  const hollow = pressureFactor({
    ring: 'inner',
    diameter: d,
    raceway,
    material: steel,
    walls: [{ to: ci * d, ...steel }],
  });
  const dS = (dS_max_um + dS_min_um) / 2;
  const ratio = solid / hollow;
  expectPrinted(example, { ce: d / raceway, dS_um: dS, ratio, dH_um: ratio * dS });
});

test('a joint with clearance stands open, and pushing from the bore can close it', () => {
  const tubes = [
    { inner: 20, outer: 30, ...steel },
    { inner: 30, outer: 40, ...steel },
  ];
  expect(pressTubes(tubes, [-0.01]).pressures).toEqual([0]);
  const closed = pressTubes(tubes, [-0.01], { bore: 200 });
  expect(closed.pressures[0]).toBeGreaterThan(0);
  const [inner, outer] = closed.faces;
  expect((outer?.inner.growth ?? 0) - (inner?.outer.growth ?? 0)).toBeCloseTo(-0.01, 12);
});

test('a tube under equal pressure inside and outside is squeezed evenly', () => {
  const face = tubeAt({ inner: 20, outer: 30, ...steel }, { inside: 50, outside: 50, speed: 0 }, 25);
  expect(face.hoop).toBeCloseTo(-50, 10);
  expect(face.radial).toBeCloseTo(-50, 10);
});

test('more interference never leaves more clearance, and a thicker wall takes more of it', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0, max: 0.05, noNaN: true }),
      fc.double({ min: 0, max: 0.05, noNaN: true }),
      fc.double({ min: 30, max: 60, noNaN: true }),
      (a, b, to) => {
        const seat = { ...shellSeat, walls: [{ to, ...aluminium }] };
        const [less, more] = [Math.min(a, b), Math.max(a, b)];
        expect(pressFit(seat, more).clearanceLoss).toBeGreaterThanOrEqual(pressFit(seat, less).clearanceLoss);
        const thicker = { ...seat, walls: [{ to: to + 1, ...aluminium }] };
        expect(lossFactor(thicker)).toBeGreaterThan(lossFactor(seat));
        expect(lossFactor(thicker)).toBeLessThan(1);
      },
    ),
    { seed: 7, numRuns: 200 },
  );
});

test('twice the size with twice the interference is pressed as hard', () => {
  const big: RingSeat = { ...shellSeat, diameter: 56, raceway: 50.6, walls: [{ to: 72, ...aluminium }] };
  expect(pressFit(big, 0.04).pressure).toBeCloseTo(pressFit(shellSeat, 0.02).pressure, 8);
  expect(pressFit(big, 0.04).clearanceLoss).toBeCloseTo(2 * pressFit(shellSeat, 0.02).clearanceLoss, 10);
});

test('a wall thinner than nothing is said not to hold', () => {
  expect(pressFit({ ...shellSeat, walls: [{ to: 27, ...aluminium }] }, 0.01).valid).toBe(false);
  expect(pressFit({ ...shellSeat, walls: [] }, 0.01).valid).toBe(false);
});

test('the published press-in coefficients are the published frictions', () => {
  // Ka = 9.8·fk·Δ·B·(1 − d²/Di²)·10³ is µ·p·π·d·B with the pressure of a solid steel shaft.
  for (const example of workedExamples('press-')) {
    const [diameter, raceway, width, interference] = [20, 25, 10, 0.02];
    const pressure = pressFit(
      { ring: 'inner', diameter, raceway, material: steel, walls: [{ to: 0, ...steel }] },
      interference,
    ).pressure;
    const { fk = 0 } = numbers(example);
    const printed = 9.8 * fk * interference * width * (1 - (diameter / raceway) ** 2) * 1000;
    expectPrinted(example, { mu: printed / (pressure * Math.PI * diameter * width) });
  }
});
