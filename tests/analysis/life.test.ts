import { expect, test } from 'vitest';
import { lifeOf } from '../../server/analysis/life/life-of.ts';
import { turningTorque } from '../../server/analysis/life/turning-torque.ts';
import { isWorked } from '../../server/analysis/mechanics/pair-mechanics.ts';
import { readSpec } from '../../server/spec/read-spec.ts';
import { asWritten } from '../support/analyze-text.ts';

/** A front hub whose wheel plane lies nearer to its left bearing; end caps of 20 and 30 mm. */
const hub = ({
  left = 20,
  right = 30,
  more = '',
  code = '6902-2RS',
  rider = '83 kg',
} = {}): string => `hub: Dunlin front
position: front
width: 124
duty: { rider: ${rider}, bicycle: 12 kg, share: 0.5, circumference: 2100 }
shell:
  between-shoulders: 60
  seats:
    left: { bore: 28, depth: 7 }
    right: { bore: 28, depth: 7 }
stack:
  - end-cap: left
    length: ${left}
  - bearing: left
    code: ${code}
    seat: shell.left
  - spacer: centre
    length: 60
  - bearing: right
    code: ${code}
    seat: shell.right
  - end-cap: right
    length: ${right}
${more}`;
const options = { how: 'drawn', rider: null } as const;

test('the loads and lives of a front hub are those of the lever rule and of ISO 281 by hand', () => {
  const life = lifeOf(asWritten(hub()), null, options);
  // Bearing middles at 23.5 and 90.5, wheel in the middle of 124.
  const span = 67;
  const toRight = (62 - 23.5) / span;
  const W = 95 * 0.5 * 9.80665;
  const T = 0.1 * W;
  const couple = (T * (2100 / (2 * Math.PI))) / span;
  // [left, right] radial, straight, leaning left (force to the left), leaning right.
  const radial = [
    [W * (1 - toRight), W * (1 - toRight) + couple, W * (1 - toRight) - couple].map(Math.abs),
    [W * toRight, W * toRight - couple, W * toRight + couple].map(Math.abs),
  ];
  for (const [side, bearing] of life.bearings.entries()) {
    expect(bearing.cases.map(({ share }) => share)).toEqual([0.8, 0.1, 0.1]);
    for (const [i, { load }] of bearing.cases.entries())
      expect(load.radial).toBeCloseTo(radial[side]?.[i] ?? 0, 8);
  }
  // The side force rests with the bearing whose shoulder it is pushed against.
  expect(life.bearings[0]?.cases.map(({ load }) => load.axial)).toEqual([0, expect.closeTo(T, 8), 0]);
  expect(life.bearings[1]?.cases.map(({ load }) => load.axial)).toEqual([0, 0, expect.closeTo(T, 8)]);
  // 6902: C 4.35 kN and C0 2.26 kN as printed. Every axial share lies under e = 0.19, so P = Fr.
  const lives = [0, 1].map((side) => {
    const [a = 0, b = 0, c = 0] = radial[side] ?? [];
    const P = Math.cbrt(0.8 * a ** 3 + 0.1 * b ** 3 + 0.1 * c ** 3);
    expect(life.bearings[side]?.ratings).toMatchObject({ dynamic: 4350, static: 2260, basis: 'printed' });
    expect(life.bearings[side]?.equivalent).toBeCloseTo(P, 6);
    return (4350 / P) ** 3 * 2100;
  });
  expect(life.bearings[0]?.kilometres).toBeCloseTo(lives[0] ?? 0, 2);
  const together = ((lives[0] ?? 0) ** (-10 / 9) + (lives[1] ?? 0) ** (-10 / 9)) ** (-9 / 10);
  expect(life.kilometres).toBeCloseTo(together, 2);
});

test('a mirrored hub has mirrored lives', () => {
  const one = lifeOf(asWritten(hub()), null, options).bearings;
  const other = lifeOf(asWritten(hub({ left: 30, right: 20 })), null, options).bearings;
  expect(one[0]?.kilometres).toBeCloseTo(other[1]?.kilometres ?? 0, 4);
  expect(one[1]?.kilometres).toBeCloseTo(other[0]?.kilometres ?? 0, 4);
});

test('more weight never gives more kilometres, and double the load an eighth of them', () => {
  const at = (kilograms: number): number =>
    lifeOf(asWritten(hub()), null, { ...options, rider: kilograms }).kilometres ?? 0;
  const lives = [50, 70, 90, 110, 140].map(at);
  for (const [i, life] of lives.entries())
    expect(life).toBeLessThan(lives[i - 1] ?? Number.POSITIVE_INFINITY);
  expect(at(2 * 83 + 12) / at(83)).toBeCloseTo(1 / 8, 9);
});

test('the workshop gives the rider where the hub does not, and what is taken for granted is said', () => {
  const bare = hub().replace(/duty: .*\n/, '');
  const workshop = readSpec('defaults: { rider: 100 kg }\n', 'workshop').workshop;
  const own = lifeOf(asWritten(bare), null, options);
  const shop = lifeOf(asWritten(bare), workshop, options);
  expect(own.assumed.join('\n')).toMatch(/rider taken as \d+ kg[\s\S]*circumference of the tyre taken/);
  expect(shop.assumed.join('\n')).not.toContain('rider taken');
  expect(shop.kilometres ?? 0).toBeLessThan(own.kilometres ?? 0);
});

test('a rotor adds braking, on its own side most', () => {
  const braked = lifeOf(
    asWritten(hub({ more: 'beside:\n  - rotor-face: left\n    at: 10\n' })),
    null,
    options,
  );
  const cases = braked.bearings.map(
    ({ cases }) => cases.find(({ name }) => name === 'braking')?.load.radial ?? 0,
  );
  expect(cases[0]).toBeGreaterThan(cases[1] ?? 0);
  // 0.3·W at the ground, the rotor force (r/75 of it) down at 13.5 mm left of the left bearing.
  const W = 95 * 0.5 * 9.80665;
  const brake = 0.3 * W;
  const rotor = (brake * (2100 / (2 * Math.PI))) / 75;
  const up = (W * 38.5 + rotor * 13.5) / 67;
  const forward = (brake * 38.5) / 67;
  expect(cases[1]).toBeCloseTo(Math.hypot(up, forward), 6);
});

test('ceramic balls keep the dynamic rating and leave the static one in doubt', () => {
  const [hybrid] = lifeOf(asWritten(hub({ code: 'HC6902-2RS' })), null, options).bearings;
  if (hybrid) {
    expect(hybrid.ratings.hybridStatic).toBeGreaterThan(0.5);
    expect(hybrid.ratings.hybridStatic).toBeLessThan(1);
  }
  expect(asWritten(hub({ code: 'HC6902-2RS' })).assembly.bearings[0]?.bearing?.material).toBe('hybrid');
});

test('a pair without load turns against its seals alone, a loaded one against more', () => {
  const pairOf = (spacer: string) => {
    const text = hub().replace('length: 60\n', `length: ${spacer}\n    outside: 18\n    inside: 15\n`);
    const [pair] = asWritten(`${text}clamp: 5 kN\n`).mechanics().pairs;
    if (!pair || !isWorked(pair)) throw new Error('not worked');
    return turningTorque(pair);
  };
  const [free, tight, tighter] = ['60.03', '59.97', '59.95'].map(pairOf);
  expect(free?.load).toBe(0);
  expect(free?.staticShare).toBe(0);
  expect(tight?.load).toBeGreaterThan(0);
  expect(tighter?.load).toBeGreaterThan(tight?.load ?? 0);
  // Two lips of a full contact seal each (SKF, friction): 0.028·ds^2.25 + 2, twice.
  expect(free?.seals).toBe(tight?.seals);
  expect(free?.seals).toBeGreaterThan(2 * (0.028 * 17 ** 2.25 + 2));
  expect(free?.seals).toBeLessThan(2 * (0.028 * 20 ** 2.25 + 2));
});

/* ISO 281 and ISO 76 rate rolling bearings as made; loose balls between a cone and a cup have no rating there. */
test('a hub with cones says that its life is not reckoned', () => {
  const cones = `hub: Avocet
position: front
width: 100
axle: { diameter: 9 }
shell: { cups: { left: { ball-circle: 17.4 }, right: { ball-circle: 17.4 } } }
stack:
  - { cone: left, length: 10, balls: 10 × 3/16 in }
  - { cone: right, length: 10, balls: 10 × 3/16 in }
`;
  const life = lifeOf(asWritten(cones), null, options);
  expect(life.kilometres).toBeNull();
  expect(life.missing.join()).toContain('cups and cones');
});

test('a stainless bearing is said to be rated as if it were of bearing steel', () => {
  expect(lifeOf(asWritten(hub({ code: 'S6902-2RS' })), null, options).assumed.join()).toContain(
    'carries less',
  );
  expect(lifeOf(asWritten(hub({ code: '6902-2RS' })), null, options).assumed.join()).not.toContain(
    'carries less',
  );
});
