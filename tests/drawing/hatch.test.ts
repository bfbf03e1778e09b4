import { expect, test } from 'vitest';
import { hatch } from '../../server/drawing/hatch.ts';
import type { Point } from '../../server/drawing/scene.ts';

const square: readonly Point[] = [
  { x: 0, y: 0 },
  { x: 20, y: 0 },
  { x: 20, y: 20 },
  { x: 0, y: 20 },
];
/** A tube wall with a groove: the hatching has to stop at the groove and go on behind it. */
const grooved: readonly Point[] = [
  { x: 0, y: 0 },
  { x: 20, y: 0 },
  { x: 20, y: 10 },
  { x: 12, y: 10 },
  { x: 12, y: 4 },
  { x: 8, y: 4 },
  { x: 8, y: 10 },
  { x: 0, y: 10 },
];

test.each([true, false])('hatch lines run at 45° at the distance asked (rising %s)', (rising) => {
  const shape = hatch(square, { rising, spacing: 2 });
  if (shape.kind !== 'hatch') throw new Error('not a hatch');
  const offsets = shape.lines.map(([from, to]) => {
    // On paper y runs down: a line that rises to the right has y falling.
    expect((to.y - from.y) / (to.x - from.x)).toBeCloseTo(rising ? -1 : 1, 9);
    return (rising ? from.x + from.y : from.x - from.y) / Math.SQRT2;
  });
  const gaps = offsets.slice(1).map((at, index) => at - (offsets[index] ?? 0));
  expect(gaps.length).toBeGreaterThan(8);
  for (const gap of gaps) expect(gap).toBeCloseTo(2, 9);
});

test('the lines of a square cover its area: length × spacing', () => {
  const shape = hatch(square, { rising: true, spacing: 0.1 });
  if (shape.kind !== 'hatch') throw new Error('not a hatch');
  const length = shape.lines.reduce((sum, [from, to]) => sum + Math.hypot(to.x - from.x, to.y - from.y), 0);
  expect(length * 0.1).toBeGreaterThan(398);
  expect(length * 0.1).toBeLessThan(402);
});

test('no hatch line crosses a groove', () => {
  const shape = hatch(grooved, { rising: false, spacing: 0.5 });
  if (shape.kind !== 'hatch') throw new Error('not a hatch');
  for (const [from, to] of shape.lines) {
    const middle = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
    expect(8 < middle.x && middle.x < 12 && 4 < middle.y).toBe(false);
  }
});
