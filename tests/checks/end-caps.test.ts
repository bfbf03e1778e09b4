import { expect, test } from 'vitest';
import { mending } from './apply.ts';
import { afterFix, codesIn, finding, pageHub } from './look.ts';

/** A 6803 (inner ring to about 19.8 mm) on the left, a 6903 (to about 21.1 mm) on the right, their caps swapped. */
const twoSizes = (left: string, right: string): string =>
  pageHub(
    ['    right: { bore: 26 N7, depth: 5.1 ±0.02', '    right: { bore: 30 N7, depth: 7.1 ±0.02'],
    ['code: 6803-2RS\n    seat: shell.right', 'code: 6903-2RS\n    seat: shell.right'],
    ['shoulder-bore: 23 }\n    right', 'shoulder-bore: 23 }\n    right'],
    ['length: 14.03 ±0.02\n    face: 19.4\n  - bearing', `${left}\n  - bearing`],
    ['length: 14.03 ±0.02\n    face: 19.4\n', `${right}\n`],
  );

test('caps of two lengths with each other’s face are swapped whole', () => {
  const text = twoSizes('length: 13.03 ±0.02\n    face: 21.5', 'length: 13.03 ±0.03\n    face: 19.4');
  const found = finding(text, 'end-caps-swapped');
  expect(mending(found).map(({ title }) => title)).toEqual([
    'Swap the two end caps: length, face of each become those of the other',
    'Swap the faces: end-cap.left 19.4, end-cap.right 21.5',
  ]);
  const whole = afterFix(text, 'end-caps-swapped', 0);
  expect(whole.text).toContain('length: 13.03 ±0.03\n    face: 19.4\n  - bearing');
  expect(whole.text).toContain('length: 13.03 ±0.02\n    face: 21.5');
  expect(whole.codes).not.toContain('end-caps-swapped');
  expect(whole.codes).not.toContain('end-cap-rubs');
  const faces = afterFix(text, 'end-caps-swapped', 1);
  expect(faces.text).toContain('length: 13.03 ±0.02\n    face: 19.4\n  - bearing');
  expect(faces.codes).not.toContain('end-caps-swapped');
});

test('beside a bearing that could not be read nobody says that caps are swapped', () => {
  const text = pageHub(
    ['face: 19.4\n  - bearing', 'face: 24\n  - bearing'],
    ['code: 6803-2RS\n    seat: shell.right', 'code: 6893-2RS\n    seat: shell.right'],
  );
  expect(codesIn(text)).toContain('end-cap-rubs');
  expect(codesIn(text)).not.toContain('end-caps-swapped');
});
