import { expect, test } from 'vitest';
import { afterFix, codesIn, finding, pageHub } from './look.ts';

/** Balls of 3.175 mm in grooves of 0.52: m0 = 2·0.52·3.175 − 3.175 = 0.127 mm. */
const balls: readonly [string, string] = [
  'code: 6803-2RS\n',
  'code: 6803-2RS\n    balls: 13 x 3.175\n    groove: 0.52\n',
];
const steel: readonly [string, string] = ['outside: 19.6\n', 'outside: 19.6\n    material: steel\n'];
/** Wide enough that no corner of the tolerances is news. */
const roomy: readonly [string, string] = ['100 ±0.2', '100 ±0.4'];
const hub = (...changes: readonly (readonly [string, string])[]) =>
  pageHub(
    balls,
    ['seat: shell.right', 'seat: shell.right\n    balls: 13 x 3.175\n    groove: 0.52'],
    ...changes,
  );
const clamped = (text: string) => `${text}clamp: 5 kN\n`;

/**
 * A bore of 17 has 3 to 18 µm of radial clearance in group N (ISO 5753-1). Without an outside of the shell no fit
 * takes of it: G = 10.5 µm, Ga = √(4·m0·G − G²) = 72.3 µm for each bearing.
 */
const G = 0.0105;
const Ga = Math.sqrt(4 * 0.127 * G - G * G);

test('a short spacer without a clamp says the travel that is missing, 2a − |δ|', () => {
  const found = finding(hub(['62.06 ±0.01', '61.95 ±0.01']), 'spacer-short');
  expect(found.severity).toBe('error');
  expect(found.data.playUnclamped).toBeCloseTo(Ga - 0.1, 5);
  expect(found.data.ballLoad).toBeNull();
  expect(found.message).toContain('0.03 mm of travel is missing and any clamp loads the balls');
});

test('what the clamp takes is F·L/(E·A) of the sleeve, and the play left is 2a less what is then missing', () => {
  // Steel, 200 GPa (materials table), 19.6 to 17.1: A = 72.06 mm².
  const area = (Math.PI / 4) * (19.6 ** 2 - 17.1 ** 2);
  const shortening = (length: number) => (5000 * length) / (200_000 * area);
  const loose = finding(clamped(hub(steel, ['62.06 ±0.01', '62.07 ±0.01'])), 'play-high');
  expect(loose.data.clampShortening).toBeCloseTo(shortening(62.07), 4);
  expect(loose.data.playClamped).toBeCloseTo(Ga - Math.abs(0.02 - shortening(62.07)), 4);
});

test('a fix aims the mean at the middle of the play allowed', () => {
  // Allowed 0 to 0.05, the middle 0.025: Ga − 0.025 short of the shoulders, and longer by what the clamp takes.
  const area = (Math.PI / 4) * (19.6 ** 2 - 17.1 ** 2);
  const wanted = 62.05 - (Ga - 0.025) + (5000 * 62.06) / (200_000 * area);
  const text = clamped(hub(steel, roomy, ['62.06 ±0.01', '61.98 ±0.01']));
  // Ga is 72 µm: on the bench 2 µm of play are left of it, so the clamp is what takes the rest.
  const found = finding(text, 'clamp-takes-play');
  expect(found.fixes[0]?.title).toContain(`to ${wanted.toFixed(2)}`);
  expect(afterFix(text, found.code).codes).toEqual([]);
});

test('a loaded bearing never carries more than the clamp', () => {
  const found = finding(clamped(hub(steel, ['62.06 ±0.01', '61.95 ±0.01'], roomy)), 'spacer-short');
  expect(found.data.ballLoad).toBeGreaterThan(0);
  expect(found.data.ballLoad).toBeLessThanOrEqual(5000);
});

test('one cause, one finding: a spacer that is wrong for the width too is said by the width', () => {
  expect(codesIn(hub(['62.06 ±0.01', '62.36 ±0.01']))).toEqual(['width-off']);
});

test('one cause, one finding: a sleeve that gives way is said, the play it loses is not', () => {
  expect(codesIn(clamped(hub(['outside: 19.6', 'outside: 17.5'])))).toEqual(['sleeve-stress']);
});

test('one cause, one finding: where a fit uses the clearance up nothing is said of play', () => {
  const stout: readonly [string, string] = [
    '  between-shoulders',
    '  outside: 40\n  material: aluminium\n  between-shoulders',
  ];
  const codes = codesIn(
    clamped(
      hub(stout, ['left: { bore: 26 N7', 'left: { bore: 26 P7'], roomy, ['62.06 ±0.01', '61.98 ±0.01']),
    ),
  );
  expect(codes).toEqual(['clearance-used-up']);
});

test('play is judged in the frame: without a clamp too much of it is nobody’s fault', () => {
  expect(codesIn(hub())).toEqual([]);
  expect(codesIn(clamped(hub(steel)))).toContain('play-high');
});
