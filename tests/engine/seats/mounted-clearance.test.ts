import { expect, test } from 'vitest';
import { interferenceSpread, spreadOf } from '../../../server/engine/seats/interference-spread.ts';
import { mountedClearance } from '../../../server/engine/seats/mounted-clearance.ts';
import { compoundForce, PRESS_FRICTION, slidingForce } from '../../../server/engine/seats/mounting-force.ts';
import { effectiveInterference, smoothingFactor } from '../../../server/engine/seats/smoothing.ts';
import {
  dropInDifference,
  freeTemperature,
  interferenceAt,
  thermalClearanceLoss,
} from '../../../server/engine/seats/thermal.ts';
import { expectPrinted, numbers, workedExample } from '../../support/worked-examples.ts';

test('a heavy shaft fit leaves the clearance that a manual prints', () => {
  const example = workedExample('fit-01');
  const { g_min_um = 0, g_max_um = 0, i_min_um = 0, i_max_um = 0, factor = 0 } = numbers(example);
  // The 80 % rule of the manual holds for the interference as made: the smoothing is taken out again.
  const diameter = 150;
  const lossFactor = factor / smoothingFactor(diameter, 'ground');
  const { clearance, lossInner } = mountedClearance({
    clearance: { lo: g_min_um / 1000, hi: g_max_um / 1000 },
    outer: null,
    inner: {
      interference: spreadOf(i_min_um / 1000, i_max_um / 1000),
      diameter,
      finish: 'ground',
      lossFactor,
    },
  });
  expectPrinted(example, {
    red_min_um: lossInner.least * 1000,
    red_max_um: lossInner.most * 1000,
    g_max_um: clearance.most * 1000,
    g_min_um: clearance.least * 1000,
  });
});

test('a fit that takes more than there is leaves the negative clearance that a maker prints', () => {
  const example = workedExample('fit-02');
  const { g = 0, i = 0, factor = 0 } = numbers(example);
  const { clearance } = mountedClearance({
    clearance: { lo: g, hi: g },
    outer: null,
    inner: {
      interference: spreadOf(i, i),
      diameter: 8,
      finish: 'ground',
      lossFactor: factor / smoothingFactor(8, 'ground'),
    },
  });
  expectPrinted(example, { g_res: clearance.mean });
});

test('smoothing leaves about 95 % at the diameters a catalogue names and nothing of a clearance', () => {
  // NSK, Rolling Bearings, fits: about 95 % for bores of 30 to 150 mm.
  expect(smoothingFactor(30, 'ground')).toBeGreaterThan(0.93);
  expect(smoothingFactor(150, 'ground')).toBeLessThan(0.99);
  expect(effectiveInterference(0.02, 27, 'turned')).toBeCloseTo(0.018, 12);
  expect(effectiveInterference(-0.005, 27, 'turned')).toBe(-0.005);
});

test('an N7 bore and a ring of class Normal overlap as the table of fits prints', () => {
  // NSK, Rolling Bearings, Table 15.3, D 18 to 30 mm, N7: 28 µm most, 2 µm clearance.
  const spread = interferenceSpread({ lower: -0.009, upper: 0 }, { lower: -0.028, upper: -0.007 });
  expect(spread.most).toBeCloseTo(0.028, 12);
  expect(spread.least).toBeCloseTo(-0.002, 12);
  expect(spread.mean).toBeCloseTo(0.013, 12);
  expect(spread.sigma).toBeCloseTo(Math.hypot(0.009, 0.021) / 6, 12);
});

test('more interference never gives more clearance', () => {
  const at = (shift: number) =>
    mountedClearance({
      clearance: { lo: 0.003, hi: 0.018 },
      outer: {
        interference: spreadOf(-0.002 + shift, 0.028 + shift),
        diameter: 28,
        finish: 'turned',
        lossFactor: 0.45,
      },
      inner: null,
    }).clearance;
  for (let um = -30; um < 30; um++) {
    const [before, after] = [at(um / 1000), at((um + 1) / 1000)];
    for (const part of ['least', 'mean', 'most'] as const) {
      expect(after[part]).toBeLessThanOrEqual(before[part] + 1e-15);
    }
  }
});

test('a shaft of 90 mm asks for the heating that a catalogue reads from its chart', () => {
  const example = workedExample('fit-05');
  const { d = 0, interference_um = 0, alpha = 0 } = numbers(example);
  expectPrinted(example, { dT: dropInDifference(interference_um / 1000, d, alpha) });
});

test('a steel ring in an aluminium shell loosens by the difference of their growth, and lets go', () => {
  // Handbook expansions: steel 12.5, aluminium 23.6 µm/m·K; a metre of each over 40 K differs by 444 µm.
  const pair = { inside: 12.5e-6, outside: 23.6e-6 };
  expect(interferenceAt(0.02, 28, pair, 60)).toBeCloseTo(0.02 - 28 * 444e-6, 12);
  const free = freeTemperature(0.02, 28, pair) as number;
  expect(interferenceAt(0.02, 28, pair, free)).toBeCloseTo(0, 12);
  expect(free).toBeGreaterThan(20);
  expect(freeTemperature(0.02, 28, { inside: 12e-6, outside: 12e-6 })).toBeNull();
});

test('an inner ring 10 K warmer takes the clearance of the catalogue formula, evenly warm rings take none', () => {
  // SKF, Rolling bearings: 0.012·ΔT·dm µm, with 12e-6 1/K.
  const steel = { ringExpansion: 12e-6, ballExpansion: 12e-6 };
  expect(thermalClearanceLoss(22, 4, { inner: 30, outer: 20, ...steel })).toBeCloseTo(
    (0.012 * 10 * 22) / 1000,
    12,
  );
  expect(thermalClearanceLoss(22, 4, { inner: 70, outer: 70, ...steel })).toBeCloseTo(0, 12);
  const ceramic = { ringExpansion: 12e-6, ballExpansion: 3e-6 };
  expect(thermalClearanceLoss(22, 4, { inner: 70, outer: 70, ...ceramic })).toBeLessThan(0);
});

test('the sliding force lies between its oiled and its dry friction', () => {
  const force = slidingForce({ pressure: 10, diameter: 28, length: 7 });
  // F = µ·p·π·d·B by hand: 10 · π · 28 · 7 = 6157.5 N of normal force.
  expect(force.typical).toBeCloseTo(0.12 * 6157.52, 1);
  expect(force.least / force.typical).toBeCloseTo(PRESS_FRICTION.least / PRESS_FRICTION.typical, 12);
  expect(force.most).toBeGreaterThan(force.typical);
  expect(compoundForce(15, 28, 7)).toBeCloseTo(9236.3, 0);
});
