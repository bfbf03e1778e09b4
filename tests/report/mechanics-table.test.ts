import { expect, test } from 'vitest';
import { resolveLimits } from '../../server/analysis/limits.ts';
import { fitTable, playTable } from '../../server/report/mechanics-table.ts';
import { asWritten } from '../support/analyze-text.ts';
import { hubWith } from '../support/spec-at-cursor.ts';

const limits = resolveLimits(null);

/** As in the test of the hints: clearance from the table alone, an aluminium sleeve under 2 kN. Demo data. */
const hub = (...changes: readonly (readonly [string, string])[]): string =>
  `${hubWith(
    ['    outside: 19.6', '    outside: 19.6\n    material: aluminium 7075-T6'],
    ...changes,
  ).replaceAll('seat: shell', 'balls: 13 × 2.778\n    groove: 0.52\n    seat: shell')}clamp: 2 kN\n`;

function pairOf(text: string): Record<string, string | null> {
  const { titles, rows } = playTable(asWritten(text), limits);
  const [row] = rows;
  expect(row?.cells).toHaveLength(titles.length);
  return {
    ...Object.fromEntries(titles.map((title, at) => [title, row?.cells[at] ?? ''])),
    gravity: row?.gravity ?? null,
  };
}

/*
 * By hand: √(4·0.11112·0.0105 − 0.0105²) = 67.5 µm of axial clearance, less δ = 10 µm; the clamp takes
 * 2000·62.06/(71 700·72.06) = 24.0 µm, which leaves δ = −14 µm and 53.5 µm of play, 3.5 over the usual 50.
 */
test('a pair with too much play says how much over the most wanted it is', () => {
  const row = pairOf(hub());
  expect(row['Play on the bench']).toMatch(/^5[78] µm$/);
  expect(row.Clamped).toMatch(/^5[34] µm$/);
  expect(row['Clamp shortens']).toBe('24 µm');
  expect(row.Load).toBe('none');
  expect(row.Verdict).toMatch(/^[34] µm over the most wanted, 50 µm$/);
  expect(row.gravity).toBe('warning');
});

test('a pair with some play runs free', () => {
  // 20 µm shorter: δ = −34 µm once clamped, 67.5 − 34 = 33.5 µm are left.
  const row = pairOf(hub(['62.06', '62.04']));
  expect(row.Clamped).toMatch(/^3[34] µm$/);
  expect(row).toMatchObject({ Verdict: 'the balls run free', gravity: null });
});

test('a pair without play says what it carries, and which way', () => {
  // 82 µm are missing on the bench: two kilonewtons do not press them out of the balls, the spacer stays loose.
  const short = pairOf(hub(['62.06', '61.90']));
  expect(short).toMatchObject({
    Clamped: 'none',
    gravity: 'warning',
    Load: '2 kN',
    'Clamp shortens': '0 µm',
  });
  expect(short.Verdict).toBe('the balls carry the whole clamp: the rings do not reach the spacer');
  expect(short['Contact stress']).toMatch(/^\d+ MPa$/);
  // δ = −60 − 24: 16 µm more than the 67.5 there are.
  const tight = pairOf(hub(['62.06', '61.99']));
  expect(tight.Verdict).toBe('loaded: the inner rings are pressed together');
  expect(tight.Load).toMatch(/^\d+(\.\d+)? N$/);
  // Nothing holds rings in seats without a wall: they give way instead of carrying.
  const long = pairOf(hub(['62.06', '62.30']));
  expect(long).toMatchObject({ Clamped: 'none', Load: 'none', gravity: 'warning' });
  expect(long.Verdict).toBe('the outer rings are pushed along their seats');
});

test('without a clamp, or without a clearance, it is said what is missing', () => {
  expect(pairOf(hub().replace('clamp: 2 kN\n', ''))).toMatchObject({
    Verdict: 'no clamp is written to reckon with',
    Clamped: '',
    gravity: null,
  });
  expect(pairOf(hub().replaceAll('6803-2RS', '63800-2RS')).Verdict).toMatch(/^needs |the balls|over|loaded/);
});

test('a bearing has its clearance before and after, and what its fits take', () => {
  const walled = hub(['  between-shoulders', '  outside: 34\n  between-shoulders']);
  const { titles, rows } = fitTable(asWritten(walled));
  expect(rows).toHaveLength(2);
  const cell = (title: string): string => rows[0]?.cells[titles.indexOf(title)] ?? '';
  expect(cell('Bearing')).toBe('bearing.left');
  // ISO 5753-1, group N over 10 to 18 mm.
  expect(cell('Before mounting')).toBe('3 to 18 µm');
  const number = (text: string): number => Number(/−?\d+/.exec(text)?.[0].replace('−', '-'));
  // What is left is what was there, 10.5 on average, less what is taken.
  expect(
    Math.abs(number(cell('Mounted clearance')) - (10.5 - number(cell('Taken by the fits')))),
  ).toBeLessThan(1.6);
  // N7 against 0/−9: from −7 + 9 = 2 µm loose to 28 µm tight (ISO 286-2, ISO 492), less after smoothing.
  expect(cell('Outer ring tight by')).toMatch(/^1[0-2] µm \(−2 to 2[4-7] µm\)$/);
  expect(cell('Seat pressure')).toMatch(/^\d(\.\d+)? MPa$/);
});
