import { expect, test } from 'vitest';
import { stackJson } from '../../server/report/stack/stack-json.ts';
import { analyzeText } from '../support/analyze-text.ts';
import { pressByHand } from '../support/press-by-hand.ts';
import { sanderling } from '../support/sanderling.ts';
import { type HandBearing, hertzStress, thrust } from '../support/thrust-by-hand.ts';

function pairOf(text: string) {
  const { variants, limits } = analyzeText(text);
  const pair = stackJson('x.hub.yaml', variants, limits).variants[0]?.pairs[0];
  if (!pair) throw new Error('the hub has no pair');
  return pair;
}

/** Bearing steel E 208 GPa, ν 0.30; 6061-T6 E 68.9 GPa, ν 0.33: typical properties, Aluminum Association. */
const ring = { inner: 21.5 + 2.778, outer: 26, E: 208_000, nu: 0.3 };
const wall = { inner: 26, outer: 34, E: 68_900, nu: 0.33 };
/** m0 of grooves of 0.52 with balls of 2.778 mm. */
const m0 = (0.52 + 0.52 - 1) * 2.778;
/** Sleeve of 7075-T6, E 71.7 GPa: L/(E·A), mm/N. */
const sleeve = (outside: number) => 62.06 / (71_700 * (Math.PI / 4) * (outside ** 2 - 17.1 ** 2));

test('interference is that of the printed limits, smoothed by d/(d+3) where there is any', () => {
  const [left] = pairOf(sanderling()).bearings;
  // N7 of 26 mm: −7/−28 µm (ISO 286-2); outside of the ring 0/−9 µm (ISO 492, class Normal, NSK E1102e Table 8.2).
  const smooth = 26 / 29;
  expect(left?.interferenceUm?.min).toBeCloseTo(-9 + 7, 3);
  expect(left?.interferenceUm?.mean).toBeCloseTo((17.5 - 4.5) * smooth, 3);
  expect(left?.interferenceUm?.max).toBeCloseTo(28 * smooth, 3);
});

test('pressure and clearance lost are those of two tubes solved by their boundary conditions', () => {
  const [left] = pairOf(sanderling()).bearings;
  const pressed = pressByHand(ring, wall, 0.013 * (26 / 29));
  expect(left?.pressure).toBeCloseTo(pressed.pressure, 6);
  // h6 of 17 mm is 0/−11 µm (ISO 286-2), the bore of the ring 0/−8 µm (ISO 492): loose on average, nothing lost.
  expect(left?.clearanceLossUm).toBeCloseTo(pressed.innermostShrinks * 1000, 6);
  // Group N above 10 up to 18 mm: 3 to 18 µm (ISO 5753-1, NSK E1102e Table 9.9).
  expect(left?.mountedClearanceUm?.mean).toBeCloseTo(10.5 - pressed.innermostShrinks * 1000, 6);
  const tightest = pressByHand(ring, wall, 0.028 * (26 / 29)).innermostShrinks * 1000;
  const axle = { inner: 12.1, outer: 17, E: 71_700, nu: 0.33 };
  const innerRing = { inner: 17, outer: 21.5 - 2.778, E: 208_000, nu: 0.3 };
  const grown = pressByHand(axle, innerRing, 0.008 * (17 / 19)).outermostGrows * 1000;
  expect(left?.mountedClearanceUm?.min).toBeCloseTo(3 - tightest - grown, 5);
  expect(left?.mountedClearanceUm?.max).toBeCloseTo(18, 6);
});

test('axial clearance, play and what the clamp takes follow the printed formulas', () => {
  // A steel-stiff sleeve keeps some play under 1 kN.
  const pair = pairOf(sanderling({ clamp: '1 kN', outside: '24' }));
  const G = 0.0105 - pressByHand(ring, wall, 0.013 * (26 / 29)).innermostShrinks;
  // Ga = √(4·m0·G − G²): NSK E1102e, axial clearance of deep groove bearings.
  const Ga = Math.sqrt(4 * m0 * G - G * G);
  expect(pair.axialClearanceUm).toBeCloseTo(Ga * 1000, 5);
  expect(pair.bearings.map(({ axialClearanceUm }) => axialClearanceUm)).toEqual([
    pair.axialClearanceUm,
    pair.axialClearanceUm,
  ]);
  const delta = 62.06 - 62.05;
  expect(pair.playUnclamped).toBeCloseTo(Ga - delta, 6);
  expect(pair.playShoulders).toBeCloseTo(Ga + delta, 6);
  const taken = 1000 * sleeve(24);
  expect(pair.clampShortening).toBeCloseTo(taken, 8);
  expect(pair.playClamped).toBeCloseTo(Ga - Math.abs(delta - taken), 6);
  expect(pair).toMatchObject({ ballLoad: 0, spacerLoad: 1000, contactStress: 0 });
});

test('a thin sleeve gives way until the balls carry: force and stress by another route to Hertz', () => {
  const pair = pairOf(sanderling({ clamp: '5 kN' }));
  const G = 0.0105 - pressByHand(ring, wall, 0.013 * (26 / 29)).innermostShrinks;
  const bearing: HandBearing = { balls: 13, ball: 2.778, pitch: 21.5, conformity: 0.52, clearance: G };
  const shell = 62.05 / (68_900 * (Math.PI / 4) * (34 ** 2 - 22.5 ** 2));
  const short = 5000 * sleeve(19.5) - 0.01;
  let [lo, hi] = [0, 5000];
  for (let step = 0; step < 60; step++) {
    const N = (lo + hi) / 2;
    if (2 * thrust(bearing, N).offset + N * (sleeve(19.5) + shell) < short) lo = N;
    else hi = N;
  }
  expect(lo).toBeGreaterThan(10);
  // Half a micrometre of offset is a newton here, and the approximation is good to 3 %.
  expect(pair.ballLoad).toBeGreaterThan(lo * 0.95);
  expect(pair.ballLoad).toBeLessThan(lo * 1.05);
  expect(pair.spacerLoad).toBeCloseTo(5000 - (pair.ballLoad ?? 0), 6);
  expect(pair.clampShortening).toBeCloseTo((pair.spacerLoad ?? 0) * sleeve(19.5), 8);
  expect(pair.playClamped).toBe(0);
  const { ballForce } = thrust(bearing, pair.ballLoad ?? 0);
  expect((pair.contactStress ?? 0) / hertzStress(bearing, ballForce)).toBeGreaterThan(0.97);
  expect((pair.contactStress ?? 0) / hertzStress(bearing, ballForce)).toBeLessThan(1.03);
  expect(pair.bearings.map(({ ballLoad }) => ballLoad)).toEqual([pair.ballLoad, pair.ballLoad]);
});

test('shares of builds are those of a plain Monte Carlo over the same dimensions', () => {
  // C3 is 11 to 25 µm above 10 up to 18 mm (ISO 5753-1): clearance is left in nearly every build.
  const pair = pairOf(sanderling({ code: '6803-2RS C3', clamp: '5.5 kN' }));
  const lossPer = pressByHand(ring, wall, 0.001).innermostShrinks / 0.001;
  const axle = { inner: 12.1, outer: 17, E: 71_700, nu: 0.33 };
  const innerRing = { inner: 17, outer: 21.5 - 2.778, E: 208_000, nu: 0.3 };
  const growPer = pressByHand(axle, innerRing, 0.001).outermostGrows / 0.001;
  const normal = normalNumbers(4711);
  // Middle and tolerance, ±3σ: the convention of the tool for every part.
  const drawn = (least: number, most: number) => (least + most) / 2 + ((most - least) / 6) * normal();
  const builds = 60_000;
  let [loaded, high] = [0, 0];
  for (let build = 0; build < builds; build++) {
    const half = () => {
      const made = drawn(-0.009, 0) - drawn(-0.028, -0.007);
      const onAxle = drawn(-0.011, 0) - drawn(-0.008, 0);
      const taken = lossPer * Math.max(0, made) * (26 / 29) + growPer * Math.max(0, onAxle) * (17 / 19);
      const G = drawn(0.011, 0.025) - taken;
      return G > 0 ? Math.sqrt(4 * m0 * G - G * G) / 2 : 0;
    };
    const [a, b] = [half(), half()];
    const delta = drawn(62.05, 62.07) - drawn(62.03, 62.07) - 5500 * sleeve(19.5);
    const play = Math.min(a + b - Math.abs(delta), 2 * Math.min(a, b));
    if (play < 0) loaded++;
    if (0.05 < play) high++;
  }
  expect(loaded).toBeGreaterThan(100);
  // 20,000 against 60,000 builds: one σ of the difference is under 0.003.
  expect(Math.abs((pair.shareLoaded ?? 0) - loaded / builds)).toBeLessThan(0.01);
  expect(Math.abs((pair.sharePlayHigh ?? 0) - high / builds)).toBeLessThan(0.01);
});

test('measured parts give a second set of results, and the drawn one stays as it was', () => {
  const drawn = pairOf(sanderling({ clamp: '1 kN', outside: '24' }));
  const text = sanderling({
    clamp: '1 kN',
    outside: '24',
    bore: '26 N7 measured 25.99 ±0.002',
    spacer: '62.06 ±0.01 measured 62.03 ±0.003',
  });
  const { measured, ...top } = pairOf(text);
  expect(top.playUnclamped).toBeCloseTo(drawn.playUnclamped ?? Number.NaN, 9);
  expect(measured?.delta).toBeCloseTo(62.03 - 62.05, 9);
  // Ring 25.9955 on average in a bore of 25.990: 5.5 µm.
  expect(measured?.bearings[0]?.interferenceUm?.mean).toBeCloseTo(5.5 * (26 / 29), 5);
  const G = 0.0105 - pressByHand(ring, wall, 0.0055 * (26 / 29)).innermostShrinks;
  expect(measured?.playUnclamped).toBeCloseTo(Math.sqrt(4 * m0 * G - G * G) - 0.02, 6);
});

test('without a clamp nothing is said of the clamped hub, and without a seat nothing of its fit', () => {
  const pair = pairOf(sanderling());
  expect(pair).toMatchObject({ playClamped: null, ballLoad: null, shareLoaded: null, contactStress: null });
  expect(pair.playUnclamped).not.toBeNull();
  const bare = pairOf(sanderling().replace('  outside: 34\n', ''));
  expect(bare.bearings[0]).toMatchObject({ interferenceUm: null, pressure: null });
});

/** Normal deviates by Box and Muller over a multiplicative generator of Lehmer (Park and Miller, CACM 31, 1988). */
function normalNumbers(seed: number): () => number {
  let state = seed;
  const uniform = () => {
    state = (state * 48_271) % 2_147_483_647;
    return state / 2_147_483_647;
  };
  return () => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
}

test('what estimated grooves may do under a clamp is null until a clamp is written', () => {
  const estimated = (clamp?: string) =>
    pairOf(
      sanderling(clamp ? { clamp, spacer: '61.96 ±0.01' } : {}).replaceAll(
        ', balls: 13 × 2.778, groove: 0.52',
        '',
      ),
    );
  const { range } = estimated();
  expect(range?.playUnclamped[0]).toBeGreaterThan(0);
  expect(range).toMatchObject({ playClamped: null, ballLoad: null, contactStress: null });
  expect(estimated('5 kN').range?.ballLoad?.[0]).toBeGreaterThan(0);
});
