import { expect, test } from 'vitest';
import { afterFix, codesIn, covered, finding, pageHub } from './look.ts';

test('two bearings at the ends of a spacer cannot stand in one seat: one of them names the wrong one', () => {
  const left = pageHub(['seat: shell.left', 'seat: shell.right']);
  expect(codesIn(left)).toEqual(['seat-without-bearing']);
  const found = finding(left, 'seat-without-bearing');
  expect(covered(left, found)).toBe('shell.right');
  expect(found.message).toContain('change the seat of bearing.left to shell.left');
  expect(afterFix(left, 'seat-without-bearing')).toEqual({ text: pageHub(), codes: [] });

  const right = pageHub(['seat: shell.right', 'seat: shell.left']);
  expect(afterFix(right, 'seat-without-bearing')).toEqual({ text: pageHub(), codes: [] });
});

test('two bearings side by side in one seat are no slip', () => {
  const text = pageHub(
    ['depth: 5.1 ±0.02', 'depth: 10.1 ±0.02'],
    [
      '  - spacer: centre',
      '  - bearing: inner\n    code: 6803-2RS\n    seat: shell.left\n  - spacer: centre',
    ],
    ['width: 100 ±0.2', 'width: 105 ±0.2'],
  );
  expect(codesIn(text)).toEqual(['width-corner']);
});
