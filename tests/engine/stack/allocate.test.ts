import { expect, test } from 'vitest';
import { allocate } from '../../../server/engine/stack/allocate.ts';

const parts = [
  { id: 'bought', halfTolerance: 0.06, fixed: true },
  { id: 'sleeve', halfTolerance: 0.02, fixed: false },
  { id: 'cap', halfTolerance: 0.04, fixed: false },
];

test('scaled tolerances use up exactly what is wanted, by either method', () => {
  const worst = allocate(parts, 0.15, 'worst');
  expect(worst?.halfTolerances.reduce((sum, part) => sum + part.halfTolerance, 0)).toBeCloseTo(0.15, 12);
  const rss = allocate(parts, 0.08, 'rss');
  expect(Math.hypot(...(rss?.halfTolerances ?? []).map((part) => part.halfTolerance))).toBeCloseTo(0.08, 12);
});

test('bought parts keep their tolerance', () => {
  expect(allocate(parts, 0.15, 'worst')?.halfTolerances[0]).toEqual({ id: 'bought', halfTolerance: 0.06 });
});

test('where bought parts alone use everything up, or nothing is free, there is no allocation', () => {
  expect(allocate(parts, 0.06, 'worst')).toBeNull();
  expect(allocate(parts, 0.05, 'rss')).toBeNull();
  expect(allocate([{ id: 'bought', halfTolerance: 0.01, fixed: true }], 1, 'worst')).toBeNull();
});
