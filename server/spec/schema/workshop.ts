import * as z from 'zod';
import { readTemperatureRange } from '../quantity.ts';
import { type Reading, readNumber, readSize } from '../small-values.ts';
import { bore, opens, quantity, shaft, text, value } from './value.ts';

const mmPattern = /^\s*(?:±|\+\/?-)?\s*(.*?)\s*(?:mm)?\s*$/;

/** `0.02`, `±0.02`, `0.02 mm`, `20 µm`. mm */
function readMeasuring(written: string): Reading<number> {
  const bare = mmPattern.exec(written)?.[1] ?? written;
  const micron = /^(.*?)\s*[µμ]m$/.exec(bare)?.[1];
  const reading = readNumber(micron ?? bare, 'the uncertainty of a reading', 0, micron ? 1000 : 1, '0.02');
  return 'problem' in reading
    ? placed(reading, written)
    : { value: micron ? reading.value / 1000 : reading.value };
}

/** Per kelvin: `23e-6`, or the figure before 10⁻⁶ (`23`). */
function readExpansion(written: string): Reading<number> {
  const bare = written.replace(/\s*(?:e-6)?\s*(?:1\/K|\/K|[µμ]m\/\(?m[·.]?K\)?|ppm\/K)\s*$/i, '');
  const reading = readNumber(bare, 'thermal expansion in 10⁻⁶/K', 0, 200, '23');
  if ('problem' in reading) return placed(reading, written);
  return { value: reading.value < 1e-3 ? reading.value : Math.round(reading.value * 1e6) / 1e12 };
}

/** kg/m³; `g/cm³` is taken too. */
function readDensity(written: string): Reading<number> {
  const bare = written.replace(/\s*k?g\/c?m(?:³|3|\^3)\s*$/i, '');
  const reading = readNumber(bare, 'a density in kg/m³', 0, 25000, '2810');
  if ('problem' in reading) return placed(reading, written);
  return { value: /g\/cm/i.test(written) || reading.value < 30 ? reading.value * 1000 : reading.value };
}

const placed = <T>(reading: { readonly problem: T }, written: string): { readonly problem: T } => ({
  problem: { ...reading.problem, at: [0, written.length] },
});

const numbers = (title: string, description: string, example: string) =>
  opens('workshop:stock', { title, description, examples: [example] }, 'numbers');

const clampForce = quantity('force', 'clamp', 'Force of the clamp where a spec gives none.', '5 kN');

export const workshopSchema = z.strictObject({
  workshop: text('text', 'workshop', 'Name of the workshop; nothing depends on it.', 'Saltmarsh').optional(),
  measuring: value('number', readMeasuring, {
    title: 'measuring',
    description: 'Uncertainty ± of a reading that gives none of its own, mm.',
    examples: ['0.02'],
  }).optional(),
  limits: opens('workshop:limits', {
    title: 'limits',
    description: 'Limits of the house by name, each in place of the built-in one.',
    examples: ['running-gap: 0.3'],
  }).optional(),
  bearings: opens('workshop:bearings', {
    title: 'bearings',
    description: 'Bearing codes of the house, each a designation or a size.',
    examples: ['DB-17: { code: 6803-2RS C3 }'],
  }).optional(),
  materials: opens('workshop:materials', {
    title: 'materials',
    description: 'Materials of the house by name.',
    examples: ['forged 7050: { E: 71 GPa, nu: 0.33, yield: 430 MPa }'],
  }).optional(),
  stock: opens('workshop:stock', {
    title: 'stock',
    description:
      'What is on the shelf: bearings with counts, spoke lengths by profile, thicknesses of shims.',
    examples: ['{ shims: [0.1, 0.2, 0.3] }'],
  }).optional(),
  drivers: opens(
    'workshop:drivers',
    {
      title: 'drivers',
      description: 'Press and drift rings on the wall with their diameters.',
      examples: ['- { name: D26, outside: 25.8, inside: 18 }'],
    },
    'list',
  ).optional(),
  defaults: opens('workshop:defaults', {
    title: 'defaults',
    description: 'What holds where a spec says nothing: clamp, temperature, rider.',
    examples: ['{ clamp: 5 kN, rider: 95 kg }'],
  }).optional(),
  notes: text('text', 'notes', 'Free text.', 'limits agreed in spring').optional(),
});

export const houseBearingSchema = z.strictObject({
  code: text('code', 'code', 'The designation it stands for.', '6803-2RS C3').optional(),
  size: value('size', readSize, {
    title: 'size',
    description: 'Bore × outside diameter × width, mm.',
    examples: ['17x26x5'],
  }).optional(),
});

export const materialSchema = z.strictObject({
  E: quantity('stress', 'E', "Young's modulus, MPa or GPa.", '71 GPa').optional(),
  nu: value('number', (w) => readNumber(w, "Poisson's ratio", 0, 0.5, '0.33'), {
    title: 'nu',
    description: "Poisson's ratio.",
    examples: ['0.33'],
  }).optional(),
  expansion: value('number', readExpansion, {
    title: 'expansion',
    description: 'Thermal expansion, 10⁻⁶/K.',
    examples: ['23'],
  }).optional(),
  density: value('number', readDensity, {
    title: 'density',
    description: 'Density, kg/m³.',
    examples: ['2810'],
  }).optional(),
  yield: quantity('stress', 'yield', 'Yield strength, MPa.', '505 MPa').optional(),
});

export const stockSchema = z.strictObject({
  bearings: opens('workshop:stock-bearings', {
    title: 'bearings',
    description: 'Bearing codes and how many there are.',
    examples: ['6803-2RS: 12'],
  }).optional(),
  spokes: opens('workshop:stock-spokes', {
    title: 'spokes',
    description: 'Spoke profiles and the lengths there are, mm.',
    examples: ['2.0/1.8/2.0: [289, 291]'],
  }).optional(),
  shims: numbers('shims', 'Thicknesses of shims there are, mm.', '[0.1, 0.2, 0.3]').optional(),
});

export const driverSchema = z.strictObject({
  name: text('name', 'name', 'What is written on it.', 'D26'),
  outside: shaft('outside', 'Outside diameter, mm.', '25.8').optional(),
  inside: bore('inside', 'Inside diameter, mm.', '18').optional(),
});

export const defaultsSchema = z.strictObject({
  clamp: clampForce.optional(),
  temperature: value(
    'temperature',
    (written) => {
      const reading = readTemperatureRange(written);
      return 'problem' in reading ? reading : { value: reading.range };
    },
    { title: 'temperature', description: 'Range of temperature in service, °C.', examples: ['-10..45 °C'] },
  ).optional(),
  rider: quantity('mass', 'rider', 'Mass of the rider, kg.', '95 kg').optional(),
});
