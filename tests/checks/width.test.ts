import { expect, test } from 'vitest';
import { mending } from './apply.ts';
import { afterFix, codesIn, finding, pageHub } from './look.ts';

/** The sound hub with both end caps as they were measured. */
const capsMeasured = (reading: string): string =>
  pageHub(
    [
      'length: 14.03 ±0.02\n    face: 19.4\n  - bearing',
      `length: 14.03 ±0.02 measured ${reading}\n    face: 19.4\n  - bearing`,
    ],
    ['length: 14.03 ±0.02\n    face: 19.4\n', `length: 14.03 ±0.02 measured ${reading}\n    face: 19.4\n`],
  );

test('a spacer that keeps two bearings apart is not what a message asks to change', () => {
  // 2 · 14.20 + 2 · 4.94 + 62.06 = 100.34: over by 0.34; the spacer belongs to the shoulders 62.05 apart.
  const found = finding(capsMeasured('14.2'), 'width-off');
  expect(found.message).toContain('0.14 mm over the upper limit — take 0.34 mm off the end caps');
  const [spacer, ...others] = mending(found);
  expect(others).toEqual([]);
  expect(spacer?.title).toContain('from +0.01 to −0.33 against their shoulders');
  expect(spacer?.preferred).not.toBe(true);
});

test('a stack of measured parts that is short is asked for shims outside the bearings', () => {
  // 2 · 13.80 + 2 · 4.94 + 62.06 = 99.54.
  const found = finding(capsMeasured('13.8'), 'width-off');
  expect(found.message).toContain('— add 0.46 mm of shims outside the bearings');
});

test('a spacer that is wrong for its shoulders too is what a message asks to change', () => {
  const text = pageHub(['62.06 ±0.01', '62.36 ±0.01']);
  expect(finding(text, 'width-off').message).toContain('shorten spacer.centre by 0.30 to 62.06');
  expect(afterFix(text, 'width-off').codes).toEqual([]);
});

test('the worst corner is held against a width that is written, not against an assumed one', () => {
  // 2 · 14.03 + 62.06 + 2 · 4.94 = 100.00, 0.17 to either side when all parts fall the same way.
  const text = (width: string) => pageHub(['width: 100 ±0.2', `width: ${width}`]);
  expect(codesIn(text('100 ±0.1'))).toContain('width-corner');
  expect(codesIn(text('100'))).not.toContain('width-corner');
});
