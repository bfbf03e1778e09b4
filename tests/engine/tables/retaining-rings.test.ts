import { expect, test } from 'vitest';
import { boreRing, shaftRing } from '../../../server/engine/tables/retaining-rings.ts';
import { rowsOf } from '../../support/reference-rows.ts';

test('ring thickness, groove diameter and groove width agree with other prints of DIN 471 and DIN 472', () => {
  for (const row of rowsOf('standards/retaining_rings.csv')) {
    const size = Number(row.size_mm);
    const ring = row.standard === 'DIN 472' ? boreRing(size) : shaftRing(size);
    expect(ring, JSON.stringify(row)).toMatchObject({
      thickness: Number(row.thickness_mm),
      grooveDiameter: Number(row.groove_diameter_mm),
      grooveWidth: Number(row.groove_width_mm),
    });
  }
});

test('the groove of bore 28 is 29.4, not the misprint that one table carries', () => {
  // A second open library of fastener data prints 29.4; neighbours 28.4 and 30.4 at bores 27 and 29.
  expect(boreRing(28)?.grooveDiameter).toBe(29.4);
});

test('grooves grow with the bore, lie outside it, and are wider than their ring', () => {
  let last = 0;
  for (let bore = 8; bore <= 60; bore++) {
    const ring = boreRing(bore);
    if (!ring) continue;
    expect(ring.grooveDiameter).toBeGreaterThan(Math.max(last, bore));
    expect(ring.grooveWidth).toBeGreaterThan(ring.thickness);
    last = ring.grooveDiameter;
  }
  expect(last).toBeGreaterThan(60);
});

test('a bore or a shaft between table sizes has no ring', () => {
  expect(boreRing(28.5)).toBeNull();
  expect(shaftRing(100)).toBeNull();
});
