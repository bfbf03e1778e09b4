import { expect, test } from 'vitest';
import { spokeThreads } from '../../../server/engine/tables/spoke-facts.ts';
import {
  coreDiameter,
  nippleFit,
  nippleThread,
  tensionPerTurn,
  tensionPerTurnOfAll,
} from '../../../server/engine/wheel/nipple-thread.ts';
import {
  axialStiffness,
  bladeArea,
  pluckedPitch,
  roundArea,
  stretch,
  wireMass,
  wireSegments,
  wireStress,
} from '../../../server/engine/wheel/spoke-wire.ts';
import { millimetreSteps, stockedLength } from '../../../server/engine/wheel/stocked-length.ts';

test('630 N stretch a 300 mm spoke of 2 mm by 0.29 mm and stress it with 200 MPa (McMahon and Graham)', () => {
  const wire = [{ length: 300, area: roundArea(2) }];
  expect(Math.abs(stretch(630, 300, axialStiffness(wire, 210_000)) - 0.29)).toBeLessThan(0.005);
  expect(Math.abs(wireStress(630, wire) - 200)).toBeLessThan(1);
});

test('a butted research spoke, 71 mm of 1.99 and 205 mm of 1.72, pulls like 521 kN of plain wire (Ford 2018)', () => {
  const axial = axialStiffness(
    [
      { length: 71, area: roundArea(1.99) },
      { length: 205, area: roundArea(1.72) },
    ],
    210_000,
  );
  expect(Math.abs(axial / 1000 - 521)).toBeLessThan(1);
  const known = wireSegments({ diameters: [1.99, 1.72, 1.99], blade: null }, 276);
  expect(Math.abs(axialStiffness(known, 210_000) / 1000 - 521)).toBeLessThan(1);
});

test('wire weighs what its volume weighs (derived): 7.20 g plain, 6.25 g butted', () => {
  expect(wireMass([{ length: 290, area: roundArea(2) }], 7900)).toBeCloseTo(7.1974, 3);
  const butted = [
    { length: 90, area: roundArea(2) },
    { length: 200, area: roundArea(1.8) },
  ];
  expect(wireMass(butted, 7900)).toBeCloseTo(6.2543, 3);
});

test('a blade 2.3 x 0.9 lies between an ellipse and a stadium, and so does the wire it is drawn from', () => {
  const area = bladeArea(2.3, 0.9);
  expect(area.hi).toBeCloseTo(1.8962, 3);
  expect(area.lo).toBeCloseTo(1.6258, 3);
  expect(area.lo).toBeLessThan(roundArea(1.5));
  expect(roundArea(1.5)).toBeLessThan(area.hi);
  const middle = wireSegments({ diameters: [2, 2], blade: { width: 2.3, thickness: 0.9 } }, 290)[1];
  expect(Math.abs((middle?.area ?? 0) - roundArea(1.5))).toBeLessThan(0.02);
});

test('segments fill the length, whatever the profile', () => {
  for (const diameters of [[2], [2.3, 2], [2, 1.8, 2], [2, 1.5, 1.8]])
    for (const length of [60, 150, 290]) {
      const sum = wireSegments({ diameters, blade: null }, length).reduce((all, one) => all + one.length, 0);
      expect(sum).toBeCloseTo(length, 9);
    }
});

test('a plucked spoke of 290 mm at 1000 N sounds at 346 Hz (derived)', () => {
  expect(pluckedPitch(1000, [{ length: 290, area: roundArea(2) }], 7900)).toBeCloseTo(346.09, 1);
});

test('the core of the thread is that of DIN 79012, and the rule gives JIS B 0225:1960 BC 5/16 too', () => {
  for (const { major, minor, pitch } of Object.values(spokeThreads))
    expect(Math.abs(coreDiameter(major, pitch) - minor)).toBeLessThan(0.001);
  expect(Math.abs(coreDiameter(7.94, 25.4 / 26) - 6.9)).toBeLessThan(0.006);
  expect(Math.abs(spokeThreads['FG 2.3'].pitch - 0.454)).toBeLessThan(0.0006);
});

test('a turn of one nipple adds 983 N on a stiff rim; a turn of all 664 N on 100 mm² (derived)', () => {
  const axial = 200_000 * roundArea(2);
  expect(tensionPerTurn(axial, 290, 25.4 / 56)).toBeCloseTo(982.71, 1);
  const all = tensionPerTurnOfAll(
    { axial, length: 290, radial: 1 },
    { spokes: 32, radius: 300, axial: 6.9e6 },
    25.4 / 56,
  );
  expect(all).toBeCloseTo(664.1, 1);
});

test('engagement is the overlap of the two threads', () => {
  // End level with the slot: the nipple is filled. 3 mm short: 3 mm less. Past the slot nothing more engages.
  expect(nippleFit(0, 9.5, 8).engagement).toBe(8);
  expect(nippleFit(-3, 9.5, 8).engagement).toBe(5);
  expect(nippleFit(1, 9.5, 8).engagement).toBe(8);
  expect(nippleFit(-20, 9.5, 8).engagement).toBe(0);
  expect(nippleFit(1, 9.5, 8).threadLeft).toBeCloseTo(0.5, 9);
  expect(nippleFit(2, 9.5, 8).threadLeft).toBeLessThan(0);
  expect(nippleThread(16)).toBe(nippleThread(12));
  expect(nippleThread(10)).toBeLessThan(nippleThread(12));
});

test('the stocked length is the nearest whose end the nipple allows', () => {
  const band = { lo: -1, hi: 1 };
  expect(stockedLength(292.23, [288, 290, 292, 294], band)?.length).toBe(292);
  expect(stockedLength(291, [290, 292], band)).toEqual({ length: 290, end: -1, fits: true });
  expect(stockedLength(291.2, [288, 294], band)).toMatchObject({ length: 294, fits: false });
  expect(stockedLength(291.2, [288, 294], { lo: -3.5, hi: 1 })?.length).toBe(288);
  expect(stockedLength(291, [], band)).toBeNull();
  expect(stockedLength(290.6, millimetreSteps(290.6), band)?.length).toBe(291);
});
