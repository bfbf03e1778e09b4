import fc from 'fast-check';
import { expect, test } from 'vitest';
import { axialClearance } from '../../../server/engine/play/axial-clearance.ts';
import { mismatchAt } from '../../../server/engine/play/axial-temperature.ts';
import {
  area,
  clampForce,
  compliance,
  greatestStress,
} from '../../../server/engine/play/clamp-compression.ts';
import { benchPlay, gapBetweenBalls, mostBalls } from '../../../server/engine/play/cup-and-cone.ts';
import { innerGeometry } from '../../../server/engine/play/inner-geometry.ts';
import { pairPlay } from '../../../server/engine/play/pair-play.ts';
import { grooveClearanceFactors } from '../../../server/engine/tables/groove-clearance-factors.ts';
import { rowsOf } from '../../support/reference-rows.ts';
import { expectPrinted, numbers, workedExample, workedExamples } from '../../support/worked-examples.ts';

test('axial clearance follows the factors that a catalogue prints', () => {
  for (const example of workedExamples('gap-').filter(({ id }) => id !== 'gap-harris')) {
    const { K = 0, Gr = 0 } = numbers(example);
    expectPrinted(example, { Ga: axialClearance((K / 2) ** 2, Gr).axial });
    // The table in the project is the same table.
    const [series = '', bore = ''] = [example.id.slice(4, 6), example.id.slice(6)];
    expect(grooveClearanceFactors[series as '60' | '62'][bore]).toBe(K);
  }
});

test('free contact angle and end play of the 209 bearing agree with the textbook', () => {
  const example = workedExample('gap-harris');
  const { d_i = 0, d_o = 0, Dw = 0, B = 0 } = numbers(example);
  const found = axialClearance(B * Dw, d_o - d_i - 2 * Dw);
  expectPrinted(example, { alpha0: (found.freeAngle * 180) / Math.PI, Pe: found.axial });
});

test('no radial clearance gives no axial clearance, too much is said not to hold', () => {
  expect(axialClearance(0.16, 0).axial).toBe(0);
  expect(axialClearance(0.16, -0.01).axial).toBe(0);
  expect(axialClearance(0.16, 0.33).valid).toBe(false);
});

test('two equal bearings have twice their half-range less the mismatch', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0, max: 0.2, noNaN: true }),
      fc.double({ min: -0.3, max: 0.3, noNaN: true }),
      (a, mismatch) => {
        const range = (offset: number) => ({ offset, toRight: a, toLeft: a });
        expect(pairPlay([range(0), range(mismatch)]).play).toBeCloseTo(2 * a - Math.abs(mismatch), 12);
      },
    ),
    { seed: 3, numRuns: 200 },
  );
});

test('of three bearings the two that stop the housing first make the play', () => {
  // By hand: the housing may go right to min(0.1, 0.13, 0.05) and left to max(−0.1, −0.07, −0.15).
  const found = pairPlay([
    { offset: 0, toRight: 0.1, toLeft: 0.1 },
    { offset: 0.03, toRight: 0.1, toLeft: 0.1 },
    { offset: -0.05, toRight: 0.1, toLeft: 0.1 },
  ]);
  expect(found.play).toBeCloseTo(0.12, 12);
  expect([found.stopsRight, found.stopsLeft]).toEqual([2, 1]);
});

test('two angular bearings that stop the same way leave the other way open', () => {
  const one = { offset: 0, toRight: Number.POSITIVE_INFINITY, toLeft: 0.02 };
  expect(pairPlay([one, one]).play).toBe(Number.POSITIVE_INFINITY);
});

test('a sleeve shortens by F·L/(E·A), its parts one after another', () => {
  // By hand: 50 mm of 20 × 16 tube in 70 GPa under 5 kN: A = 113.1 mm², 0.03158 mm.
  const tube = { length: 50, outer: 20, inner: 16, E: 70_000 };
  expect(area(tube)).toBeCloseTo(113.097, 3);
  expect(5000 * compliance([tube])).toBeCloseTo(0.03158, 5);
  expect(compliance([tube, tube])).toBeCloseTo(2 * compliance([tube]), 15);
  expect(greatestStress([tube, { ...tube, outer: 18 }], 5000)).toBeCloseTo(5000 / 53.407, 2);
});

test('the force of a torque is that of the bolt tables', () => {
  // M12, pitch 1.75, friction 0.12 and 0.12: assembly preload of property class 8.8 is 41.9 kN at 84 N·m
  // (VDI 2230 table for ISO 4014 head, from memory). The head of that table rubs at 0.64·d, ours at 0.65·d.
  const force = clampForce({
    torque: 84_000,
    thread: 12,
    pitch: 1.75,
    threadFriction: 0.12,
    headFriction: 0.12,
  });
  expect(force / 41_900).toBeGreaterThan(0.97);
  expect(force / 41_900).toBeLessThan(1.03);
});

test('a steel spacer in an aluminium shell grows short when warm', () => {
  // By hand: 60 mm, 40 K, (12.5 − 23.6)·10⁻⁶: −0.02664 mm.
  const [steel, aluminium] = [12.5e-6, 23.6e-6];
  const at = mismatchAt([{ length: 60, expansion: steel }], [{ length: 60, expansion: aluminium }], 60);
  expect(at).toBeCloseTo(-0.02664, 5);
  expect(
    mismatchAt([{ length: 60.02, expansion: steel }], [{ length: 60, expansion: aluminium }], 20),
  ).toBeCloseTo(0.02, 12);
});

test('loose balls: ten of a quarter inch lie on their circle only if it is wide enough', () => {
  // Geometry: n balls side by side touch on a circle of d / sin(π/n).
  const circle = 6.35 / Math.sin(Math.PI / 10);
  expect(mostBalls(6.35, circle)).toBe(10);
  expect(mostBalls(6.35, circle - 0.01)).toBe(9);
  expect(gapBetweenBalls({ count: 10, diameter: 6.35, circle })).toBeCloseTo(0, 10);
  // Common practice leaves one ball out: the gap is then about one ball.
  expect(gapBetweenBalls({ count: 9, diameter: 6.35, circle })).toBeGreaterThan(6.35);
  expect(benchPlay(1e-5, 4000)).toBeCloseTo(0.04, 12);
});

test('what the user knows goes before the published row, and that before the estimate', () => {
  const known = {
    bore: 15,
    outside: 28,
    publishedBalls: { count: 10, diameter: 3.969 },
    ownBalls: { count: 11, diameter: 4 },
    ownGroove: { inner: 0.515, outer: 0.525 },
  };
  const own = innerGeometry(known);
  expect([own.ballBasis, own.grooveBasis]).toEqual(['user', 'user']);
  expect(own.geometry).toEqual({
    count: 11,
    diameter: 4,
    pitch: 21.5,
    innerConformity: 0.515,
    outerConformity: 0.525,
  });
  expect(own.close).toEqual(own.open);
  const published = innerGeometry({ ...known, ownBalls: null, ownGroove: null, publishedFactor: 0.8 });
  expect([published.ballBasis, published.grooveBasis]).toEqual(['published', 'published']);
  // K = 2·√m0.
  const { innerConformity, outerConformity, diameter } = published.geometry;
  expect(2 * Math.sqrt((innerConformity + outerConformity - 1) * diameter)).toBeCloseTo(0.8, 10);
});

test('the estimate from the section spans the balls that makers print', () => {
  const rows = rowsOf('standards/ball_geometry.csv').filter(
    ({ d_mm, ball_dia_mm }) => 8 <= Number(d_mm) && Number(d_mm) <= 20 && Number(ball_dia_mm) > 0,
  );
  expect(rows.length).toBeGreaterThan(10);
  const held = rows.filter(({ d_mm, D_mm, ball_dia_mm }) => {
    const estimate = innerGeometry({ bore: Number(d_mm), outside: Number(D_mm) });
    expect(estimate.ballBasis).toBe('estimate');
    const ball = Number(ball_dia_mm);
    return estimate.close.diameter - 0.01 <= ball && ball <= estimate.open.diameter + 0.01;
  });
  expect(held.length / rows.length).toBeGreaterThan(0.9);
});
