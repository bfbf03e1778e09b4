import { expect, test } from 'vitest';
import { isWorked, type PairMechanics } from '../../server/analysis/mechanics/pair-mechanics.ts';
import { asWritten } from '../support/analyze-text.ts';

interface Made {
  readonly between?: string;
  readonly beside?: string;
  readonly clamp?: string;
  readonly seat?: string;
  readonly side?: 'left' | 'right';
}

/** A front hub on two 6803 against shoulders 60 mm apart, the axle 17 mm with a bore of 12. */
function hub({ between = '', beside = '', clamp = '0 N', seat = '', side = 'right' }: Made = {}): string {
  return `hub: Whimbrel front
position: front
width: 100
clamp: ${clamp}
axle: { material: aluminium 7075, diameter: 17, bore: 12 }
shell:
  material: aluminium 6061
  outside: 34
  between-shoulders: 60 ±0.01
  seats:
    left: { bore: 26 N7, depth: 5${seat} }
    right: { bore: 26 N7, depth: 5${seat} }
stack:
${side === 'left' ? beside : ''}  - bearing: left
    code: 6803
    seat: shell.left
    balls: 14 × 2.778
    groove: 0.52
${between}  - bearing: right
    code: 6803
    seat: shell.right
    balls: 14 × 2.778
    groove: 0.52
${side === 'right' ? beside : ''}`;
}

const adjuster = (set: string): string => `  - adjuster: ring
    length: 6
    travel: 1.5
    thread: M20x1
    set: ${set}
`;
const spacer = (length: number): string => `  - spacer: centre
    length: ${length} ±0.01
    inside: 17.1
    outside: 19.6
    material: steel
`;
const washer = `  - wave-washer: ring
    length: 1.2
    free: 1.8
    rate: 80 N/mm
`;

function pairOf(text: string, temperature = 20): PairMechanics {
  const [pair] = asWritten(text).mechanics('drawn', { temperature, clampForce: null }).pairs;
  if (!pair || !isWorked(pair)) throw new Error(`not worked: ${pair?.missing}`);
  return pair;
}

/** Torque of a metric thread with friction 0.15 at the flank and at the face, by the long form of ISO 16047 (from memory). */
function pressedBy(torque: number, d: number, pitch: number): number {
  const flank = d - 0.6495 * pitch;
  return torque / (pitch / (2 * Math.PI) + (0.15 * flank) / (2 * Math.cos(Math.PI / 6)) + 0.15 * 0.65 * d);
}

test('an adjuster beside the bearings leaves the play it is set to, and the clamp takes what the axle gives', () => {
  const free = pairOf(hub({ beside: adjuster('0.03') }));
  expect(free.result.playUnclamped).toBeCloseTo(0.03, 9);
  expect(free.result.playClampedSigned).toBeCloseTo(0.03, 9);
  // The axle between the rings by hand: 60 mm of aluminium 7075 (E 71.7 GPa), 17 over 12 mm, under 5 kN.
  const shortened = (5000 * 60) / (71_700 * (Math.PI / 4) * (17 ** 2 - 12 ** 2));
  const clamped = pairOf(hub({ beside: adjuster('0.03'), clamp: '5 kN' }));
  expect(clamped.result.playUnclamped).toBeCloseTo(0.03, 9);
  expect(clamped.result.playClampedSigned).toBeCloseTo(0.03 - shortened, 4);
});

test('an adjuster with a torque presses both bearings with what its thread leaves of it', () => {
  const pair = pairOf(hub({ beside: adjuster('0.5 N·m') }));
  const wanted = pressedBy(500, 20, 1);
  expect(pair.setting?.preload).toBeCloseTo(wanted, 6);
  expect(Math.abs(pair.result.ballLoad - wanted)).toBeLessThan(0.005 * wanted);
  expect(pair.result.loadedBy).toBe('short');
  expect(pair.assumed.join(' ')).toContain('friction of thread and face taken as 0.15');
});

test('between the rings it pushes them apart, and the outer rings hold no more than their grip', () => {
  const parts = `${spacer(54)}${adjuster('0.5 N·m')}`;
  const pair = pairOf(hub({ between: parts }));
  expect(pair.result.loadedBy).toBe('long');
  const wanted = Math.min(pressedBy(500, 20, 1), pair.left.grip, pair.right.grip);
  expect(Math.abs(pair.result.ballLoad - wanted)).toBeLessThan(0.01 * wanted);
});

test('set to a play between the rings, the length that is written for mid position does not matter', () => {
  for (const length of [53.5, 54, 54.4]) {
    const pair = pairOf(hub({ between: `${spacer(length)}${adjuster('0.02')}` }));
    expect(pair.result.playUnclamped).toBeCloseTo(0.02, 9);
  }
});

test('temperature acts on a hub that was set at 20 °C', () => {
  // Aluminium axle and aluminium shell grow alike but for their alloys: 60 mm, 25 K, 23.4 against 23.6 µm/m·K.
  const pair = pairOf(hub({ beside: adjuster('0.03') }), 45);
  const cold = pairOf(hub({ beside: adjuster('0.03') }));
  const growth = pair.input.mismatch - cold.input.mismatch;
  expect(Math.abs(growth)).toBeLessThan(0.002);
  const steel = pairOf(hub({ between: `${spacer(54)}${adjuster('0.02')}` }), 45).input.mismatch;
  const steelCold = pairOf(hub({ between: `${spacer(54)}${adjuster('0.02')}` })).input.mismatch;
  expect(steel - steelCold).toBeLessThan(-0.01);
});

test('an adjuster on the left is the mirror image of one on the right', () => {
  for (const set of ['0.03', '0.5 N·m']) {
    const [a, b] = (['left', 'right'] as const).map(
      (side) => pairOf(hub({ beside: adjuster(set), side, clamp: '3 kN' })).result,
    );
    expect(a?.playClampedSigned).toBeCloseTo(b?.playClampedSigned ?? Number.NaN, 9);
    expect(a?.ballLoad).toBeCloseTo(b?.ballLoad ?? Number.NaN, 6);
  }
});

test('a wave washer beside the bearings takes the play up and presses with its rate times what it is squeezed', () => {
  const { result, setting } = pairOf(hub({ beside: washer }));
  expect(result.ballLoad).toBeCloseTo((1.8 - 1.2) * 80, 9);
  expect(result.playClamped).toBe(0);
  expect(result.loadedBy).toBe('short');
  expect(setting?.rate).toBe(80);
});

test('a wave washer between the rings pushes them apart, as far as the seats hold the outer rings', () => {
  const pair = pairOf(hub({ between: `${spacer(58.8)}${washer}` }));
  expect(pair.result.loadedBy).toBe('long');
  expect(pair.result.ballLoad).toBeCloseTo(Math.min(48, pair.left.grip, pair.right.grip), 9);
  const held = pairOf(
    hub({
      between: `${spacer(58.8)}${washer}`,
      seat: ', retaining-ring: { side: open, thickness: 1.2, groove-from-face: 1 }',
    }).replaceAll('26 N7', '26.05 ±0.01'),
  );
  expect(held.result.ballLoad).toBeCloseTo(48, 9);
});

test('a setting that lacks something says what', () => {
  const missing = (text: string): string | undefined => {
    const [pair] = asWritten(text).mechanics().pairs;
    return pair && !isWorked(pair) ? pair.missing : undefined;
  };
  expect(missing(hub({ beside: adjuster('0.5 N·m').replace(/ {4}thread.*\n/, '') }))).toBe(
    'thread of adjuster.ring',
  );
  expect(missing(hub({ beside: washer.replace(/ {4}rate.*\n/, '') }))).toBe('rate of wave-washer.ring');
});

test('beside a spacer that holds the rings apart, a wave washer presses them on it with no more than its force', () => {
  const short = pairOf(hub({ between: spacer(59.9), beside: washer, clamp: '5 kN' }));
  expect(short.result.ballLoad).toBeCloseTo(48, 3);
  expect(short.result.spacerReached).toBe(false);
  const right = pairOf(hub({ between: spacer(60), beside: washer, clamp: '5 kN' }));
  expect(right.result.ballLoad).toBe(0);
  expect(right.result.spacerLoad).toBeCloseTo(48, 9);
});

test('in a hub of two bearings an adjuster with a setting places its ring, whatever stands between', () => {
  for (const length of [59.8, 60]) {
    const pair = pairOf(hub({ between: spacer(length), beside: adjuster('0.03') }));
    expect(pair.result.playUnclamped).toBeCloseTo(0.03, 9);
  }
});
