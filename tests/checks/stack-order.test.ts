import { expect, test } from 'vitest';
import { afterFix, codesIn, covered, finding, pageHub } from './look.ts';

const first = 'bearing: left\n    code: 6803-2RS\n    seat: shell.left';
const second = 'bearing: right\n    code: 6803-2RS\n    seat: shell.right';

test('bearings that name each the seat of the other are found at the first, and the seats are swapped', () => {
  const text = pageHub(
    [first, first.replace('shell.left', 'shell.right')],
    [second, second.replace('shell.right', 'shell.left')],
  );
  expect(codesIn(text)).toEqual(['part-out-of-order']);
  expect(covered(text, finding(text, 'part-out-of-order'))).toBe('shell.right');
  const mended = afterFix(text, 'part-out-of-order');
  expect(mended.text).toBe(pageHub());
  expect(mended.codes).toEqual([]);
});

test('bearings in the wrong order with their seats are one finding', () => {
  const text = pageHub([first, 'HERE'], [second, first], ['HERE', second]);
  expect(codesIn(text)).toEqual(['part-out-of-order']);
});

test('while an item of the stack cannot be read, nothing is said of its width', () => {
  const spacer = '  - spacer: centre\n    length: 62.06 ±0.01\n    inside: 17.1\n    outside: 19.6\n';
  expect(codesIn(pageHub([spacer, '  - sp\n']))).toEqual(['unknown-kind']);
  expect(codesIn(pageHub([spacer, '  -\n']))).not.toContain('width-off');
  expect(codesIn(pageHub(['stack:', 'Stack:']))).toEqual(['unknown-key']);
});

test('the name of a seat alone is enough to offer its address', () => {
  const text = pageHub(['seat: shell.left', 'seat: left']);
  expect(finding(text, 'name-not-found').message).toContain('— write shell.left');
  expect(afterFix(text, 'name-not-found').text).toBe(pageHub());
});

test('a worn bore that was measured is not told to take another fit class', () => {
  // common practice: a worn seat is held with a retaining compound or bushed.
  const text = pageHub(['left: { bore: 26 N7', 'left: { bore: 26 N7 measured 26.01 ±0.005']);
  const found = finding(text, 'seat-loose');
  expect(found.message).toContain('shell.left was measured 26.01 and leaves the ring of bearing.left loose');
  expect(found.message).toContain('retaining compound');
  expect(found.message).not.toContain('N7');
  expect(codesIn(text.replace('±0.005,', '±0.005, compound: yes,'))).toEqual([]);
});
