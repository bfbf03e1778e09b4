import { expect, test } from 'vitest';
import { afterFix, codesIn, finding, pageHub } from './look.ts';

/** Balls of 3.175 mm in grooves of 0.52: m0 = 2·0.52·3.175 − 3.175 = 0.127 mm. */
const balls = 'code: 6803-2RS\n    balls: 13 x 3.175\n    groove: 0.52\n';
/** Group N of a bore of 17: 3 to 18 µm (ISO 5753-1); no fit takes of it, as the shell has no outside. */
const G = 0.0105;
const Ga = Math.sqrt(4 * 0.127 * G - G * G);
/** Steel, 200 GPa (materials table), 19.6 to 17.1 mm. */
const area = (Math.PI / 4) * (19.6 ** 2 - 17.1 ** 2);

function hub(length: number, set: string, travel = '1.5'): string {
  const ring = `adjuster: ring\n    length: 6\n    travel: ${travel}\n    thread: M20x1\n    set: ${set}\n    inside: 17.1\n    outside: 19.6\n    material: steel`;
  const spacer = `spacer: centre\n    length: ${length} ±0.01\n    material: steel`;
  const text = pageHub(
    ['spacer: centre\n    length: 62.06 ±0.01', `${ring}\n  - ${spacer}`],
    ['100 ±0.2', '100 ±3'],
  );
  return `${text.replaceAll('code: 6803-2RS\n', balls)}clamp: 5 kN\n`;
}

test('what is left of the play an adjuster was set to is less by F·L/(E·A) of what the clamp squeezes', () => {
  const text = hub(56.06, '0.005');
  const found = finding(text, 'adjuster-off');
  const taken = (5000 * (56.06 + 6)) / (200_000 * area);
  expect(found.data.playClamped).toBeCloseTo(0.005 - taken, 5);
  expect(found.data.to).toBeCloseTo(taken + 0.025, 3);
  expect(afterFix(text, 'adjuster-off').codes).not.toContain('adjuster-off');
});

test('a play set too wide is found as well, and one within the limits is not', () => {
  expect(finding(hub(56.06, '0.085'), 'adjuster-off').message).toContain('wanted 0 to 50 µm');
  expect(codesIn(hub(56.06, '0.045'))).not.toContain('adjuster-off');
});

test('a torque that dents the grooves is an error, a lesser one is nothing to tell', () => {
  const beside = (set: string) =>
    pageHub(
      ['100 ±0.2', '106 ±3'],
      [
        '  - end-cap: right',
        `  - adjuster: ring\n    length: 6\n    thread: M20x1\n    set: ${set}\n  - end-cap: right`,
      ],
    ).replaceAll('code: 6803-2RS\n', balls);
  // Long form of ISO 16047 (from memory) with friction 0.15: 3.79 N·mm for a newton on M20 × 1.
  const found = finding(beside('60 N·m'), 'adjuster-off');
  expect(found.severity).toBe('error');
  expect(Number(found.data.preload) / (60_000 / 3.79)).toBeCloseTo(1, 2);
  expect(codesIn(beside('0.2 N·m'))).not.toContain('adjuster-off');
});

test('the place of an adjuster is where play, clearance and lengths put it', () => {
  // δ for 40 µm of play is 0.04 − 2a; in mid position it is 54.9 + 6 − 62.05.
  const found = finding(hub(54.9, '0.04'), 'adjuster-short');
  expect(found.data.mean).toBeCloseTo(0.04 - Ga - (54.9 + 6 - 62.05), 2);
  expect(found.severity).toBe('error');
  expect(codesIn(hub(54.9, '0.04', '2.6'))).not.toContain('adjuster-short');
});

test('an adjuster whose travel is less than the builds stray gets more of it', () => {
  const text = hub(56.06, '0.04', '0.02');
  expect(finding(text, 'adjuster-short').message).toContain('give it more travel');
  expect(afterFix(text, 'adjuster-short').codes).not.toContain('adjuster-short');
});
