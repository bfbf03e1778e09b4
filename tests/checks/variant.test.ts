import { expect, test } from 'vitest';
import { mending } from './apply.ts';
import { afterFix, codesIn, covered, finding, pageHub } from './look.ts';

const withVariants = (lines: string): string => `${pageHub()}variants:\n${lines}`;

test('a variant of another width gets end caps of its own, and the hub as written keeps its', () => {
  const text = withVariants('  wide: # the rear fork of the load bike\n    width: 110 ±0.2\n');
  const found = finding(text, 'variant-breaks-width');
  expect(covered(text, found)).toBe('110 ±0.2');
  // 10 mm more over two caps of 14.03: 19.03 each.
  const mended = afterFix(text, 'variant-breaks-width');
  expect(mended.text).toContain(
    '    change:\n      end-cap.left: { length: 19.03 ±0.02 }\n      end-cap.right: { length: 19.03 ±0.02 }\n',
  );
  expect(mended.text.startsWith(pageHub())).toBe(true);
  expect(mended.codes).toEqual([]);
});

test('a change that is there already takes the length beside its other keys', () => {
  const text = withVariants(
    '  wide:\n    width: 110 ±0.2\n    change:\n      end-cap.left: { bore: 12.05 }\n      end-cap.right: { bore: 12.05 }\n',
  );
  const mended = afterFix(text, 'variant-breaks-width');
  expect(mended.text).toContain('end-cap.left: { bore: 12.05, length: 19.03 ±0.02 }');
  expect(mended.text).toContain('end-cap.right: { bore: 12.05, length: 19.03 ±0.02 }');
  expect(mended.codes).toEqual([]);
});

test('every fix of a broken width closes it', () => {
  const text = withVariants('  wide:\n    width: 101 ±0.2\n');
  const count = mending(finding(text, 'variant-breaks-width')).length;
  expect(count).toBeGreaterThan(2);
  for (let index = 0; index < count; index++) {
    expect(afterFix(text, 'variant-breaks-width', index).codes).not.toContain('variant-breaks-width');
  }
});

test('a part that was added is where the width broke', () => {
  const text = withVariants('  shimmed:\n    add: [{ shim: left, length: 0.5, after: end-cap.left }]\n');
  expect(covered(text, finding(text, 'variant-breaks-width'))).toBe('0.5');
});

test('no end cap is offered in place of a spacer that was taken out', () => {
  const found = finding(withVariants('  thin:\n    remove: [spacer.centre]\n'), 'variant-breaks-width');
  expect(mending(found)).toEqual([]);
  expect(found.message).toContain('it removes spacer.centre');
});

test('a hub that is off as written is said once, not again for its variants', () => {
  const text = `${pageHub(['width: 100 ±0.2', 'width: 101 ±0.2'])}variants:\n  narrow:\n    change:\n      end-cap.left: { bore: 9.1 }\n`;
  expect(codesIn(text)).toEqual(['width-off']);
});

test('a part of a variant that is not there is one finding, not also a variant without effect', () => {
  for (const lines of [
    '  wet:\n    change:\n      spacer.middle: { length: 60 }\n',
    '  wet:\n    remove: [washer.left]\n',
    '  wet:\n    replace:\n      end-cap.centre: { length: 14.03 ±0.02 }\n',
  ]) {
    expect(codesIn(withVariants(lines))).toEqual(['variant-part-missing']);
  }
});

test('a part is added beside one that is there', () => {
  const text = withVariants(
    '  shimmed:\n    width: 100.1 ±0.2\n    add: [{ shim: left, length: 0.1, after: end-cap.lefft }]\n',
  );
  const found = finding(text, 'variant-part-missing');
  expect(covered(text, found)).toBe('end-cap.lefft');
  expect(afterFix(text, 'variant-part-missing').codes).toEqual([]);
});

test('a variant that only gives the width again changes nothing', () => {
  const text = withVariants('  same:\n    width: 100 ±0.2\n');
  expect(codesIn(text)).toEqual(['variant-changes-nothing']);
  expect(afterFix(text, 'variant-changes-nothing').text).toBe(pageHub());
});

test('a variant whose change was not understood is not said to change nothing', () => {
  expect(codesIn(withVariants('  same:\n    change:\n      end-cap.left: { bore: wide }\n'))).toEqual([
    'dimension-not-understood',
  ]);
});

test('a seat that a variant changes and the hub does not have is one finding', () => {
  for (const lines of [
    '  wet:\n    change:\n      shell.lefft: { depth: 5.2 ±0.02 }\n',
    '  wet:\n    shell:\n      seats:\n        lefft: { depth: 5.2 ±0.02 }\n',
  ]) {
    const text = withVariants(lines);
    expect(codesIn(text)).toEqual(['variant-part-missing']);
    expect(afterFix(text, 'variant-part-missing').codes).toEqual([]);
  }
});
