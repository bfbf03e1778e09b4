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

test('a calliper reading that leaves no doubt is judged, one that does is not', () => {
  // Ring 25.991 to 26; a seat read 26.15 ±0.02 is at least 0.13 too large, one read 25.99 may be either.
  const seat = (bore: string) => pageHub(['left: { bore: 26 N7', `left: { bore: ${bore}`]);
  expect(codesIn(seat('measured 26.15'))).toEqual(['seat-loose']);
  expect(codesIn(seat('measured 25.99'))).toEqual(['reading-too-coarse']);
  // At least 0.06 of interference, where a thousandth of 26 is the most.
  expect(codesIn(seat('measured 25.91'))).toEqual(['seat-over-tight']);
  const axle = (diameter: string) => pageHub(['diameter: 17 h6', `diameter: ${diameter}`]);
  expect(codesIn(axle('measured 16.90'))).toEqual(['journal-fit-off']);
  expect(codesIn(axle('measured 16.99'))).toEqual(['reading-too-coarse']);
});

test('diameters without a tolerance that plainly do not go together are two sizes', () => {
  expect(codesIn(pageHub(['left: { bore: 26 N7', 'left: { bore: 26.15']))).toEqual(['seat-bore-off']);
  expect(codesIn(pageHub(['diameter: 17 h6', 'diameter: 17.15']))).toEqual(['journal-off']);
  // A drawn clearance is none.
  expect(codesIn(pageHub(['diameter: 17 h6', 'diameter: 16.95']))).toEqual([]);
});

test('a calliper reading that leaves the fit open leaves clearance and heat open too', () => {
  const wall = 'outside: 40\n  material: aluminium 6061-T6\n  between-shoulders';
  const seat = (bore: string) =>
    `temperature: 10..60 °C\n${pageHub(['between-shoulders', wall], ['left: { bore: 26 N7', `left: { bore: ${bore}`])}`;
  // Ring 25.991 to 26: 0.026 of interference takes the whole clearance, read to ±0.02 it may take a quarter.
  expect(codesIn(seat('measured 25.97 ±0.003'))).toContain('clearance-used-up');
  expect(codesIn(seat('measured 25.97'))).toEqual(['reading-too-coarse']);
  // 0.0175 leaves a little of clearance on the bench, which the cold takes.
  const winter = (bore: string) => `temperature: 8..20 °C\n${seat(bore).replace(/^.*\n/, '')}`;
  expect(codesIn(winter('measured 25.978 ±0.003'))).toEqual(['clearance-cold']);
  expect(codesIn(winter('measured 25.978'))).toEqual(['reading-too-coarse']);
  // 0.006 of interference is gone by 60 °C, if it is there.
  expect(codesIn(seat('measured 25.99 ±0.003'))).toContain('seat-lets-go');
  expect(codesIn(seat('measured 25.99'))).toEqual(['reading-too-coarse']);
});
