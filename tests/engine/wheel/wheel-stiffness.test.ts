import { expect, test } from 'vitest';
import { bucklingTension } from '../../../server/engine/wheel/buckling.ts';
import { rimGive, rimWaveStiffness } from '../../../server/engine/wheel/rim-give.ts';
import { type SpokeBed, spokeBed } from '../../../server/engine/wheel/spoke-springs.ts';
import { wheelStiffness } from '../../../server/engine/wheel/wheel-stiffness.ts';
import { examples, ring } from './wheels.ts';

/** A bed with a lateral stiffness K = πR·k and nothing else that counts. */
const bedOf = (R: number, K: number): SpokeBed => ({
  lateral: K / (Math.PI * R),
  radial: 20,
  tangential: 0.1,
  lateralRadial: 0,
  lateralOfTension: 0,
  pull: 0,
});

const rimOf = (R: number, EI2: number, GJ: number) => ({
  radius: R,
  radial: 150e6,
  lateral: EI2 * 1e6,
  torsional: GJ * 1e6,
  axial: null,
});

// Published (Ford 2018): lateral stiffness of two front wheels and the wave of a bare rim, measured.
test.each([
  ['24 spokes, deep rim', 305, 304, 206, 94, 121],
  ['36 spokes, shallow rim', 307, 461, 158, 16.8, 147],
])('lateral stiffness of %s is the published one', (_, R, K, EI2, GJ, expected) => {
  const give = rimGive(rimOf(R, EI2, GJ), bedOf(R, K));
  expect(Math.abs(1 / (give?.lateral ?? 0) - expected)).toBeLessThan(1.5);
});

test('the two-wave stiffness of a bare rim is the measured 71 N/mm (Ford 2018)', () => {
  expect(Math.abs(rimWaveStiffness(rimOf(304, 219, 26.3), 2) - 71)).toBeLessThan(1);
});

test('bending and twist of a wave in series are the condensed two-by-two matrix of its energy (derived)', () => {
  const [R, EI, GJ, n] = [304, 219e6, 26.3e6, 3];
  // Energy of u = U·cos nθ, φ = F·cos nθ: bending πEI/R·(F − n²U/R)² and twist πGJ·n²/R·(F − U/R)², halved.
  const uu = ((Math.PI * EI) / R ** 3) * n ** 4 + ((Math.PI * GJ) / R ** 3) * n * n;
  const uf = -((Math.PI * EI) / R ** 2) * n * n - ((Math.PI * GJ) / R ** 2) * n * n;
  const ff = (Math.PI * EI) / R + ((Math.PI * GJ) / R) * n * n;
  expect(rimWaveStiffness(rimOf(R, EI / 1e6, GJ / 1e6), n)).toBeCloseTo(uu - (uf * uf) / ff, 6);
  expect(uu - (uf * uf) / ff).toBeCloseTo(814.09, 1);
});

test('a rim that cannot bend leaves two thirds of the bed (published formula)', () => {
  const give = rimGive(rimOf(305, 1e9, 1e9), bedOf(305, 304));
  expect(1 / (give?.lateral ?? 0)).toBeCloseTo(202.667, 2);
});

test('the radial sum is the closed form with hyperbolic functions (Smith 1901, Pippard and Francis 1931)', () => {
  const [R, k, EI] = [300, 25, 100e6];
  const eta = Math.sqrt((k * R ** 4) / EI + 1);
  const a = Math.sqrt((eta - 1) / 2);
  const b = Math.sqrt((eta + 1) / 2);
  const over =
    b * Math.sinh(Math.PI * a) * Math.cosh(Math.PI * a) + a * Math.sin(Math.PI * b) * Math.cos(Math.PI * b);
  const under = 4 * a * b * eta * (Math.sinh(Math.PI * a) ** 2 + Math.sin(Math.PI * b) ** 2);
  const closed = EI / R ** 3 / (over / under - 1 / (2 * Math.PI * eta ** 2));
  expect(closed).toBeCloseTo(3350.403, 2);
  const give = rimGive(
    { radius: R, radial: EI, lateral: 1e9, torsional: 1e9, axial: null },
    { ...bedOf(R, 300), radial: k },
  );
  expect(1 / (give?.radial ?? 0)).toBeCloseTo(closed, 1);
});

// Cross-checked with a frame model of the reference: inextensible and extensible rim.
test.each([
  ['vintage', 4577, 4493],
  ['tandem', 6671, 6501.9],
] as const)('radial stiffness of the %s wheel, stiff hoop and real hoop', (name, stiff, real) => {
  const inextensible = ring(examples[name], null);
  const extensible = ring(examples[name]);
  const of = ({ rim, spokes }: ReturnType<typeof ring>) => wheelStiffness(rim, spokes)?.radial ?? 0;
  expect(Math.abs(of(inextensible) - stiff)).toBeLessThan(60);
  expect(Math.abs(of(extensible) - real)).toBeLessThan(60);
});

test('the constants of the limits of buckling are the published ones', () => {
  // Spokes in the plane, meeting in the centre: 12μ/(1 + 4μ) of EI/R³ per mm (Hencky), μ = 0.4.
  const flat = ring({
    ...examples.vintage,
    R: 300,
    EI2: 200,
    GJ: 80,
    D: 1e-6,
    left: 1e-6,
    right: 1e-6,
    T: 1000,
  });
  const { tension = 0 } = bucklingTension(flat.rim, flat.spokes) ?? {};
  const pull = (36 * tension) / (2 * Math.PI * 300);
  expect((pull * 300 ** 3) / 200e6).toBeCloseTo(1.84615, 3);
  // A rim soft in twist on many spokes: 1.89·(GJ/R)^⅓·k^⅔, the wave count a real number; whole counts lie above.
  const soft = ring(
    { ...examples.vintage, R: 600, EI1: 1e5, EI2: 1e5, GJ: 0.4, left: 60, right: 60, T: 1000 },
    1e12,
  );
  const bed = spokeBed(soft.spokes, 600);
  const k = bed.lateral - bed.lateralOfTension;
  const answer = bucklingTension(soft.rim, soft.spokes);
  const least = 1.89 * (0.4e6 / 600) ** (1 / 3) * k ** (2 / 3);
  const found = (answer?.factor ?? 0) * bed.pull;
  expect(answer?.mode).toBeGreaterThan(4);
  expect(found / least).toBeGreaterThan(0.97);
  expect(found / least).toBeLessThan(1.06);
});

test('tension softens a wheel sideways, and at the buckling tension nothing is left', () => {
  const wheel = examples.vintage;
  const at = (T: number) => {
    const { rim, spokes } = ring({ ...wheel, T });
    return wheelStiffness(rim, spokes)?.lateral ?? 0;
  };
  expect(at(500)).toBeLessThan(at(0));
  expect(at(1000)).toBeLessThan(at(500));
  // The published series, which knows no ripple of the rim, on the same wheel: N/mm at 0, 500, 1000 N.
  const series = (T: number) => {
    const { rim, spokes } = ring({ ...wheel, T });
    return 1 / (rimGive(rim, spokeBed(spokes, rim.radius))?.lateral ?? 0);
  };
  for (const [T, expected] of [
    [0, 84],
    [500, 72],
    [1000, 52],
  ] as const)
    expect(Math.abs(series(T) - expected)).toBeLessThan(1);
  const { rim, spokes } = ring(wheel);
  const critical = bucklingTension(rim, spokes)?.tension ?? 0;
  expect(at(critical * 1.01)).toBe(0);
  expect(at(critical * 0.99)).toBeGreaterThan(0);
});
