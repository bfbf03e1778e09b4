import { expect, test } from 'vitest';
import { sources } from '../../../server/engine/base/sources.ts';
import { findMaterial, type Material, materials } from '../../../server/engine/tables/materials.ts';

test('materials have the stiffness and the expansion that other handbooks print', () => {
  // NTN CAT. 2203/E table 13.6 (bearing steel 208 GPa, 12.5e-6; silicon nitride 308 GPa, 3.0e-6, 3.24 g/cm3).
  expect(materials['bearing steel']).toMatchObject({ E: 208_000, nu: 0.3, expansion: 12.5e-6 });
  expect(materials['silicon nitride']).toMatchObject({ E: 308_000, expansion: 3e-6, density: 3240 });
  // Mechanics appendix, SI table: 6061-T6 68.9 GPa; stainless 304 193 GPa, 17e-6; Metals Handbook Desk Edition
  // 1995 p. 6-34 gives 70/30 brass 14.6e6 psi and magnesium 6.48e6 psi. Agreement within 10 %.
  expect(materials['aluminium 6061-T6'].E).toBe(68_900);
  expect(materials.stainless.E).toBe(193_000);
  expect(Math.abs(materials.brass.E / (14.6 * 6894.757) - 1)).toBeLessThan(0.1);
  expect(Math.abs(materials.magnesium.E / (6.48 * 6894.757) - 1)).toBeLessThan(0.1);
  // US units of the course book: 7075-T6 10.4e6 psi, 70 ksi, 13e-6/°F.
  expect(materials['aluminium 7075-T6'].E / (10.4 * 6894.757)).toBeCloseTo(1, 2);
  expect(materials['aluminium 7075-T6'].yield / (70 * 6.894757)).toBeCloseTo(1, 2);
  expect(materials['aluminium 7075-T6'].expansion * 1e6).toBeCloseTo(13 * 1.8, 1);
});

test('every property names a source of the bibliography, and lies where metals lie', () => {
  for (const [name, material] of Object.entries(materials) as [string, Material][]) {
    for (const source of Object.values(material.sources)) expect(sources[source], name).toBeDefined();
    expect(material.E, name).toBeGreaterThan(40_000);
    expect(material.E, name).toBeLessThan(320_000);
    expect(material.nu, name).toBeGreaterThan(0.25);
    expect(material.nu, name).toBeLessThan(0.36);
    expect(material.density, name).toBeGreaterThan(1700);
    expect(material.yield === null, name).toBe(material.use === 'bearing');
  }
});

test('a material is found by name, by trade number and by other spellings', () => {
  expect(findMaterial('aluminium 7075-T6')).toMatchObject({ name: 'aluminium 7075-T6', assumed: false });
  expect(findMaterial('Aluminum 6061 T6')).toMatchObject({ name: 'aluminium 6061-T6', assumed: false });
  expect(findMaterial('7075')).toMatchObject({ name: 'aluminium 7075-T6', assumed: false });
  expect(findMaterial('100cr6')).toMatchObject({ name: 'bearing steel', assumed: false });
});

test('a word that leaves the alloy open gives the usual one and says that it is assumed', () => {
  expect(findMaterial('aluminium')).toMatchObject({ name: 'aluminium 6061-T6', assumed: true });
  expect(findMaterial('Aluminum')).toMatchObject({ name: 'aluminium 6061-T6', assumed: true });
  expect(findMaterial('alloy')).toMatchObject({ name: 'aluminium 6061-T6', assumed: true });
});

test('an unknown material is not guessed', () => {
  expect(findMaterial('unobtainium')).toBeNull();
  expect(findMaterial('')).toBeNull();
});

test('no spelling stands for two materials', () => {
  const spellings = (Object.entries(materials) as [string, Material][]).flatMap(([name, { aliases }]) =>
    [name, ...aliases].map((word) => word.toLowerCase()),
  );
  expect(new Set(spellings).size).toBe(spellings.length);
});
