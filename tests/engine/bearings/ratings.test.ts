import { expect, test } from 'vitest';
import { csvRows } from './csv-rows.ts';
import { decoded } from './decoded.ts';

// The `source` column of each table names the catalogues that print the numbers.

test('every deep groove rating lies within the range that makers print', () => {
  const rows = csvRows('bearings_deep_groove').filter((row) => row.C_N_min);
  for (const row of rows) {
    const { dynamicRating, staticRating } = decoded(row.designation ?? '');
    expect(dynamicRating, row.designation).toBeGreaterThanOrEqual(Number(row.C_N_min));
    expect(dynamicRating, row.designation).toBeLessThanOrEqual(Number(row.C_N_max));
    expect(staticRating, row.designation).toBeGreaterThanOrEqual(Number(row.C0_N_min));
    expect(staticRating, row.designation).toBeLessThanOrEqual(Number(row.C0_N_max));
  }
  expect(rows.length).toBeGreaterThan(140);
});

test('a bearing for which no maker prints a rating has none', () => {
  const rows = csvRows('bearings_deep_groove').filter((row) => !row.C_N_ref);
  for (const row of rows) expect(decoded(row.designation ?? '').dynamicRating, row.designation).toBeNull();
  expect(rows.length).toBeGreaterThan(60);
});

test('the ratings name their source and the range of the makers', () => {
  // NSK E1102e p.B8-B9: 6902 has Cr 4350 N and C0r 2260 N; the table's range over ten makers is 4030 to 4360 N.
  const bearing = decoded('6902');
  expect([bearing.dynamicRating, bearing.staticRating]).toEqual([4350, 2260]);
  expect(bearing.sources.find((line) => line.startsWith('ratings: '))).toContain('E1102e');
  expect(bearing.notes.join(' ')).toContain('from 4.03 to 4.36 kN');
});

test('every double row rating is the printed one', () => {
  for (const row of csvRows('bearings_double_row').filter((r) => r.C_N)) {
    const { dynamicRating, staticRating } = decoded(row.designation ?? '');
    expect([dynamicRating, staticRating], row.designation).toEqual([Number(row.C_N), Number(row.C0_N)]);
  }
});

test('every ball count and diameter is one that the maker prints for that bearing', () => {
  const printed = new Map<string, string[]>();
  for (const row of csvRows('ball_geometry')) {
    if (!row.designation) continue;
    const pair = `${Number(row.n_balls)} × ${Number(row.ball_dia_mm)}`;
    printed.set(row.designation, [...(printed.get(row.designation) ?? []), pair]);
  }
  for (const [designation, pairs] of printed) {
    const balls = decoded(designation).balls;
    expect(pairs, designation).toContain(`${balls?.count} × ${balls?.diameter}`);
  }
  expect(printed.size).toBeGreaterThan(60);
});

test('balls worked back from ratings give those ratings again by ISO 281 and ISO 76', () => {
  // ISO 281: C = 1.3 fc (Z^2/3) Dw^1.8; ISO 76: C0 = f0 Z Dw². Factors fc and f0 for Dw/Dpw from the tables of both
  // standards (read as GOST 18855-2013 and GOST 18854-2013), interpolated. Ratings: NSK E1102e p.B8-B11.
  const rows = [
    { code: '61902', C: 4350, C0: 2260, d: 15, D: 28 },
    { code: '61802', C: 2070, C0: 1260, d: 15, D: 24 },
    { code: '61803', C: 2630, C0: 1570, d: 17, D: 26 },
    { code: '61903', C: 4600, C0: 2550, d: 17, D: 30 },
    { code: '61804', C: 4000, C0: 2470, d: 20, D: 32 },
    { code: '61904', C: 6400, C0: 3700, d: 20, D: 37 },
    { code: '6002', C: 5600, C0: 2830, d: 15, D: 32 },
    { code: '6003', C: 6000, C0: 3250, d: 17, D: 35 },
    { code: '6202', C: 7650, C0: 3750, d: 15, D: 35 },
    { code: '6203', C: 9550, C0: 4800, d: 17, D: 40 },
  ];
  for (const { code, C, C0, d, D } of rows) {
    const balls = decoded(code).balls;
    if (!balls) throw new Error(`${code} has no balls`);
    const ratio = balls.diameter / ((d + D) / 2);
    const dynamic = 1.3 * at(fc, ratio * 100 - 1) * balls.count ** (2 / 3) * balls.diameter ** 1.8;
    const fixed = at(f0, ratio * 100) * balls.count * balls.diameter ** 2;
    expect(Math.abs(dynamic / C - 1), code).toBeLessThan(0.01);
    expect(Math.abs(fixed / C0 - 1), code).toBeLessThan(0.015);
  }
});

test('a full complement bearing has no printed ball count, since the printed one is with a cage', () => {
  expect(decoded('608').balls).not.toBeNull();
  expect(decoded('608 2RS MAX').balls).toBeNull();
});

const at = (table: readonly number[], x: number): number => {
  const low = Math.floor(x);
  const [a, b] = [table[low] ?? Number.NaN, table[low + 1] ?? Number.NaN];
  return a + (b - a) * (x - low);
};

/** ISO 281 table of fc for single row radial ball bearings, Dw cos α / Dpw = 0.01, 0.02 … 0.40. */
const fc = [
  29.1, 35.8, 40.3, 43.8, 46.7, 49.1, 51.1, 52.8, 54.3, 55.5, 56.6, 57.5, 58.2, 58.8, 59.3, 59.6, 59.8, 59.9,
  60.0, 59.9, 59.8, 59.6, 59.3, 59.0, 58.6, 58.2, 57.7, 57.1, 56.6, 56.0, 55.3, 54.6, 53.9, 53.2, 52.4, 51.7,
  50.9, 50.0, 49.2, 48.4,
];
/** ISO 76 table of f0 for radial ball bearings, Dw cos α / Dpw = 0.00, 0.01 … 0.40. */
const f0 = [
  14.7, 14.9, 15.1, 15.3, 15.5, 15.7, 15.9, 16.1, 16.3, 16.5, 16.4, 16.1, 15.9, 15.6, 15.4, 15.2, 14.9, 14.7,
  14.4, 14.2, 14.0, 13.7, 13.5, 13.2, 13.0, 12.8, 12.5, 12.3, 12.1, 11.8, 11.6, 11.4, 11.2, 10.9, 10.7, 10.5,
  10.3, 10.0, 9.8, 9.6, 9.4,
];
