import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import type { ConeMechanics } from '../../server/analysis/mechanics/cup-cone.ts';
import { createWorkspace } from '../../server/workspace/workspace.ts';

const sample = readFileSync(
  join(import.meta.dirname, '..', '..', 'client', 'samples', 'avocet-cone.hub.yaml'),
  'utf8',
);

function conesOf(text: string): ConeMechanics {
  const workspace = createWorkspace();
  workspace.setRoots(['/hubs']);
  workspace.setFile('/hubs/a.hub.yaml', text);
  const cups = workspace.snapshot('/hubs/a.hub.yaml')?.analysis.variants[0]?.mechanics('built').cups;
  if (!cups || !('races' in cups)) throw new Error(`not worked out: ${JSON.stringify(cups)}`);
  return cups;
}

test('the play to leave is F·L/(E·A) of the axle between the middles of the cones, by hand', () => {
  // Between the cones 100 − 2·(4.5 + 1.5 + 11) = 66 mm, and half of each cone: 77 mm.
  // Area π/4·((9 − 0.9382)² − 5.2²) = 51.046 − 21.237 = 29.809 mm²; steel 200 GPa (handbook value of this project's table).
  const { leave } = conesOf(sample);
  expect(leave).toBeCloseTo((4000 * 77) / (200_000 * 29.809), 5);
});

test('nuts on a solid axle shorten nothing between the cones', () => {
  const nuts = conesOf(sample.replace('through: axle', 'through: stack'));
  expect(nuts.leave).toBe(0);
  expect(nuts.result?.playClamped).toBeCloseTo(0.06, 9);
  const unsaid = conesOf(sample.replace(', through: axle', '').replace(', bore: 5.2', ''));
  expect(unsaid.leave).toBe(0);
  expect(unsaid.assumed.join()).toContain('the axle is solid');
});

test('cones set too close are loaded as the least energy of axle, shell and balls has it', () => {
  const cones = conesOf(sample);
  for (const play of [0, 0.01, 0.03]) {
    const found = cones.at(play);
    const brute = leastEnergy(cones, play);
    expect(Math.abs((found?.ballLoad ?? 0) - brute)).toBeLessThan(1 + 0.003 * brute);
  }
  expect(cones.at(0.03)?.ballLoad).toBeGreaterThan(50);
  expect(cones.at(0.052)?.ballLoad).toBe(0);
});

test('balls of the two sides changed over give the same load, mirrored', () => {
  const at = (left: string, right: string): ConeMechanics => {
    let turn = 0;
    return conesOf(sample.replace(/10 × 3\/16 in/g, () => (turn++ === 0 ? left : right)));
  };
  const there = at('9 × 3/16 in', '11 × 5/32 in').at(0.01);
  const back = at('11 × 5/32 in', '9 × 3/16 in').at(0.01);
  expect(there?.ballLoad).toBeGreaterThan(0);
  expect(back?.ballLoad).toBeCloseTo(there?.ballLoad ?? 0, 3);
  expect(back?.left.contactStress).toBeCloseTo(there?.right.contactStress ?? 0, 3);
});

test('shares of many settings are those of a counted sample', () => {
  const cones = conesOf(sample);
  const counted = { loaded: 0, high: 0 };
  // A grid of equally likely quantiles of both normal spreads, ±3σ at the limits; the clamp strays a quarter.
  const quantiles = normalQuantiles(400);
  for (const a of quantiles) {
    for (const b of quantiles) {
      const play = 0.06 + (0.015 / 3) * a - cones.leave * (1 + (0.25 / 3) * b);
      if (play < 0) counted.loaded++;
      if (0.015 < play) counted.high++;
    }
  }
  const shares = cones.shares(0.015);
  expect(shares?.loaded).toBeCloseTo(counted.loaded / 160_000, 2);
  expect(shares?.playHigh).toBeCloseTo(counted.high / 160_000, 2);
});

test('a cone against a cartridge bearing takes the clearance of the bearing into its play', () => {
  const mixed = sample
    .replace(/ {4}left: \{ ball-circle.*\n/, '')
    .replace('  cups:', '  seats:\n    left: { bore: 26 N7, depth: 8, from: left }\n  cups:')
    .replace('outside: 30', 'outside: 34')
    .replace(/ {2}- cone: left\n(?: {4}.*\n)+/, '  - bearing: left\n    code: 6000\n    seat: shell.left\n');
  const cones = conesOf(mixed);
  expect(cones.races).toEqual(['bearing.left', 'cone.right']);
  expect(cones.cones.map(({ side }) => side)).toEqual(['right']);
  expect(cones.at(0.03)?.playUnclamped).toBeCloseTo(0.03, 9);
  // The bearing holds both ways: a cone backed off further gives no more play than the bearing has alone.
  expect(cones.at(0.2)?.playUnclamped).toBe(cones.at(0.3)?.playUnclamped);
  // Half of one cone only: 100 − 2·6 − 11 − 8 (6000: 8 wide, ISO 15, less its mean deviation) + 5.5.
  expect(cones.leave).toBeCloseTo((4000 * (74.5 + 0.06)) / (200_000 * 29.809), 4);
});

test('what is not written is named', () => {
  expect(conesOf(sample.replace(/ {4}set: .*\n/, '')).missing).toEqual(['set of cone.left or cone.right']);
  expect(conesOf(sample.replace('balls: 10 × 3/16 in\n', 'material: steel\n')).missing).toEqual([
    'balls of cone.left',
  ]);
});

/** Force on the balls where ball, axle and shell energy less the work of the clamp is least: a search of its own. */
function leastEnergy(cones: ConeMechanics, play: number): number {
  const side = cones.cones[0]?.pair;
  if (!side) return Number.NaN;
  const { reach, centres, stiffness, geometry } = side.bearing;
  const touch = Math.sqrt(reach * reach - centres * centres);
  const shellArea = (Math.PI / 4) * (30 * 30 - 14 * 14);
  // 6061: 68.9 GPa, a handbook value; 66 mm of shell between the cups.
  const shell = 66 / (68_900 * shellArea);
  const balls = (closing: number): number => {
    const squeeze = Math.max(0, Math.hypot(touch + Math.max(0, closing) / 2, centres) - reach);
    return 2 * geometry.count * stiffness * 0.4 * squeeze ** 2.5;
  };
  const energy = (x: number): number => {
    const inner = search((y) => (y * y) / (2 * shell) + balls(x - play - y), 0, 0.02);
    return (x * x) / (2 * cones.compliance) - 4000 * x + inner.value;
  };
  const { at } = search(energy, 0, 0.1);
  // What the axle is not shortened by, the balls hold up.
  return 4000 - at / cones.compliance;
}

function search(f: (x: number) => number, from: number, to: number): { at: number; value: number } {
  let [lo, hi] = [from, to];
  for (let step = 0; step < 90; step++) {
    const [a, b] = [lo + (hi - lo) / 3, hi - (hi - lo) / 3];
    if (f(a) < f(b)) hi = b;
    else lo = a;
  }
  return { at: (lo + hi) / 2, value: f((lo + hi) / 2) };
}

/** The middles of `count` equally likely parts of a normal spread, by summing its density. */
function normalQuantiles(count: number): readonly number[] {
  const found: number[] = [];
  let sum = 0;
  const step = 0.0005;
  for (let z = -6; z < 6 && found.length < count; z += step) {
    sum += (Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI)) * step;
    while (found.length < count && (found.length + 0.5) / count <= sum) found.push(z);
  }
  return found;
}
