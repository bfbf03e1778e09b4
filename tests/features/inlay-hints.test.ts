import { expect, test } from 'vitest';
import { inlayHints } from '../../server/features/inlay-hints.ts';
import { hubWith, soundHub, specAtCursor } from '../support/spec-at-cursor.ts';

const whole = { start: { line: 0, character: 0 }, end: { line: 1000, character: 0 } };

/** Hints as they stand in the text: the line up to the hint, then the hint. */
function hintsIn(text: string, around: Record<string, string> = {}, range = whole): readonly string[] {
  const { snapshot } = specAtCursor(text, around);
  return inlayHints(snapshot, range).map(
    ({ position, label }) =>
      `${text.split('\n')[position.line]?.slice(0, position.character).trim()} | ${label}`,
  );
}

const inside = '\n    balls: 13 × 2.778\n    groove: 0.52';
const alloy = '    outside: 19.6\n    material: aluminium 7075-T6';
const open = hubWith(['    outside: 19.6', alloy]).replaceAll('code: 6803-2RS', `code: 6803-2RS${inside}`);
const clamped = `${open}clamp: 2 kN\n`;

/*
 * By hand. Clearance: group N over 10 to 18 mm is 3 to 18 µm (ISO 5753-1), 10.5 on average. The seats squeeze
 * nothing (no wall is written) and the axle is 17 h6 in a 0/−8 bore (ISO 286-2, ISO 492): loose on average.
 * Axial clearance of one bearing √(4·m0·G − G²), m0 = (0.52 + 0.52 − 1)·2.778 = 0.11112 mm:
 * √(4·0.11112·0.0105 − 0.0105²) = √0.0045568 = 0.0675 mm. The pair: 67.5 less |δ| = 10 µm is 57.5 µm.
 * The clamp: F·L/(E·A) = 2000·62.06/(71 700·π/4·(19.6² − 17.1²)) = 0.0240 mm, δ is then −14 µm: 53.5 µm left.
 */
test('clearance stands behind the code, play behind the spacer, shortening behind the clamp', () => {
  const hints = hintsIn(clamped);
  expect(hints).toHaveLength(4);
  expect(hints[0]).toMatch(/^code: 6803-2RS \| mounted 1[01] µm$/);
  expect(hints[1]).toBe(hints[0]);
  expect(hints[2]).toMatch(/^length: 62\.06 ±0\.01 \| play 5[78] µm, clamped 5[34] µm$/);
  expect(hints[3]).toBe('clamp: 2 kN | shortens by 24 µm');
});

test('without a clamp only the play on the bench is told', () => {
  expect(hintsIn(open).at(-1)).toMatch(/\| play 5[78] µm$/);
});

test('a clamp of the workshop is used, but has no hint in this file', () => {
  const hints = hintsIn(open, { 'saltmarsh.workshop.yaml': 'defaults:\n  clamp: 2 kN\n' });
  expect(hints.at(-1)).toMatch(/clamped 5[34] µm$/);
  expect(hints.filter((hint) => hint.startsWith('clamp'))).toEqual([]);
});

test('a spacer that is too short says what the balls carry', () => {
  // 61.90 is 150 µm under the shoulders: more than the 67.5 µm of travel there are.
  const hint = hintsIn(clamped.replace('62.06', '61.90')).find((text) => text.startsWith('length'));
  expect(hint).toMatch(/play −8[23] µm, clamped none, \d+(\.\d+)? k?N on the balls$/);
});

test('only the lines asked for are answered', () => {
  const line = clamped.split('\n').findIndex((text) => text.startsWith('clamp'));
  const range = { start: { line, character: 0 }, end: { line, character: 99 } };
  expect(hintsIn(clamped, {}, range)).toEqual(['clamp: 2 kN | shortens by 24 µm']);
});

test('each value has one hint, also where variants look at it again', () => {
  const variants = 'variants:\n  wide:\n    change:\n      spacer.centre: { length: 72.06 ±0.01 }\n';
  const hints = hintsIn(`${clamped}${variants}`);
  expect(hints.filter((hint) => hint.startsWith('code'))).toHaveLength(2);
  expect(hints.filter((hint) => hint.includes('62.06'))).toHaveLength(1);
  expect(hints.filter((hint) => hint.includes('72.06'))).toHaveLength(1);
});

test('a hint tells more when it is pointed at', () => {
  const { snapshot } = specAtCursor(clamped);
  const [clearance, , play] = inlayHints(snapshot, whole);
  // Group N over 10 to 18 mm, ISO 5753-1.
  expect(clearance?.tooltip).toContain('3 to 18 µm before mounting');
  expect(play?.tooltip).toContain('clamped with 2 kN');
});

test('half-written text has the hints of what can be read, or none', () => {
  expect(hintsIn('hub: x\nstack:\n  - bearing: left\n    code: \n')).toEqual([]);
  expect(hintsIn('')).toEqual([]);
  expect(hintsIn('hub: x\nposition: front\nstack:\n  - bearing: left\n    code: 6803-2RS\n')).toEqual([
    expect.stringMatching(/^code: 6803-2RS \| mounted 1[01] µm$/),
  ]);
});

test('the plain sound hub, whose balls are looked up, has hints too', () => {
  expect(hintsIn(soundHub)).toHaveLength(3);
});
