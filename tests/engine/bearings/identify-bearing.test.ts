import { expect, test } from 'vitest';
import { bearingsFitting, identifyBearing } from '../../../server/engine/bearings/identify-bearing.ts';
import { csvRows } from './csv-rows.ts';
import { decoded } from './decoded.ts';

const size = (bore: number, outside: number, width: number) => ({ bore, outside, width });

test('every printed size is identified as the bearing that prints it', () => {
  // bearings_deep_groove.csv: sizes read in two to twelve makers' catalogues, named in its `source` column.
  for (const row of csvRows('bearings_deep_groove')) {
    for (const width of [row.B_open_mm, row.B_closed_mm].filter(Boolean)) {
      const measured = size(Number(row.d_mm), Number(row.D_mm), Number(width));
      const { candidates } = identifyBearing(measured);
      const exact = candidates.filter(({ off }) => off.bore === 0 && off.outside === 0 && off.width === 0);
      const numbers = exact.map(({ code }) => decoded(code.replace(/-2(RS|Z)$/, '')).normalised);
      // 617/x closed has two printed widths (disagreements.csv) and is known here by the wide one.
      const thin = row.designation?.startsWith('617/') && width !== row.B_open_mm;
      if (!thin) expect(numbers, `${row.designation} ${width}`).toContain(row.designation);
    }
  }
});

test('15 × 26 × 7 is told from 15 × 24 × 5 and 15 × 28 × 7', () => {
  // NSK E1102e p.B8: 6802 is 15 x 24 x 5, 6902 is 15 x 28 x 7. from memory: 15267 is 15 x 26 x 7.
  const { candidates, nearMisses } = identifyBearing(size(15, 26, 7));
  expect(candidates.map(({ code }) => code)).toEqual(['15267']);
  const traps = new Map(nearMisses.map(({ code, trap }) => [code, trap]));
  expect(traps.get('6902')).toBe('same bore and width, outside 2 mm larger');
  expect(traps.get('6802')).toBe('same bore, outside 2 mm smaller, 2 mm narrower');
  const wide = identifyBearing(size(15, 28, 7));
  expect(wide.candidates[0]?.code).toBe('6902');
  expect(wide.nearMisses.map(({ code }) => code)).toContain('15267');
});

test('worn parts and callipers are allowed for, and the difference is stated', () => {
  // common practice: worn rings read 0.02 to 0.05 off; ISO 492: a ring may be up to 0.12 mm narrow.
  const { candidates } = identifyBearing(size(17.03, 25.96, 4.9));
  expect(candidates[0]?.code).toBe('6803');
  expect(candidates[0]?.within).toBe(true);
  expect(candidates[0]?.off.bore).toBeCloseTo(0.03, 9);
  expect(candidates[0]?.off.outside).toBeCloseTo(-0.04, 9);
  expect(candidates[0]?.off.width).toBeCloseTo(-0.1, 9);
});

test('a ring that is wider or larger than its limits allow is no candidate', () => {
  expect(identifyBearing(size(17, 26, 5.2)).candidates).toEqual([]);
  expect(identifyBearing(size(17, 26.3, 5)).candidates).toEqual([]);
  expect(identifyBearing(size(17, 26, 4.7)).candidates).toEqual([]);
  expect(identifyBearing(size(17, 26, 5.2)).nearMisses[0]?.code).toBe('6803');
});

test('a finer reading narrows the candidates', () => {
  const rough = identifyBearing(size(9.53, 22.2, 7.1), size(0.1, 0.1, 0.1)).candidates.map(
    ({ code }) => code,
  );
  expect(rough).toContain('R6-2RS');
  const fine = identifyBearing(size(9.6, 22.2, 7.1), size(0.01, 0.03, 0.03)).candidates;
  expect(fine).toEqual([]);
});

test('inch and metric sizes are traps of each other', () => {
  // NMB p.19: R8 is 12.7 x 28.575; NSK E1102e p.B8: 6001 is 12 x 28 x 8.
  const { candidates, nearMisses } = identifyBearing(size(12.7, 28.57, 7.93));
  expect(candidates.map(({ code }) => code)).toContain('R8-2RS');
  expect(nearMisses.map(({ code }) => code)).toContain('6001');
});

test('open and closed widths are told apart where they differ', () => {
  // NSK E1102e B34-B37: 688 is 4 wide open, 5 with shields; SKF 2017: 628/8 is 5 wide.
  const closed = identifyBearing(size(8, 16, 5)).candidates;
  expect(closed.find(({ code }) => code === '688-2RS')?.closed).toBe(true);
  expect(closed.map(({ code }) => code)).toContain('628/8');
  expect(identifyBearing(size(8, 16, 4)).candidates[0]).toMatchObject({ code: '688', closed: false });
});

test('codes that fit a seat are listed by bore and outside, commonest first', () => {
  // NSK E1102e p.B8: 6802 15 x 24 x 5; ISO 15 table 2: 62802 and 63802 share its diameters.
  const codes = bearingsFitting({ bore: 15, outside: 24 }).map(({ code }) => code);
  expect(codes[0]).toBe('6802');
  expect(codes).toEqual(expect.arrayContaining(['62802', '63802']));
  expect(bearingsFitting({ outside: 28 }).map(({ code }) => code)).toEqual(
    expect.arrayContaining(['6902', '6001', '17287']),
  );
  expect(bearingsFitting({ bore: 15, outside: 24, width: 5 }).map(({ code }) => code)).toContain('6802');
  expect(bearingsFitting({ bore: 14.2 })).toEqual([]);
});
