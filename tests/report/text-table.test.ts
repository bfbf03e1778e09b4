import { expect, test } from 'vitest';
import { textTable } from '../../server/report/text-table.ts';

test('columns stand under one another, figures to the right, nothing hangs behind', () => {
  const lines = [
    ['part', 'mean', 'note'],
    ['end-cap.left', '14.03', ''],
    ['shim.left', '0.1', 'two of them'],
  ];
  expect(textTable(lines, { indent: 2, right: [1] })).toEqual([
    '  part           mean  note',
    '  end-cap.left  14.03',
    '  shim.left       0.1  two of them',
  ]);
});
