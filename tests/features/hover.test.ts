import { expect, test } from 'vitest';
import { hover } from '../../server/features/hover.ts';
import { hubWith, specAtCursor } from '../support/spec-at-cursor.ts';

function hoverAt(marked: string, around?: Record<string, string>): string {
  const { snapshot, position } = specAtCursor(marked, around);
  const found = hover(snapshot, position);
  return found === null ? '' : (found.contents as { value: string }).value;
}

test('a bearing code is decoded with its dimensions', () => {
  const text = hoverAt(hubWith(['code: 6803-2RS', 'code: 68$003-2RS']));
  // ISO 15, series 68 with bore code 03: 17 × 26 × 5, chamfer 0.3.
  expect(text).toContain('17 × 26 × 5 mm');
  expect(text).toContain('at least 0.3 mm');
  // ISO 492 class Normal: bore 0/−8, outside 0/−9, ring width 0/−120 µm.
  expect(text).toContain('17 mm  0/−8 µm');
  expect(text).toContain('26 mm  0/−9 µm');
  expect(text).toContain('0/−120 µm');
  // ISO 5753-1, group N over 10 to 18 mm: 3 to 18 µm.
  expect(text).toContain('3 to 18 µm');
  expect(text).toContain('seal on both sides, rubbing');
});

test('no maker stands on screen', () => {
  const text = hoverAt(hubWith(['code: 6803-2RS', 'code: 68$003-2RS']));
  expect(text).toContain('Sources:');
  expect(text).not.toMatch(/\b(NSK|NTN|SKF|NMB|ZEN|NKE|FBJ|KOYO|CX)\b/);
});

test('a code that is no bearing says why and what is near', () => {
  const text = hoverAt(hubWith(['code: 6803-2RS', 'code: 68$093-2RS']));
  expect(text).toContain('is not read as a bearing');
  expect(text).toContain('`6803-2RS` (17 × 26 × 5)');
});

test('a house code is shown with what it stands for', () => {
  const text = hoverAt(hubWith(['code: 6803-2RS', 'code: SM$0-17']), {
    'saltmarsh.workshop.yaml': 'bearings:\n  SM-17: { code: 6803-2RS C3 }\n',
  });
  expect(text).toContain('SM-17 in the workshop file');
  expect(text).toContain('17 × 26 × 5 mm');
});

test('a fit class has its limits and the fit with the ring that sits there', () => {
  const text = hoverAt(hubWith(['left: { bore: 26 N7', 'left: { bore: 26 N$07']));
  // ISO 286-2, N7 over 18 to 30 mm: −7/−28 µm.
  expect(text).toContain('−7/−28 µm');
  expect(text).toContain('25.972 to 25.993 mm');
  // The ring is 0/−9 µm (ISO 492): 28 µm at the tightest, −7 + 9 = 2 µm at the loosest.
  expect(text).toContain('outside of bearing.left: from 28 µm interference to 2 µm clearance');
});

test('an axle has its limits and the fit with the inner rings', () => {
  const text = hoverAt(hubWith(['diameter: 17 h6', 'diameter: 17 $0h6']));
  // ISO 286-2, h6 over 10 to 18 mm: 0/−11 µm; the ring is 0/−8 µm (ISO 492).
  expect(text).toContain('0/−11 µm');
  expect(text).toContain('bore of bearing.left: from 8 µm interference to 11 µm clearance');
  expect(text).toContain('bore of bearing.right');
});

test('a length says its share of the loops it is in', () => {
  const text = hoverAt(hubWith(['length: 62.06', 'length: 62.0$06']));
  // 14.03 + 5 + 62.06 + 5 + 14.03 = 100.12; two rings of 0/−0.12 bring the mean to 100.00.
  expect(text).toContain('clamped width');
  expect(text).toContain('100.00 mm on average, wanted 100 ±0.2');
  // 62.06 − 62.05.
  expect(text).toContain('0.010 mm on average');
  // Half tolerances of 0.01 on both: half the variation each.
  expect(text).toContain('50 % of the variation');
});

test('the width says what it is made of', () => {
  const text = hoverAt(hubWith(['width: 100', 'width: 1$000']));
  expect(text).toContain('| \\+ 14.03 | end-cap.left |'.replace('\\+', '+'));
  expect(text).toContain('spacer.centre');
  expect(text).toContain('under 0.1 % of builds outside'.replace('under 0.1 % ', ''));
});

test('a measured length says both the drawn and the measured value', () => {
  const text = hoverAt(hubWith(['length: 62.06 ±0.01', 'length: 62.06 ±0.01 meas$0ured 62.08 ±0.005']));
  expect(text).toContain('62.050 to 62.070 mm; measured 62.080 ±0.005 mm');
  expect(text).toContain('as measured');
});

test('inches are shown in millimetres', () => {
  // 25.4 mm to the inch, exactly.
  expect(hoverAt(hubWith(['inside: 17.1', 'inside: 0.$0675 in']))).toContain('17.145 mm');
});

test('a key says what it means', () => {
  const text = hoverAt(hubWith(['between-shoulders', 'betw$0een-shoulders']));
  expect(text).toContain('**between-shoulders**');
  expect(text).toContain('Distance between the two shoulders');
});

test('a kind says what the part is', () => {
  expect(hoverAt(hubWith(['spacer: centre', 'spa$0cer: centre']))).toContain(
    'A sleeve between two inner rings',
  );
});

test('a seat says what it points at', () => {
  const text = hoverAt(hubWith(['seat: shell.left', 'seat: shell.le$0ft']));
  expect(text).toContain('bore 26 N7');
  expect(text).toContain('holds bearing.left');
});

test('an address in a variant says what it points at', () => {
  const text = hoverAt(
    `${hubWith()}variants:\n  thru-12:\n    change:\n      end-cap.l$0eft: { bore: 12.05 }\n`,
  );
  expect(text).toContain('**end-cap.left**, length 14.03 ±0.02');
});

test('text of a user is never markup', () => {
  const text = hoverAt(hubWith(['code: 6803-2RS', 'code: "<img s$0rc=x>*"']));
  expect(text).not.toMatch(/(?<!\\)<img/);
});

test('nothing is said between the lines', () => {
  expect(hoverAt(`$0\n${hubWith()}`)).toBe('');
});
