import { expect, test } from 'vitest';
import { mountAnswer } from '../../server/report/mount/mount-answer.ts';
import { mountText } from '../../server/report/mount/mount-text.ts';
import { analyzeText } from '../support/analyze-text.ts';
import { pressByHand } from '../support/press-by-hand.ts';
import { sanderling } from '../support/sanderling.ts';

function mounted(text: string, temperature = 20, clampForce: number | null = null) {
  const { variants, workshop, limits } = analyzeText(text);
  const [variant] = variants;
  if (!variant) throw new Error('the text is no hub');
  return mountAnswer(variant, 'drawn', { workshop, limits, conditions: { temperature, clampForce } });
}

const ring = { inner: 21.5 + 2.778, outer: 26, E: 208_000, nu: 0.3 };
const wall = { inner: 26, outer: 34, E: 68_900, nu: 0.33 };

test('the force to press a ring in is friction times pressure times face, oiled and loose to dry and tight', () => {
  const force = mounted(sanderling()).bearings[0]?.outer?.pressForce;
  // F = µ·p·π·D·B with µ 0.12 (NTN CAT. No. 2203/E, mounting force); 0.08 oiled, 0.18 dry: common practice.
  const face = Math.PI * 26 * 5;
  expect(force?.typical).toBeCloseTo(0.12 * pressByHand(ring, wall, 0.013 * (26 / 29)).pressure * face, 5);
  expect(force?.most).toBeCloseTo(0.18 * pressByHand(ring, wall, 0.028 * (26 / 29)).pressure * face, 5);
  expect(force?.least).toBe(0);
});

test('the seat lets go where aluminium has outgrown the ring by the interference as made', () => {
  const outer = mounted(sanderling()).bearings[0]?.outer;
  // 6061: 23.6 µm/m·K (Aluminum Association typical properties); bearing steel 12.5 µm/m·K (KOYO 203E, fits).
  expect(outer?.freeAt).toBeCloseTo(20 + 0.013 / (26 * (23.6e-6 - 12.5e-6)), 4);
});

test('a ring drops in by heat only where the housing stays at 80 °C or below', () => {
  // Tightest build of N7: 28 µm over 26 mm of aluminium is 45.6 K, and 20 K for handling (KOYO 203E): 85.6 °C.
  const tight = mounted(sanderling()).bearings[0]?.outer?.warming;
  expect(tight?.difference).toBeCloseTo(0.028 / (26 * 23.6e-6), 6);
  expect(tight).toMatchObject({ part: 'housing', possible: false });
  // K7 of 26 mm is +6/−15 µm (ISO 286-2): 15 µm, 24.4 K, 64.4 °C.
  const easy = mounted(sanderling({ bore: '26 K7' })).bearings[0]?.outer?.warming;
  expect(easy?.to).toBeCloseTo(40 + 0.015 / (26 * 23.6e-6), 6);
  expect(easy?.possible).toBe(true);
});

test('cold tightens a steel ring in aluminium and takes clearance, heat gives it back', () => {
  const at = (temperature: number) => mounted(sanderling(), temperature).bearings[0];
  const made = (temperature: number) => 0.013 + 26 * (12.5e-6 - 23.6e-6) * (temperature - 20);
  for (const temperature of [-15, 20, 45]) {
    expect(at(temperature)?.outer?.interference.mean).toBeCloseTo(made(temperature) * (26 / 29), 8);
  }
  expect(at(-15)?.mounted?.mean).toBeLessThan(at(20)?.mounted?.mean ?? Number.NaN);
  expect(at(45)?.mounted?.mean).toBeGreaterThan(at(20)?.mounted?.mean ?? Number.NaN);
});

test('force and warming are those of the bench whatever temperature is asked for', () => {
  const [bench, cold] = [mounted(sanderling()), mounted(sanderling(), -20)].map(
    ({ bearings }) => bearings[0]?.outer,
  );
  expect(cold?.pressForce).toEqual(bench?.pressForce);
  expect(cold?.warming).toEqual(bench?.warming);
  expect(cold?.freeAt).toBe(bench?.freeAt);
});

test('both ends of the service temperatures are told, and what happens there is a caution', () => {
  const { service, cautions } = mounted(sanderling({ temperature: '-30..80 °C', clamp: '1 kN' }));
  expect(service.map(({ temperature }) => temperature)).toEqual([-30, 80]);
  // At 80 °C 26 mm of aluminium has outgrown the ring by 17 µm, more than the 13 µm it was made with.
  expect(cautions.join('\n')).toContain('at 80 °C the seat of bearing.left has let go');
  expect(cautions.join('\n')).toMatch(/at −30 °C bearing\.left has no clearance left/);
});

test('a clamp force that is given takes the place of the written one, and is said', () => {
  const answer = mounted(sanderling({ clamp: '5 kN' }), 20, 800);
  expect(answer.pairs[0]?.clampShortening).toBeCloseTo(
    (800 * 62.06) / (71_700 * (Math.PI / 4) * (19.5 ** 2 - 17.1 ** 2)),
    8,
  );
  expect(answer.assumed).toContain('clamp 0.8 kN as asked');
});

test('rock at the rim is of the size of 2·G·R/L', () => {
  const answer = mounted(sanderling({ spacer: '62.05 ±0.01' }));
  // Rough rule of mechanics for two bearings 67 mm apart; exact travel is less where axial play ends first.
  const G = answer.bearings[0]?.mounted?.mean ?? Number.NaN;
  const rough = (2 * G * 311) / 67.05;
  expect(answer.pairs[0]?.rimRock).toBeGreaterThan(rough * 0.5);
  expect(answer.pairs[0]?.rimRock).toBeLessThan(rough * 2.5);
});

test('the text carries units and says what keeps a number from being known', () => {
  const text = mountText('x.hub.yaml', 'Sanderling', mounted(sanderling({ clamp: '5 kN' })));
  expect(text).toContain('at 20 °C, clamp 5 kN');
  expect(text).toMatch(/not by heat/);
  expect(text).toMatch(
    /Bear in mind\n {4}bearing\.left and bearing\.right are loaded with 1\d\.\d N when clamped/,
  );
  expect(text).not.toMatch(/NaN|undefined|Infinity/);
  const bare = mountText('x.hub.yaml', 'Sanderling', mounted(sanderling().replace(/ {2}outside: 34\n/, '')));
  expect(bare).toContain('bore of the seat or outside of its housing is not written');
  expect(bare).toContain('no clamp written');
});

test('a hub without a known bearing says so and claims no conventions', () => {
  const text = mountText(
    'x.hub.yaml',
    'Sanderling',
    mounted('hub: Sanderling\nposition: front\nwidth: 100\nstack: []\n'),
  );
  expect(text).toContain('No bearing with a known size');
  expect(text).not.toContain('Assumed');
});

test('inside and outside can be asked for apart, and the text says so', () => {
  const { variants, workshop, limits } = analyzeText(sanderling({ clamp: '1 kN' }));
  const [variant] = variants;
  if (!variant) throw new Error('the text is no hub');
  const conditions = { temperature: 20, inner: 40, clampForce: null };
  const text = mountText('x.hub.yaml', 'S', mountAnswer(variant, 'drawn', { workshop, limits, conditions }));
  expect(text).toContain('at 40 °C inside and 20 °C outside, clamp 1 kN');
  // α·Δt·Dpw: 12.5e-6 · 20 K · 21.5 mm = 5.4 µm (NTN CAT. No. 2203/E, operating clearance).
  expect(text).toMatch(/clearance that warmth takes +5 µm/);
});

test('estimated balls and grooves are shown with what they may come to, known ones without', () => {
  const open = sanderling({ clamp: '1 kN' }).replaceAll(', groove: 0.52', '');
  const text = mountText('x.hub.yaml', 'S', mounted(open));
  expect(text).toMatch(/as its grooves are estimated +\d+ µm +\d+ µm/);
  expect(text).toMatch(/as balls and grooves are estimated +play \d+ to \d+ µm/);
  expect(mountText('x.hub.yaml', 'S', mounted(sanderling({ clamp: '1 kN' })))).not.toContain('estimated');
});

test('what a fit comes to is told for the loosest, the mean and the tightest build', () => {
  const outer = mounted(sanderling()).bearings[0]?.outer;
  // Hoop stress at the bore of a thick tube under pressure, p·(b² + a²)/(b² − a²): Lamé (Timoshenko and Goodier).
  const hoop = (pressure: number) => (pressure * (34 ** 2 + 26 ** 2)) / (34 ** 2 - 26 ** 2);
  const tight = pressByHand(ring, wall, 0.028 * (26 / 29)).pressure;
  expect(outer?.wallHoopRange.most).toBeCloseTo(hoop(tight), 5);
  expect(outer?.wallHoopRange.mean).toBeCloseTo(outer?.wallHoop ?? Number.NaN, 9);
  expect(outer?.wallHoopRange.least).toBe(0);
  // The loosest N7 has no interference to lose: 7 − 9 µm. In P7, −14/−35 µm (ISO 286-2), it has 5 µm.
  expect(outer?.freeAtRange).toBeNull();
  const firm = mounted(sanderling({ bore: '26 P7' })).bearings[0]?.outer?.freeAtRange;
  const at = (interference: number) => 20 + interference / (26 * (23.6e-6 - 12.5e-6));
  expect(firm?.[0]).toBeCloseTo(at(0.005), 4);
  expect(firm?.[1]).toBeCloseTo(at(0.035), 4);
});
