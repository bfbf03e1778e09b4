import { expect, test } from 'vitest';
import { type GeneralClass, generalTolerance } from '../../../server/engine/tables/iso2768-linear.ts';
import { rowsOf } from '../../support/reference-rows.ts';

test('every general tolerance is the printed one at both ends of its size step', () => {
  for (const row of rowsOf('standards/iso2768_linear.csv')) {
    const over = Number(row.size_over_mm);
    // The first step starts with 0.5 mm itself, every other one after its lower end.
    const sizes = [over === 0.5 ? 0.5 : over + 0.001, Number(row.size_incl_mm)];
    const wanted = row.deviation_mm === '' ? null : Number(row.deviation_mm);
    for (const size of sizes) {
      expect(generalTolerance(size, row.class as GeneralClass), `${size} ${row.class}`).toBe(wanted);
    }
  }
});

test('below half a millimetre and above four metres there is no general tolerance', () => {
  // ISO 2768-1: below 0.5 mm the deviation is written at the dimension.
  expect(generalTolerance(0.49, 'm')).toBeNull();
  expect(generalTolerance(4001, 'm')).toBeNull();
  expect(generalTolerance(Number.NaN, 'm')).toBeNull();
  expect(generalTolerance(-5, 'm')).toBeNull();
});
