import { expect, test } from 'vitest';
import { isPlausibleSize, readDimensionCode } from '../../../server/engine/bearings/dimension-code.ts';
import { csvRows } from './csv-rows.ts';

/** Dimension series that bearing numbers of this tool use (NSK E1102e Table 7.5, NTN 2203/E Table 5.2). */
const used = [
  '00',
  '02',
  '03',
  '10',
  '17',
  '18',
  '19',
  '22',
  '23',
  '28',
  '29',
  '30',
  '32',
  '33',
  '37',
  '38',
  '39',
];

test('every size of the ISO 15 plan from a bore of 8 mm on passes for a bearing size', () => {
  // ISO 15 general plan by GOST 3478-79 and NSK Table 7.1, as the rows name it.
  const rows = csvRows('iso15_dimension_plan').filter(
    (row) => used.includes(row.dimension_series ?? '') && 8 <= Number(row.d_mm) && Number(row.d_mm) <= 50,
  );
  const refused = rows.filter(
    (row) => !isPlausibleSize(Number(row.d_mm), Number(row.D_mm), Number(row.B_mm)),
  );
  expect(refused.map((row) => `${row.d_mm}x${row.D_mm}x${row.B_mm}`)).toEqual([]);
  expect(rows.length).toBeGreaterThan(200);
});

test('sizes that cannot be a bearing are refused', () => {
  expect(isPlausibleSize(28, 15, 7)).toBe(false);
  expect(isPlausibleSize(15, 18, 7)).toBe(false);
  expect(isPlausibleSize(15, 28, 2)).toBe(false);
  expect(isPlausibleSize(15, 28, 30)).toBe(false);
  expect(isPlausibleSize(15, 90, 20)).toBe(false);
});

test('five and six digits split into bore, outside and width', () => {
  // from memory: 15267 is 15 x 26 x 7 and 163110 is 16 x 31 x 10 in the cycle trade; the digits say so themselves.
  expect(readDimensionCode('15267')).toEqual([{ bore: 15, outside: 26, width: 7 }]);
  expect(readDimensionCode('163110')).toEqual([{ bore: 16, outside: 31, width: 10 }]);
  expect(readDimensionCode('91710')).toEqual([{ bore: 9, outside: 17, width: 10 }]);
  expect(readDimensionCode('28157')).toEqual([]);
  expect(readDimensionCode('15260')).toEqual([]);
  expect(readDimensionCode('1526')).toEqual([]);
});
