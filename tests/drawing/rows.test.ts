import fc from 'fast-check';
import { expect, test } from 'vitest';
import { placeInRows, spread } from '../../server/drawing/rows.ts';

const items = fc.array(
  fc.record({
    want: fc.double({ min: 0, max: 270, noNaN: true }),
    width: fc.double({ min: 1, max: 30, noNaN: true }),
  }),
  { minLength: 1, maxLength: 14 },
);

test('texts of one row never overlap, and stay in the order of the parts they name', () => {
  fc.assert(
    fc.property(items, (list) => {
      const placed = placeInRows(list, [0, 277]);
      for (const [a, first] of placed.entries()) {
        for (const [b, second] of placed.entries()) {
          if (a === b || first.row !== second.row) continue;
          const [x, y] = [first.centres.at(-1) ?? 0, second.centres.at(-1) ?? 0];
          expect(Math.abs(x - y)).toBeGreaterThanOrEqual(
            ((list[a]?.width ?? 0) + (list[b]?.width ?? 0)) / 2 - 1e-6,
          );
          if ((list[a]?.want ?? 0) < (list[b]?.want ?? 0)) expect(x).toBeLessThan(y);
        }
      }
    }),
    { seed: 7, numRuns: 300 },
  );
});

test('texts with room enough stand where they would like to', () => {
  expect(
    placeInRows(
      [
        { want: 40, width: 10 },
        { want: 90, width: 10 },
      ],
      [0, 277],
    ).map(({ centres }) => centres),
  ).toEqual([[40], [90]]);
});

// Two equal wishes with 10 wide texts and a gap of 2.5 share the way: 6.25 to each side.
test('texts that want the same place give way equally', () => {
  expect(
    spread(
      [
        { want: 50, width: 10 },
        { want: 50, width: 10 },
      ],
      [0, 277],
    ),
  ).toEqual([43.75, 56.25]);
});
