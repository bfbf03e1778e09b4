import { expect, test } from 'vitest';
import type { LineMechanics } from '../../server/analysis/mechanics/line-mechanics.ts';
import type { Mechanics } from '../../server/analysis/mechanics/mechanics-of.ts';
import { isWorked } from '../../server/analysis/mechanics/pair-mechanics.ts';
import { asWritten } from '../support/analyze-text.ts';

/**
 * A rear hub on three 6803: stops at 10 facing left, at 65 and 90 facing right, so that δ of the two neighbours is
 * a − 55 and (b + one ring, 4.94 on average) − 25. Without `through` the shell counts as rigid along the axle.
 */
function hub({ a = 55, b = 20.06, clamp = '5 kN', middle = 'depth: 35, from: right', bore = '26 N7' } = {}) {
  return `hub: Godwit rear
position: rear
width: 130
clamp: ${clamp}
axle: { material: aluminium 7075, diameter: 17, bore: 12 }
shell:
  material: aluminium 6061
  outside: 38
  length: 100
  seats:
    left:   { bore: ${bore}, depth: 10 }
    middle: { bore: ${bore}, ${middle} }
    right:  { bore: ${bore}, depth: 10 }
stack:
  - bearing: left
    code: 6803
    seat: shell.left
    balls: 14 × 2.778
    groove: 0.52
  - spacer: a
    length: ${a} ±0.01
    inside: 17.1
    outside: 20
    material: aluminium 6061
  - bearing: middle
    code: 6803
    seat: shell.middle
    balls: 14 × 2.778
    groove: 0.52
  - spacer: b
    length: ${b} ±0.01
    inside: 17.1
    outside: 20
    material: aluminium 6061
  - bearing: right
    code: 6803
    seat: shell.right
    balls: 14 × 2.778
    groove: 0.52
`;
}

/** The same seen from the other side of the bicycle: stops at 10 and 35 facing left, at 90 facing right. */
function mirrored({ a = 55, b = 20.06 } = {}) {
  const text = hub({ a, b, middle: 'depth: 35, from: left' });
  const items = text.slice(text.indexOf('stack:\n') + 7).split(/(?= {2}- )/);
  const swap = (words: string): string =>
    words.replace(/left|right/g, (side) => (side === 'left' ? 'right' : 'left'));
  return text.slice(0, text.indexOf('stack:\n') + 7) + items.toReversed().map(swap).join('');
}

function lineOf(mechanics: Mechanics): LineMechanics {
  const [line] = mechanics.lines;
  if (!line) throw new Error('no line was worked');
  return line;
}

const forcesOf = (line: LineMechanics): readonly number[] => line.bearings.map(({ force }) => force);

/** Least of a convex function of one number. */
function least(f: (x: number) => number, lo: number, hi: number, steps = 55): { at: number; value: number } {
  const golden = (Math.sqrt(5) - 1) / 2;
  let [from, to] = [lo, hi];
  for (let step = 0; step < steps; step++) {
    const [p, q] = [to - golden * (to - from), from + golden * (to - from)];
    if (f(p) < f(q)) to = q;
    else from = p;
  }
  const at = (from + to) / 2;
  return { at, value: f(at) };
}

test('a line of three settles at the least energy of balls, spacers and clamp', () => {
  for (const [a, b] of [
    [54.9, 20.06],
    [54.93, 20.0],
    [55.06, 19.95],
  ] as const) {
    const mechanics = asWritten(hub({ a, b, bore: '26 P7' })).mechanics();
    const line = lineOf(mechanics);
    const [one, other] = mechanics.pairs.filter(isWorked);
    // Spacers and distances by hand; the stiffness of the balls is that of Hertz, which is tested elsewhere.
    const area = (Math.PI / 4) * (20 ** 2 - 17.1 ** 2);
    const give = [a / (68_900 * area), b / (68_900 * area)] as const;
    const mismatch = [a - 55, b + 4.94 - 25] as const;
    const F = 5000;
    const sides = [one?.input.left, one?.input.right, other?.input.right];
    // The left ring can slide to the left, the other two to the right, each against its grip.
    const balls = sides.map((side, i) => {
      const { reach = 0, centres = 0, stiffness = 0, geometry } = side?.bearing ?? {};
      const pressed = (offset: number): number =>
        0.4 * stiffness * (geometry?.count ?? 0) * Math.max(0, Math.hypot(offset, centres) - reach) ** 2.5;
      const grip = mechanics.bearings[i]?.grip ?? 0;
      const way = i === 0 ? -1 : 1;
      return (offset: number) =>
        0 < way * offset
          ? least((slid) => pressed(offset - way * slid) + grip * slid, 0, 0.4, 40).value
          : pressed(offset);
    });
    const spacer = (i: 0 | 1, apart: number): number => Math.max(0, mismatch[i] - apart) ** 2 / (2 * give[i]);
    const left = (x1: number) =>
      least((x0) => (balls[0]?.(x0) ?? 0) + spacer(0, x1 - x0) - F * x0, -0.8, 0.8);
    const right = (x1: number) =>
      least((x2) => (balls[2]?.(x2) ?? 0) + spacer(1, x2 - x1) + F * x2, -0.8, 0.8);
    const { at: x1 } = least((x) => (balls[1]?.(x) ?? 0) + left(x).value + right(x).value, -0.8, 0.8);
    const force = (i: 0 | 1, apart: number): number => Math.max(0, mismatch[i] - apart) / give[i];
    const [s0, s1] = [force(0, x1 - left(x1).at), force(1, right(x1).at - x1)];
    const wanted = [F - s0, s0 - s1, s1 - F];
    forcesOf(line).forEach((found, i) => {
      expect(Math.abs(found - (wanted[i] ?? 0))).toBeLessThan(2);
    });
    expect(Math.max(...forcesOf(line).map(Math.abs))).toBeGreaterThan(20);
  }
});

test('the play of a line of three is what the housing can move with every bearing inside its range', () => {
  for (const [a, b] of [
    [55, 20.06],
    [55.01, 20.07],
    [54.99, 20.05],
    [55.012, 20.05],
  ] as const) {
    const mechanics = asWritten(hub({ a, b, clamp: '0 N' })).mechanics();
    const half = mechanics.bearings.map(({ axial }) => (axial ?? 0) / 2);
    const places = [0, a - 55, a - 55 + b + 4.94 - 25];
    let [lo, hi] = [Number.NaN, Number.NaN];
    for (let x = -0.1; x < 0.1; x += 1e-5) {
      if (!places.every((place, i) => Math.abs(x - place) <= (half[i] ?? 0))) continue;
      if (Number.isNaN(lo)) lo = x;
      hi = x;
    }
    expect(lineOf(mechanics).playUnclamped).toBeCloseTo(hi - lo, 4);
  }
});

test('each pair of a line has play of its own where the line together has none', () => {
  const axial = asWritten(hub({ clamp: '0 N' })).mechanics().bearings[0]?.axial ?? 0;
  const step = Math.round(0.7 * axial * 1000) / 1000;
  const mechanics = asWritten(hub({ a: 55 + step, b: 20.06 + step, clamp: '0 N' })).mechanics();
  for (const pair of mechanics.pairs.filter(isWorked)) expect(pair.result.playUnclamped).toBeGreaterThan(0);
  const line = lineOf(mechanics);
  expect(line.playUnclamped).toBeCloseTo(axial - 2 * step, 4);
  expect(line.playUnclamped).toBeLessThan(0);
});

test('a line and its mirror image carry mirrored forces', () => {
  for (const lengths of [
    { a: 54.9, b: 20.06 },
    { a: 54.97, b: 19.98 },
    { a: 55.05, b: 20.1 },
  ]) {
    const plain = lineOf(asWritten(hub(lengths)).mechanics());
    const turned = lineOf(asWritten(mirrored(lengths)).mechanics());
    expect(turned.playUnclamped).toBeCloseTo(plain.playUnclamped, 9);
    expect(turned.playClampedSigned).toBeCloseTo(plain.playClampedSigned, 9);
    const back = forcesOf(turned)
      .toReversed()
      .map((force) => -force);
    forcesOf(plain).forEach((force, i) => {
      expect(Math.abs((back[i] ?? Number.NaN) - force)).toBeLessThan(0.5);
    });
  }
});

test('forces of a line add up to nothing, and no ring is held harder than its grip', () => {
  const mechanics = asWritten(hub({ a: 55.3, b: 20.06 })).mechanics();
  const line = lineOf(mechanics);
  expect(Math.abs(forcesOf(line).reduce((sum, force) => sum + force, 0))).toBeLessThan(0.5);
  const left = mechanics.bearings[0];
  // A long spacer pushes the left ring off its shoulder to the left, where only its grip holds it.
  expect(line.bearings[0]?.slid).toBe(true);
  expect(-(line.bearings[0]?.force ?? 0)).toBeCloseTo(left?.grip ?? 0, 0);
});

test('pairs of a line carry what the line gives them', () => {
  const mechanics = asWritten(hub({ a: 54.9 })).mechanics();
  const line = lineOf(mechanics);
  const [first, second] = mechanics.pairs.filter(isWorked);
  expect(first?.result.left.state.force).toBeCloseTo(Math.abs(line.bearings[0]?.force ?? 0), 1);
  expect(first?.result.right.state.force).toBeCloseTo(Math.abs(line.bearings[1]?.force ?? 0), 1);
  expect(second?.result.left.state.force).toBeCloseTo(first?.result.right.state.force ?? 0, 6);
  expect(first?.result.loadedBy).toBe('short');
});

test('a middle bearing that only its spacer locates stands where that spacer ends', () => {
  const pressed = (from: string) =>
    lineOf(asWritten(hub({ middle: `stop: spacer, from: ${from}`, clamp: '0 N' })).mechanics());
  const axial = asWritten(hub()).mechanics().bearings[0]?.axial ?? 0;
  // Pressed in from the right it stands at the left bearing's place, from the left at the right one's: δ outermost
  // is 55 + 4.94 + 20.06 − 80 = 0 either way, so the play is the bearing's own.
  expect(pressed('right').playUnclamped).toBeCloseTo(axial, 6);
  expect(pressed('left').playUnclamped).toBeCloseTo(axial, 6);
});
