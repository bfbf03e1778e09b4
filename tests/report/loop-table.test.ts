import { expect, test } from 'vitest';
import { type LoopRow, loopTable } from '../../server/report/loop-table.ts';
import { asWritten } from '../support/analyze-text.ts';

const hub = ({
  spacer = '62.06 ±0.01',
  width = '100 ±0.2',
  depth = '5.1 ±0.02',
  more = '',
} = {}): string => `hub: Dunlin front
position: front
width: ${width}
shell:
  between-shoulders: 62.05 ±0.02
  seats:
    left: { bore: 26 N7, depth: ${depth} }
    right: { bore: 26 N7, depth: 5.1 ±0.02 }
stack:
  - end-cap: left
    length: 14.03 ±0.02
  - bearing: left
    code: 6803-2RS
    seat: shell.left
  - spacer: centre
    length: ${spacer}
  - bearing: right
    code: 6803-2RS
    seat: shell.right
  - end-cap: right
    length: 14.03 ±0.02
${more}`;

const rows = (text: string): readonly LoopRow[] => loopTable(asWritten(text));
const widthOf = (text: string): LoopRow | undefined => rows(text).find(({ kind }) => kind === 'width');

test('width, pair and seats have a row each, the width first', () => {
  expect(rows(hub()).map(({ kind, what }) => [kind, what])).toEqual([
    ['width', 'clamped width'],
    ['pair', 'bearing.left to bearing.right, inner − outer'],
    ['seat', 'recess in shell.left'],
    ['seat', 'recess in shell.right'],
  ]);
});

test('figures are said to a hundredth, a difference with its sign', () => {
  // By hand: see the sums of the sample hub; ring widths 0/−0.12 by ISO 492, class Normal.
  expect(widthOf(hub())).toMatchObject({
    nominal: '100.12',
    mean: '100.00',
    worst: '99.83 to 100.17',
    rss: '99.91 to 100.09',
    wanted: '99.80 to 100.20',
    outside: 'none',
    measured: '',
    gravity: null,
  });
  const pair = rows(hub({ spacer: '62.02 ±0.01' })).find(({ kind }) => kind === 'pair');
  expect(pair).toMatchObject({ nominal: '−0.03', verdict: 'inner distance 0.03 mm shorter than outer' });
});

test('a width is judged by its mean, then by the builds, then by the worst corner', () => {
  // Mean 100.00 ± 0.09 (three sigma) and ± 0.17 in the corner; moved by the spacer, or held against less.
  const judged = (options: Parameters<typeof hub>[0]) => widthOf(hub(options))?.gravity;
  expect(judged({ spacer: '62.30 ±0.01' })).toBe('error');
  expect(judged({ width: '100 ±0.05' })).toBe('warning');
  expect(judged({ width: '100 ±0.12' })).toBe('information');
  expect(judged({ width: '100 ±0.18' })).toBeNull();
  expect(widthOf(hub({ spacer: '62.30 ±0.01' }))?.verdict).toBe('0.04 mm over the upper limit');
  expect(widthOf(hub({ spacer: '61.80 ±0.01' }))?.verdict).toBe('0.06 mm under the lower limit');
});

test('measured parts decide the verdict, beside the drawn figures', () => {
  const row = widthOf(hub({ spacer: '62.06 ±0.01 measured 62.40' }));
  expect(row).toMatchObject({
    mean: '100.00',
    measured: '100.34',
    gravity: 'error',
    verdict: '0.14 mm over the upper limit',
  });
});

test('a ring that stands out of its seat is said to stand proud', () => {
  const seat = rows(hub({ depth: '4.2 ±0.02' })).find(({ what }) => what === 'recess in shell.left');
  // 4.2 less a ring of 5 − 0.06 on average.
  expect(seat).toMatchObject({ mean: '−0.74', verdict: 'the ring stands 0.74 mm proud', gravity: 'warning' });
});

test('a loop that lacks a dimension has no row', () => {
  const text = hub().replace('    length: 62.06 ±0.01\n', '');
  expect(rows(text).map(({ kind }) => kind)).toEqual(['seat', 'seat']);
});

test('a row leads to the limits it was held against, or to its first dimension', () => {
  expect(widthOf(hub())?.path).toEqual(['width']);
  expect(rows(hub()).find(({ kind }) => kind === 'seat')?.path).toEqual(['shell', 'seats', 'left', 'depth']);
});
