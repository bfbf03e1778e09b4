import { expect, test } from 'vitest';
import { type QuantityKind, readQuantity, readTemperatureRange } from '../../server/spec/quantity.ts';
import {
  readBalls,
  readBesidePlace,
  readGroove,
  readNumber,
  readSize,
} from '../../server/spec/small-values.ts';

/** Units: SI Brochure, 9th edition; kgf by standard gravity 9.80665 m/s²; lbf = 0.45359237 kg × 9.80665 m/s². */
const quantities: readonly [string, QuantityKind, number, string][] = [
  ['5 kN', 'force', 5000, 'N'],
  ['5kN', 'force', 5000, 'N'],
  ['1100 N', 'force', 1100, 'N'],
  ['110 kgf', 'force', 1078.7315, 'N'],
  ['100 lbf', 'force', 444.82216152605, 'N'],
  ['12 N·m', 'torque', 12000, 'N·mm'],
  ['12 Nm', 'torque', 12000, 'N·mm'],
  ['12 N.m', 'torque', 12000, 'N·mm'],
  ['12 N⋅m', 'torque', 12000, 'N·mm'],
  ['445 g', 'mass', 0.445, 'kg'],
  ['95 kg', 'mass', 95, 'kg'],
  ['71 GPa', 'stress', 71000, 'MPa'],
  ['505 N/mm²', 'stress', 505, 'MPa'],
  ['40 N/mm', 'rate', 40, 'N/mm'],
  ['4.5 bar', 'pressure', 4.5, 'bar'],
];

test.each(quantities)('%s is a %s of %d %s', (written, kind, value, unit) => {
  const reading = readQuantity(written, kind);
  expect('quantity' in reading && reading.quantity.unit).toBe(unit);
  if ('quantity' in reading) expect(reading.quantity.value).toBeCloseTo(value, 6);
});

test.each([
  ['5', 'force', '5 kN'],
  ['1100', 'force', '1100 N'],
  ['12', 'torque', '12 N·m'],
  ['95', 'mass', '95 kg'],
  ['445', 'mass', '445 g'],
] as const)('%s without a unit is no %s; %s is offered', (written, kind, suggestion) => {
  const reading = readQuantity(written, kind);
  expect(reading).toMatchObject({ problem: { code: 'wrong-unit', suggestion } });
});

test('a unit with a letter too many is offered right', () => {
  expect(readQuantity('95 kgs', 'mass')).toMatchObject({
    problem: { code: 'wrong-unit', suggestion: '95 kg' },
  });
  expect(readQuantity('5 kNs', 'force')).toMatchObject({ problem: { suggestion: '5 kN' } });
  expect(readQuantity('5 constructor', 'force')).toMatchObject({ problem: { code: 'wrong-unit' } });
});

test('a unit of something else is named', () => {
  expect(readQuantity('12 N·m', 'force')).toMatchObject({
    problem: {
      code: 'wrong-unit',
      message: '12 N·m is a torque; a force is wanted here, as in 5 kN, 1100 N or 110 kgf',
    },
  });
  expect(readQuantity('5 furlong', 'force')).toMatchObject({ problem: { code: 'wrong-unit' } });
  expect(readQuantity('5,2 kN', 'force')).toMatchObject({
    problem: { code: 'decimal-comma', suggestion: '5.2 kN' },
  });
});

test.each([
  ['-10..45 °C', -10, 45],
  ['−10..45 °C', -10, 45],
  ['-10…45 C', -10, 45],
  ['-10 .. +45 °C', -10, 45],
])('%s is a range of temperature', (written, lo, hi) => {
  expect(readTemperatureRange(written)).toMatchObject({ range: { lo, hi } });
});

test('a range in °F is shown in °C, one without a unit with it', () => {
  // 14 °F = −10 °C and 113 °F = 45 °C: t/°C = (t/°F − 32) × 5/9, NIST SP 811, B.8.
  expect(readTemperatureRange('14..113 °F')).toMatchObject({
    problem: { code: 'wrong-unit', suggestion: '-10..45 °C' },
  });
  expect(readTemperatureRange('-10..45')).toMatchObject({
    problem: { code: 'wrong-unit', suggestion: '-10..45 °C' },
  });
  expect(readTemperatureRange('45..-10 °C')).toMatchObject({ problem: { suggestion: '-10..45 °C' } });
});

test('a bearing size is bore × outside × width', () => {
  for (const written of ['17x26x5', '17 × 26 × 5', '17*26*5 mm', '17X26X5']) {
    expect(readSize(written)).toMatchObject({ value: { bore: 17, outside: 26, width: 5 } });
  }
  expect(readSize('26x17x5')).toMatchObject({ problem: { code: 'value-not-understood' } });
  expect(readSize('17x26')).toMatchObject({ problem: { code: 'value-not-understood' } });
});

test('balls are number × diameter, in mm or in inches', () => {
  expect(readBalls('13 × 2.778')).toEqual({ value: { count: 13, diameter: 2.778 } });
  // 3/16 in = 4.7625 mm, the size of ISO 3290-1 table 1.
  expect(readBalls('10 x 3/16 in')).toEqual({ value: { count: 10, diameter: 4.7625 } });
  expect(readBalls('13')).toMatchObject({ problem: { code: 'value-not-understood' } });
});

test('a groove is wider than its ball', () => {
  expect(readGroove('0.52')).toEqual({ value: { inner: 0.52, outer: 0.52 } });
  expect(readGroove('0.515/0.525')).toEqual({ value: { inner: 0.515, outer: 0.525 } });
  expect(readGroove('0.48')).toMatchObject({ problem: { code: 'value-not-understood' } });
});

test('a place beside the stack is measured from a face or a part', () => {
  expect(readBesidePlace('14.2 ±0.1')).toMatchObject({ value: { from: null, distance: { nominal: 14.2 } } });
  expect(readBesidePlace('2.5 from bearing.left')).toMatchObject({
    value: { from: 'bearing.left', distance: { nominal: 2.5 } },
  });
  expect(readNumber('abc', 'a number', 0, 1, '0.5')).toMatchObject({
    problem: { code: 'value-not-understood' },
  });
});
