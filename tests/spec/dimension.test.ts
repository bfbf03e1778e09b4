import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readDimension } from '../../server/spec/dimension.ts';
import type { DimensionContext } from '../../server/spec/dimension-text.ts';
import type { Dimension } from '../../server/spec/model.ts';
import { withNominal } from '../../server/spec/with-nominal.ts';

function read(written: string, context: DimensionContext = 'length'): Dimension {
  const reading = readDimension(written, context);
  if ('problem' in reading) throw new Error(`${written}: ${reading.problem.message}`);
  return reading.dimension;
}

function problem(written: string, context: DimensionContext = 'length') {
  const reading = readDimension(written, context);
  if ('dimension' in reading) throw new Error(`${written} was understood`);
  return reading.problem;
}

/** lower, nominal, upper in mm; the notations are those of the language, a matter of definition. */
const limits: readonly [written: string, lower: number, nominal: number, upper: number][] = [
  ['62.05 ±0.02', -0.02, 62.05, 0.02],
  ['62.05±0.02', -0.02, 62.05, 0.02],
  ['62.05 +-0.02', -0.02, 62.05, 0.02],
  ['62.05 +/-0.02', -0.02, 62.05, 0.02],
  ['62.05 +/- 0.02 mm', -0.02, 62.05, 0.02],
  ['62 +0.05/-0.02', -0.02, 62, 0.05],
  ['62 -0.02/+0.05', -0.02, 62, 0.05],
  ['62 +0.05 -0.02', -0.02, 62, 0.05],
  ['62 +0.05/0', 0, 62, 0.05],
  ['62 0/-0.12', -0.12, 62, 0],
  ['62 0/−0.12', -0.12, 62, 0],
  ['62 −0.01/−0.03', -0.03, 62, -0.01],
  ['62 -0.01/-0.03', -0.03, 62, -0.01],
  ['61.98..62.02', -0.02, 62, 0.02],
  ['61.98 … 62.02', -0.02, 62, 0.02],
  ['62 ±20 µm', -0.02, 62, 0.02],
  ['62 ±20 μm', -0.02, 62, 0.02],
  ['62 +10 µm/-20 µm', -0.02, 62, 0.01],
  // 1 in = 25.4 mm exactly: international yard and pound agreement, 1959.
  ['0.669 ±0.001 in', -0.0254, 16.9926, 0.0254],
  ['1 in +0.002/-0.001', -0.0254, 25.4, 0.0508],
  ['0.5..0.502 in', -0.0254, 12.7254, 0.0254],
  ['62\u00a0±0.02', -0.02, 62, 0.02],
];

test.each(limits)('%s is read with its deviations', (written, lower, nominal, upper) => {
  const dimension = read(written);
  expect(dimension.nominal).toBeCloseTo(nominal, 9);
  expect(dimension.tolerance.kind).toBe('limits');
  if (dimension.tolerance.kind !== 'limits') return;
  expect(dimension.tolerance.lower).toBeCloseTo(lower, 9);
  expect(dimension.tolerance.upper).toBeCloseTo(upper, 9);
  expect(dimension.written).toBe(written);
});

test.each([
  ['62.05', 62.05],
  ['14.0', 14],
  ['14 mm', 14],
  ['14mm', 14],
  ['Ø26', 26],
  ['⌀ 26', 26],
  ['.5', 0.5],
  // Inches as above.
  ['0.5 in', 12.7],
  ['0.5"', 12.7],
  ['1/2 in', 12.7],
  ['1/2 inch', 12.7],
  ['1 1/8 in', 28.575],
])('%s is a nominal alone', (written, nominal) => {
  expect(read(written)).toMatchObject({ nominal, tolerance: { kind: 'none' }, drawn: true, measured: null });
});

test.each([
  ['26 N7', 'bore', 'N', 7],
  ['26N7', 'bore', 'N', 7],
  ['26 JS6', 'bore', 'JS', 6],
  ['Ø26 H11', 'bore', 'H', 11],
  ['17 h6', 'shaft', 'h', 6],
  ['17 js5', 'shaft', 'js', 5],
  ['12 m6', 'shaft', 'm', 6],
] as const)('%s in a %s is the class %s%i', (written, context, letters, grade) => {
  expect(read(written, context).tolerance).toEqual({ kind: 'class', letters, grade });
});

test('a measured value stands beside the drawn one, or alone', () => {
  expect(read('62.05 ±0.02 measured 62.03')).toMatchObject({
    nominal: 62.05,
    drawn: true,
    measured: { value: 62.03, uncertainty: null },
  });
  expect(read('26 N7 measured 25.99', 'bore')).toMatchObject({
    tolerance: { kind: 'class' },
    measured: { value: 25.99 },
  });
  expect(read('measured 62.03')).toMatchObject({
    nominal: 62.03,
    drawn: false,
    measured: { value: 62.03, uncertainty: null },
  });
  expect(read('measured 62.03 ±0.01')).toMatchObject({
    drawn: false,
    measured: { value: 62.03, uncertainty: 0.01 },
  });
  expect(read('measured 62.03 ±10 µm').measured?.uncertainty).toBeCloseTo(0.01, 9);
  // Inches as above.
  expect(read('measured 0.5 in').measured?.value).toBeCloseTo(12.7, 9);
});

test('an offset may be negative, a length may not', () => {
  expect(read('-0.5 ±0.1', 'offset').nominal).toBe(-0.5);
  expect(problem('-14').message).toContain('-14 is negative');
});

test.each([
  ['14,03', '14.03'],
  ['14,03 ±0,02', '14.03 ±0.02'],
  ['14.03 ±0,02', '14.03 ±0.02'],
  ['1,234.5', '1234.5'],
])('the decimal comma of %s is one finding that writes %s', (written, suggestion) => {
  expect(problem(written)).toMatchObject({ code: 'decimal-comma', suggestion });
});

test.each([
  ['62.02..61.98', 'length', '61.98..62.02'],
  ['61.98–62.02', 'length', '61.98..62.02'],
  ['61.98-62.02', 'length', '61.98..62.02'],
  ['62 +0.05', 'length', '62 +0.05/0'],
  ['62 -0.05', 'length', '62 0/-0.05'],
  ['26 n7', 'bore', '26 N7'],
  ['17 H6', 'shaft', '17 h6'],
  ['1/2', 'length', '1/2 in'],
  ['14 cm', 'length', '140'],
] as const)('%s in a %s is offered as %s, which is understood', (written, context, suggestion) => {
  expect(problem(written, context).suggestion).toBe(suggestion);
  read(suggestion, context);
});

test.each([
  ['14 h6', 'length', 'h6'],
  ['26 N', 'bore', 'N'],
  ['26 H7/p6', 'bore', '/p6'],
  ['26 Q7', 'bore', 'Q7'],
  ['14.03 ±0.02 measured', 'length', 'measured'],
  ['14 abc', 'length', 'abc'],
  ['14 kN', 'length', 'kN'],
  ['abc', 'length', 'abc'],
  ['0', 'bore', '0'],
  ['14 ±', 'length', '±'],
  ['1/0 in', 'length', '1/0'],
  ['14 mm ±0.01 in', 'length', ' in'],
] as const)('%s in a %s is marked at %s', (written, context, marked) => {
  const { at } = problem(written, context);
  expect(written.slice(at[0], at[1])).toBe(marked);
});

describe('another nominal', () => {
  test.each([
    ['14.03 ±0.02', 13.91, '13.91 ±0.02'],
    ['14.00 ±0.02', 13.5, '13.50 ±0.02'],
    ['14 +0.05/0', 13.905, '13.905 +0.05/0'],
    ['61.98..62.02', 61.9, '61.88..61.92'],
    ['Ø26', 27, 'Ø27'],
    ['62.05 ±0.02 measured 62.03', 62, '62.00 ±0.02 measured 62.03'],
    ['measured 62.03', 62, '62 measured 62.03'],
    ['1/2 in', 25.4, '1 in'],
    ['0.500 ±0.001 in', 25.4, '1.000 ±0.001 in'],
  ])('%s becomes %d as %s', (written, nominal, wanted) => {
    expect(withNominal(read(written), nominal)).toBe(wanted);
  });

  const hundredths = fc.integer({ min: 100, max: 20_000 }).map((n) => n / 100);
  const tolerance = fc.constantFrom('', ' ±0.02', ' +0.05/0', ' 0/-0.12', ' +-0.1', ' -0.01/-0.03');
  const measured = fc.constantFrom('', ' measured 12.34', ' measured 12.34 ±0.01');
  test('keeps tolerance, unit and measured part, and reads back as asked', () => {
    fc.assert(
      fc.property(
        hundredths,
        hundredths,
        tolerance,
        fc.constantFrom('', ' in', ' mm'),
        measured,
        (old, nominal, tol, unit, rest) => {
          const before = read(`${old}${tol}${unit}${rest}`);
          const text = withNominal(before, nominal);
          const after = read(text);
          expect(after.nominal).toBeCloseTo(nominal, 3);
          expect(after.tolerance).toEqual(before.tolerance);
          expect(after.measured).toEqual(before.measured);
          expect(after.unit).toBe(before.unit);
          expect(text.endsWith(`${tol}${unit}${rest}`)).toBe(true);
        },
      ),
      { seed: 7, numRuns: 300 },
    );
  });

  test('moves both limits together', () => {
    fc.assert(
      fc.property(hundredths, fc.integer({ min: 1, max: 50 }), hundredths, (lower, width, nominal) => {
        const before = read(`${lower}..${(lower + width / 100).toFixed(2)}`);
        const after = read(withNominal(before, nominal));
        expect(after.nominal).toBeCloseTo(nominal, 3);
        expect(after.tolerance.kind).toBe('limits');
        if (after.tolerance.kind !== 'limits' || before.tolerance.kind !== 'limits') return;
        expect(after.tolerance.upper - after.tolerance.lower).toBeCloseTo(
          before.tolerance.upper - before.tolerance.lower,
          3,
        );
      }),
      { seed: 7, numRuns: 200 },
    );
  });
});

test('any text is read or told what is wrong with it, at a place inside it', () => {
  fc.assert(
    fc.property(fc.string({ unit: fc.constantFrom(...'0129.,±+-/ mincN7hØ…–µ') }), (written) => {
      const reading = readDimension(written, 'bore');
      if ('dimension' in reading) {
        expect(Number.isFinite(reading.dimension.nominal)).toBe(true);
        return;
      }
      const { at, message } = reading.problem;
      expect(0 <= at[0] && at[0] <= at[1] && at[1] <= written.length).toBe(true);
      expect(message).not.toMatch(/undefined|NaN|\[object|!/);
    }),
    { seed: 7, numRuns: 3000 },
  );
});

test('a length that no part of a wheel has is a slip, however many figures it takes', () => {
  for (const written of ['10001', '9'.repeat(400), '62 ±20000', '62.05 measured 99999']) {
    const read = readDimension(written, 'length');
    expect('problem' in read && read.problem.message).toContain('is above 10000 mm');
  }
  expect('dimension' in readDimension('10000', 'length')).toBe(true);
});
