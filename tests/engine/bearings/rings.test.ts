import { expect, test } from 'vitest';
import { cornerLimits } from '../../../server/engine/bearings/corner-limits.ts';
import { internalClearance } from '../../../server/engine/bearings/internal-clearance.ts';
import { ringDeviations } from '../../../server/engine/bearings/ring-deviations.ts';
import { ringShoulders } from '../../../server/engine/bearings/ring-shoulders.ts';
import {
  innerRunout,
  innerWidthVariation,
  outerRunout,
  pairedRingWidthDeviation,
} from '../../../server/engine/tables/iso492-deviations.ts';
import { csvRows } from './csv-rows.ts';
import { decoded } from './decoded.ts';

const iso492 = csvRows('iso492_tolerances');

/** A size inside a range and its upper end, mm. */
const sizesOf = (row: Readonly<Record<string, string>>): readonly number[] => {
  const over = Number(row.size_over_mm ?? row.bore_over_mm);
  const upTo = Number(row.size_incl_mm ?? row.bore_incl_mm);
  return [(over + upTo) / 2, upTo];
};

test('ring deviations are those of ISO 492 in every class and size range', () => {
  // iso492_tolerances.csv: NSK E1102e Table 8.2 and GOST 520-2011 (= ISO 492:2002).
  const parts = { delta_dmp: 'bore', delta_Dmp: 'outside', delta_Bs: 'width' } as const;
  let count = 0;
  for (const row of iso492) {
    const part = parts[row.parameter as keyof typeof parts];
    if (!part) continue;
    for (const size of sizesOf(row)) {
      const toleranceClass = row.iso_class as 'Normal' | '6' | '5' | '4';
      const bearing = {
        bore: part === 'outside' ? 10 : size,
        outside: part === 'outside' ? size : 30,
        toleranceClass,
      };
      const { lower, upper } = ringDeviations(bearing)[part];
      expect([lower * 1000, upper * 1000].map(Math.round), `${row.iso_class} ${part} ${size}`).toEqual(
        [row.lower_um, row.upper_um].map(Number),
      );
      count++;
    }
  }
  expect(count).toBe(144);
});

test('the other ISO 492 tables hold every printed row', () => {
  const tables = { V_Bs: innerWidthVariation, K_ia: innerRunout, K_ea: outerRunout };
  let count = 0;
  for (const row of iso492) {
    const ends = [Number(row.size_over_mm), Number(row.size_incl_mm)];
    const name = row.iso_class as 'Normal' | '6' | '5' | '4';
    const table = tables[row.parameter as keyof typeof tables];
    if (table) {
      expect(table[name]).toContainEqual([...ends, Number(row.upper_um)]);
      count++;
    }
    if (row.parameter === 'delta_Bs_modified') {
      expect(pairedRingWidthDeviation[name]).toContainEqual([
        ...ends,
        Number(row.lower_um),
        Number(row.upper_um),
      ]);
      count++;
    }
  }
  expect(count).toBeGreaterThan(90);
});

test('a class that the tables do not hold is read as Normal, and the source says so', () => {
  const p2 = ringDeviations({ bore: 15, outside: 28, toleranceClass: '2' });
  expect(p2.class).toBe('Normal');
  expect(p2.source).toContain('taken for class 2, which the tables do not hold');
  // NSK E1102e Table 8.2.1: bore over 10 up to 18, width 0/-120 µm.
  expect(p2.width).toEqual({ lower: -0.12, upper: 0 });
  expect(ringDeviations({ bore: 15, outside: 28, toleranceClass: '5' }).source).toContain('class 5');
});

test('radial clearance is that of ISO 5753-1 in every group and bore range', () => {
  // iso5753_radial_clearance.csv: GOST 24810-2013 Table 2 and NSK E1102e Tables 9.9 and 9.10.
  let count = 0;
  for (const row of csvRows('iso5753_radial_clearance')) {
    const group = row.clearance_group ?? '';
    const bores = row.bore_over_mm ? sizesOf(row) : [3, Number(row.bore_incl_mm)];
    for (const bore of bores) {
      const { clearance } = internalClearance('deep-groove', group, bore);
      expect([clearance.minUm, clearance.maxUm], `${group} ${bore}`).toEqual(
        [row.min_um, row.max_um].map(Number),
      );
      count++;
    }
  }
  expect(count).toBeGreaterThan(80);
});

test('clearance that no standard gives stays empty and says why', () => {
  expect(decoded('7002C').clearance).toEqual({ group: 'N', minUm: null, maxUm: null });
  expect(decoded('7002C').notes.join(' ')).toContain('ISO 5753-1 gives no clearance');
  expect(decoded('6902 C1').clearance.minUm).toBeNull();
  // NSK E1102e 9.13.1: CM is a maker's own range.
  expect(decoded('6902 CM').notes.join(' ')).toContain('no published limits for this bore');
});

test('estimated shoulders are close to printed shoulder diameters', () => {
  // ring_shoulders.csv: Schaeffler HR1 2006, columns d1 and D1. The means behind the estimate come from the same rows
  // but no row is fitted: the bound is the spread of the rows. Series 64 is printed with other proportions.
  const rows = csvRows('ring_shoulders').filter(
    (row) => row.D1_outer_ring_inside_mm && !/^64/.test(row.designation ?? ''),
  );
  for (const row of rows) {
    const [d, D] = [Number(row.d_mm), Number(row.D_mm)];
    const { innerOutside, outerInside } = ringShoulders(d, D);
    const bound = 0.036 * (D - d);
    expect(Math.abs(innerOutside - Number(row.d1_inner_ring_outside_mm)), row.designation).toBeLessThan(
      bound,
    );
    expect(Math.abs(outerInside - Number(row.D1_outer_ring_inside_mm)), row.designation).toBeLessThan(bound);
  }
  expect(rows.length).toBe(38);
});

test('estimated shoulders lie outside the abutment diameters another maker prints', () => {
  // ring_shoulders.csv: NSK E1102e p.B8-B11, da min, da max and Da max, 63 bearings of series 68 to 63.
  const rows = csvRows('ring_shoulders').filter((row) => row.Da_max_mm);
  for (const row of rows) {
    const { innerOutside, outerInside } = ringShoulders(Number(row.d_mm), Number(row.D_mm));
    expect(innerOutside, row.designation).toBeGreaterThan(Number(row.da_max_mm || row.da_min_mm));
    expect(outerInside, row.designation).toBeLessThan(Number(row.Da_max_mm));
  }
  expect(rows.length).toBeGreaterThan(55);
});

test('corner limits are those printed for each smallest chamfer', () => {
  // chamfer_and_shoulder.csv: NSK E1102e Tables 8.9.1 and 11.2 (ISO 582).
  for (const row of csvRows('chamfer_and_shoulder')) {
    const bore = row.bore_incl_mm ? Number(row.bore_incl_mm) : Number(row.bore_over_mm || 10) + 1;
    const limits = cornerLimits(Number(row.r_min_mm), bore);
    expect([limits?.radialMost, limits?.axialMost, limits?.filletMost, limits?.shoulderLeast]).toEqual(
      [
        row.r_max_radial_mm,
        row.r_max_axial_mm,
        row.fillet_radius_max_ra_mm,
        row.min_shoulder_height_dgbb_mm,
      ].map(Number),
    );
    const angular = row.min_shoulder_height_acbb_mm;
    expect(cornerLimits(Number(row.r_min_mm), bore, true)?.shoulderLeast).toBe(
      angular ? Number(angular) : null,
    );
  }
  expect(cornerLimits(0.123, 10)).toBeNull();
});
