import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  add,
  contains,
  half,
  type Interval,
  interval,
  mid,
  overlap,
  scale,
  shift,
  subtract,
} from '../../../server/engine/base/interval.ts';

const number = fc.double({ min: -100, max: 100, noNaN: true });
const range = fc.tuple(number, number).map(([a, b]) => interval(a, b));
const fraction = fc.double({ min: 0, max: 1, noNaN: true });
const inside = ({ lo, hi }: Interval, at: number): number => Math.min(hi, lo + (hi - lo) * at);
/** Room for rounding at the ends. */
const wider = ({ lo, hi }: Interval): Interval => ({ lo: lo - 1e-9, hi: hi + 1e-9 });

test('a result holds every combination of values of its ranges', () => {
  fc.assert(
    fc.property(range, range, fraction, fraction, number, (a, b, s, t, k) => {
      const [x, y] = [inside(a, s), inside(b, t)];
      expect(contains(wider(add(a, b)), x + y)).toBe(true);
      expect(contains(wider(subtract(a, b)), x - y)).toBe(true);
      expect(contains(wider(scale(a, k)), x * k)).toBe(true);
      expect(contains(wider(shift(a, k)), x + k)).toBe(true);
    }),
  );
});

test('a range is no wider than its corners ask for', () => {
  expect(add({ lo: 1, hi: 2 }, { lo: 10, hi: 30 })).toEqual({ lo: 11, hi: 32 });
  expect(subtract({ lo: 1, hi: 2 }, { lo: 10, hi: 30 })).toEqual({ lo: -29, hi: -8 });
  expect(scale({ lo: 1, hi: 2 }, -3)).toEqual({ lo: -6, hi: -3 });
});

test('middle and half width give the ends back', () => {
  const a = { lo: -0.12, hi: 0 };
  expect(mid(a)).toBeCloseTo(-0.06, 12);
  expect(mid(a) - half(a)).toBeCloseTo(a.lo, 12);
  expect(mid(a) + half(a)).toBeCloseTo(a.hi, 12);
});

test('ends belong to a range, and ranges that share one value overlap there', () => {
  expect(contains({ lo: 1, hi: 2 }, 1)).toBe(true);
  expect(contains({ lo: 1, hi: 2 }, 2.0001)).toBe(false);
  expect(overlap({ lo: 1, hi: 2 }, { lo: 2, hi: 3 })).toEqual({ lo: 2, hi: 2 });
  expect(overlap({ lo: 1, hi: 2 }, { lo: 2.1, hi: 3 })).toBeNull();
});
