import { expect, test } from 'vitest';
import { isWorked } from '../../server/analysis/mechanics/pair-mechanics.ts';
import { randomFromSeed } from '../../server/engine/base/random.ts';
import { asWritten } from '../support/analyze-text.ts';
import { sanderling } from '../support/sanderling.ts';

/** Laws that hold whatever the numbers are; each tried on many hubs that differ in fit, spacer, wall and clamp. */

function worked(text: string, conditions = { temperature: 20, clampForce: null as number | null }) {
  const { bearings, pairs } = asWritten(text).mechanics('drawn', conditions);
  const [pair] = pairs;
  if (!pair || !isWorked(pair)) throw new Error(`${pair?.missing} is missing in ${text}`);
  return { bearings, pair, result: pair.result };
}

const random = randomFromSeed(20261125);
const between = (lo: number, hi: number): number => lo + (hi - lo) * (random() / 2 ** 32);

/** Hubs at random; every second one has a spacer that is long. */
const hubs = Array.from({ length: 40 }, () => ({
  spacer: `${between(61.95, 62.15).toFixed(3)} ±0.01`,
  clamp: `${between(0.2, 8).toFixed(2)} kN`,
  outside: between(18.6, 23).toFixed(2),
  wall: between(29, 44).toFixed(1),
  bore: between(25.97, 26.01),
}));

const textOf = ({ spacer, clamp, outside, wall, bore }: (typeof hubs)[number], tighter = 0): string =>
  sanderling({ spacer, clamp, outside, bore: `${(bore - tighter).toFixed(4)} ±0.004` }).replace(
    'outside: 34',
    `outside: ${wall}`,
  );

test('more interference never gives more clearance, and so never more play', () => {
  for (const hub of hubs) {
    const [loose, tight] = [worked(textOf(hub)), worked(textOf(hub, 0.006))];
    const [before, after] = [loose, tight].map(({ bearings }) => bearings[0]?.mounted);
    expect(after?.mean).toBeLessThanOrEqual(before?.mean ?? Number.NaN);
    expect(after?.least).toBeLessThanOrEqual(before?.least ?? Number.NaN);
    expect(after?.most).toBeLessThanOrEqual(before?.most ?? Number.NaN);
    expect(tight.result.playUnclamped).toBeLessThanOrEqual(loose.result.playUnclamped + 1e-12);
  }
});

test('clamped and unclamped agree at zero force', () => {
  for (const hub of hubs) {
    const { result } = worked(textOf(hub), { temperature: 20, clampForce: 0 });
    expect(result.playClampedSigned).toBeCloseTo(result.playUnclamped, 12);
    if (0 < result.playUnclamped) expect(result.playClamped).toBeCloseTo(result.playUnclamped, 12);
    if (result.ballLoad === 0) expect(result.clampShortening).toBeCloseTo(0, 12);
  }
});

test('what stays free shortens its spacer by F·L/(E·A) for every newton more', () => {
  for (const hub of hubs) {
    const at = (clampForce: number) => worked(textOf(hub), { temperature: 20, clampForce });
    const [some, more] = [at(500), at(1500)];
    if (some.result.ballLoad > 0 || more.result.ballLoad > 0) continue;
    const long = Number.parseFloat(hub.spacer);
    // 7075-T6: 71.7 GPa (open course book of mechanics, material properties).
    const perNewton = long / (71_700 * (Math.PI / 4) * (Number(hub.outside) ** 2 - 17.1 ** 2));
    expect(more.result.clampShortening - some.result.clampShortening).toBeCloseTo(1000 * perNewton, 9);
  }
});

/** Left and right changed over: every name, and the order of the stack. */
function mirrored(text: string): string {
  const [head = '', tail = ''] = text.split('stack:\n');
  const swap = (part: string): string =>
    part.replaceAll('left', '\0').replaceAll('right', 'left').replaceAll('\0', 'right');
  const items = tail.split('\n').filter((line) => line.startsWith('  - '));
  const rest = tail.split('\n').filter((line) => line !== '' && !line.startsWith('  - '));
  return `${swap(head)}stack:\n${[...items.toReversed().map(swap), ...rest].join('\n')}\n`;
}

test('mirror-image hubs give mirror-image results', () => {
  for (const hub of hubs) {
    // One seat tighter than the other and a bearing of another group, so that left and right differ.
    const text = textOf(hub)
      .replace(/right: \{ bore: [\d.]+ ±0\.004/, 'right: { bore: 25.985 ±0.004')
      .replace('bearing: right, code: 6803-2RS', 'bearing: right, code: 6803-2RS C3');
    const [one, other] = [worked(text), worked(mirrored(text))];
    expect(other.bearings[1]?.mounted).toEqual(one.bearings[0]?.mounted);
    expect(other.bearings[0]?.mounted).toEqual(one.bearings[1]?.mounted);
    expect(other.pair.loop.bearings).toEqual(one.pair.loop.bearings);
    expect(other.result.playUnclamped).toBeCloseTo(one.result.playUnclamped, 10);
    expect(other.result.playClampedSigned).toBeCloseTo(one.result.playClampedSigned, 10);
    expect(other.result.ballLoad).toBeCloseTo(one.result.ballLoad, 4);
    expect(other.result.left.contactStress).toBeCloseTo(one.result.right.contactStress, 3);
    const side = { no: 'no', either: 'either', left: 'right', right: 'left' } as const;
    expect(other.result.slid).toBe(side[one.result.slid]);
  }
});

test('a force written in another unit is the same force', () => {
  const [kilonewtons, newtons] = [sanderling({ clamp: '3.2 kN' }), sanderling({ clamp: '3200 N' })].map(
    (text) => worked(text).result,
  );
  expect(newtons).toEqual(kilonewtons);
});

test('heat and cold are told apart by material alone: a hub all of bearing steel keeps its play', () => {
  // A workshop's own material with the expansion of the rings, 12.5 µm/m·K.
  const workshop = `materials:\n  ring-steel: { E: 208 GPa, nu: 0.3, expansion: 12.5, density: 7810, yield: 900 MPa }\n`;
  const text = sanderling({ clamp: '3 kN' }).replaceAll(/aluminium \d+-T6/g, 'ring-steel');
  const [bench, warm] = [20, 70].map((temperature) => {
    const [pair] = asWritten(text, workshop).mechanics('drawn', { temperature, clampForce: null }).pairs;
    if (!pair || !isWorked(pair)) throw new Error('the pair could not be worked out');
    return pair;
  });
  expect(bench?.left.assumed.join()).not.toContain('ring-steel');
  expect(warm?.left.mounted?.mean).toBeCloseTo(bench?.left.mounted?.mean ?? Number.NaN, 9);
  // The chain of 62 mm grows as one; only the 0.01 mm that the spacer is longer grows by itself.
  const grown = (bench?.result.playUnclamped ?? Number.NaN) - (warm?.result.playUnclamped ?? Number.NaN);
  expect(grown).toBeCloseTo(0.01 * 12.5e-6 * 50, 9);
});
