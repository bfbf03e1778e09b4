import fc from 'fast-check';
import { expect, test } from 'vitest';
import { lengthThatCloses } from '../../../server/engine/stack/close-to.ts';
import { closeLoop } from '../../../server/engine/stack/loop.ts';
import { arbitraryTerms, term } from './terms.ts';

const front = [
  term('end-cap.left', 14.03, -0.02, 0.02),
  term('bearing.left', 5, -0.12, 0),
  term('spacer.centre', 62.18, -0.01, 0.01),
  term('bearing.right', 5, -0.12, 0),
  term('end-cap.right', 14.03, -0.02, 0.02),
];

test('a stack 0.12 mm long on average closes with the end cap 0.12 mm shorter', () => {
  // By hand: mean 14.03 + 4.94 + 62.18 + 4.94 + 14.03 = 100.12; wanted 100.
  expect(lengthThatCloses(front, 'end-cap.right', 100)).toBe(13.91);
  expect(lengthThatCloses(front, 'spacer.centre', 100)).toBe(62.06);
});

test('a part on the other side of the loop grows instead', () => {
  const gap = [...front, term('width', 100, 0, 0, { sign: -1 })];
  expect(lengthThatCloses(gap, 'width', 0)).toBe(100.12);
});

test('several parts of one kind share the change', () => {
  const shims = [...front, term('shim.left', 0.1, 0, 0, { count: 2 })];
  // 0.32 mm over the width: each of two shims would have to lose 0.16.
  expect(lengthThatCloses(shims, 'shim.left', 100)).toBe(-0.06);
  expect(lengthThatCloses(shims, 'shim.left', 100.3)).toBe(0.09);
});

test('the length is a multiple of the step and written without a tail', () => {
  expect(lengthThatCloses(front, 'end-cap.right', 100.003, 0.05)).toBe(13.9);
  expect(lengthThatCloses(front, 'end-cap.right', 100.0034, 0.001)).toBe(13.913);
  expect(lengthThatCloses(front, 'end-cap.right', 100.0034, 0)).toBeCloseTo(13.9134, 9);
});

test('a loop without the part, or with none of them, has no such length', () => {
  expect(lengthThatCloses(front, 'shim.left', 100)).toBeNull();
  expect(lengthThatCloses([...front, term('shim', 0.1, 0, 0, { count: 0 })], 'shim', 100)).toBeNull();
});

test('with the length put in, the mean is the target to half a step for each part', () => {
  const target = fc.double({ min: -500, max: 500, noNaN: true });
  const step = fc.constantFrom(0.001, 0.005, 0.01, 0.05, 0.1, 0.25);
  fc.assert(
    fc.property(arbitraryTerms, fc.nat(), target, step, (terms, pick, wanted, grid) => {
      const chosen = terms[pick % terms.length];
      if (!chosen || chosen.count === 0) return;
      const nominal = lengthThatCloses(terms, chosen.id, wanted, grid);
      expect(nominal).not.toBeNull();
      const changed = terms.map((t) => (t.id === chosen.id ? { ...t, nominal: nominal ?? 0 } : t));
      expect(Math.abs(closeLoop(changed).mean - wanted)).toBeLessThanOrEqual(
        (grid / 2) * chosen.count + 1e-6,
      );
      expect(String(nominal).length).toBeLessThan(10);
    }),
  );
});
