import { expect, test } from 'vitest';
import {
  crossingRoom,
  judgeCrossing,
  mostCrossingsByRule,
  mostCrossingsFree,
} from '../../../server/engine/wheel/flange-limits.ts';

const degrees = Math.PI / 180;
const heads = { wire: 2, head: 3.9, hole: 2.6 };

// Derived: distance of the next hole from the line of the spoke, lean, tangent and chord, ERD 600, hole circle 45.
test.each([
  [16, 3, 4.3456, 71.58, 8.7791],
  [18, 4, 2.1172, 84.28, 7.8142],
  [16, 4, 1.0639, 94.289, 8.7791],
])('%i holes and %i crossings leave so much room', (holes, crosses, neighbour, lean, chord) => {
  const room = crossingRoom(22.5, 300, holes, (crosses * 2 * Math.PI) / holes);
  expect(room.neighbour).toBeCloseTo(neighbour, 3);
  expect(room.lean / degrees).toBeCloseTo(lean, 2);
  expect(room.tangentAt / degrees).toBeCloseTo(85.699, 2);
  expect(room.chord).toBeCloseTo(chord, 3);
});

// Verdicts of the derived table, total holes on a rim of 600; 40 holes, 4 crossings is a warning on the small flange only.
test.each([
  [16, 1, 45, 'free'],
  [18, 2, 45, 'free'],
  [24, 2, 45, 'free'],
  [24, 3, 45, 'past the tangent'],
  [28, 3, 45, 'free'],
  [28, 3, 58, 'free'],
  [32, 3, 45, 'free'],
  [32, 4, 58, 'past the tangent'],
  [36, 3, 58, 'free'],
  [36, 4, 45, 'over the next hole'],
  [36, 4, 58, 'over the next head'],
  [40, 4, 45, 'over the next head'],
  [40, 4, 58, 'free'],
] as const)('%i holes, %i crossings, circle %i: %s', (total, crosses, circle, verdict) => {
  const holes = total / 2;
  const angle = (crosses * 2 * Math.PI) / holes;
  expect(judgeCrossing(crossingRoom(circle / 2, 300, holes, angle), angle, heads)).toBe(verdict);
});

test.each([
  [36, 4],
  [32, 3],
  [28, 3],
  [24, 2],
  [20, 2],
  [18, 2],
  [16, 1],
])('a rule of the trade allows %i holes %i crossings at most', (total, most) => {
  expect(mostCrossingsByRule(total)).toBe(most);
});

test('radial spokes are free, and the most crossings that are free never pass the rule by more than none', () => {
  expect(judgeCrossing(crossingRoom(22.5, 300, 16, 0), 0, heads)).toBe('free');
  for (const total of [16, 18, 20, 24, 28, 32, 36, 40])
    for (const circle of [40, 45, 58])
      expect(mostCrossingsFree(circle / 2, 300, total / 2, heads)).toBeLessThanOrEqual(
        mostCrossingsByRule(total),
      );
});

test('a flange built spoke by spoke has as many crossings as are asked for (derived)', () => {
  for (const [holes, crosses] of [
    [16, 3],
    [18, 4],
  ] as const) {
    const point = (radius: number, turn: number) =>
      [radius * Math.cos(turn), radius * Math.sin(turn)] as const;
    const pitch = (2 * Math.PI) / holes;
    const ends = Array.from({ length: holes }, (_, j) => {
      const to = j % 2 === 0 ? j + crosses : j - crosses;
      return { from: point(22.5, j * pitch), to: point(300, to * pitch), rim: (to + holes) % holes };
    });
    expect(new Set(ends.map(({ rim }) => rim)).size).toBe(holes);
    const [first, ...others] = ends;
    if (!first) throw new Error('no spokes');
    const side = (a: readonly [number, number], b: readonly [number, number], c: readonly [number, number]) =>
      Math.sign((b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]));
    const meets = others.filter(
      ({ from, to }) =>
        side(first.from, first.to, from) !== side(first.from, first.to, to) &&
        side(from, to, first.from) !== side(from, to, first.to),
    );
    expect(meets.length).toBe(crosses);
  }
});
