import { randomFromSeed } from '../../server/engine/base/random.ts';

/** Sizes of invented hubs: code, bore, outside, width; ISO 15 boundary dimensions. */
const sizes = [
  ['6803-2RS', 17, 26, 5],
  ['6804-2RS', 20, 32, 7],
  ['6902-2RS', 15, 28, 7],
  ['6903-2RS', 17, 30, 7],
  ['6001-2RS', 12, 28, 8],
  ['6805-2RS', 25, 37, 7],
] as const;

/** Retaining rings of DIN 472: bore, thickness, groove width. */
const rings = new Map<number, readonly [number, number]>([
  [26, [1.2, 1.3]],
  [28, [1.2, 1.3]],
  [30, [1.2, 1.3]],
  [32, [1.2, 1.3]],
  [37, [1.5, 1.6]],
]);

export interface Dice {
  readonly chance: (share: number) => boolean;
  readonly between: (lo: number, hi: number) => number;
  readonly pick: <T>(items: readonly T[]) => T;
}

export function diceOf(seed: number): Dice {
  const draw = randomFromSeed(seed);
  const random = (): number => (draw() >>> 0) / 2 ** 32;
  // The first draws of neighbouring seeds are thrown away.
  for (let i = 0; i < 20; i++) random();
  return {
    chance: (share) => random() < share,
    between: (lo, hi) => Math.round((lo + (hi - lo) * random()) * 100) / 100,
    pick: (items) => items[Math.floor(random() * items.length)] as (typeof items)[number],
  };
}

const fix = (value: number): string => String(Math.round(value * 100) / 100);

/** A hub that a mechanic could build: whatever is drawn, each part can get into its place and out again. */
export function feasibleHub(seed: number): string {
  const { chance, between, pick } = diceOf(seed);
  const [code, d, D, B] = pick(sizes);
  const rear = chance(0.5);
  const collared = chance(0.35);
  const paired = !collared && chance(0.2);
  const stops = {
    left: pick(['shoulder', 'shoulder', 'ring'] as const),
    right: pick(['shoulder', 'shoulder', 'spacer', 'ring'] as const),
  };
  const open = { left: chance(0.2), right: chance(0.25) };
  const inner = between(30, 60);
  const sleeve = d + between(2.2, 3.2);
  const through = D - between(2.5, 4);
  const [thickness, groove] = rings.get(D) ?? [1.2, 1.3];
  const seat = (side: 'left' | 'right', count: number): string => {
    const ring = open[side] ? 'open' : stops[side] === 'ring' ? 'blind' : null;
    const proud = open[side] ? 2.6 : between(0.05, 1);
    const land = chance(0.2) ? `, land: ${fix(count * B * 0.6)}` : '';
    const stop = stops[side] === 'ring' && ring !== 'blind' ? 'shoulder' : stops[side];
    return `    ${side}: { bore: ${D} ${pick(['N7', 'M7', 'P7'])}, depth: ${fix(count * B + proud)}, stop: ${stop}${land}${
      ring === null
        ? ''
        : `, retaining-ring: { side: ${ring}, thickness: ${thickness}, groove-width: ${groove}, size: ${D}${ring === 'open' ? `, groove-from-face: ${fix(proud - thickness - 0.02)}` : ''} }`
    } }`;
  };
  const tight = chance(0.2);
  const cap = (side: string): string => {
    const face = fix(d + between(2, 3));
    const extra = pick([
      '',
      `, outside: ${fix(d + between(5, 8))}`,
      ', fixing: thread',
      `, spigot: 10 g6, bore: 5.2`,
      `, socket: 6`,
    ]);
    return `  - { end-cap: ${side}, length: ${fix(between(10, 22))}, face: ${face}${extra} }`;
  };
  const bearing = (name: string, where: string): string =>
    `  - { bearing: ${name}, code: ${code}, seat: ${where} }`;
  const between_ = collared
    ? `  - { collar: centre, length: ${fix(inner)}, outside: ${fix(sleeve)} }`
    : `  - { spacer: centre, length: ${fix(inner + 0.01)}, inside: ${fix(d + 0.1)}, outside: ${fix(sleeve)} }`;
  const shim = chance(0.3)
    ? [`  - { shim: left, length: 0.1, inside: ${fix(d + 0.1)}, outside: ${fix(d + 3)} }`]
    : [];
  const freehub = rear
    ? [
        `  - { spacer: gap, length: ${fix(between(3.2, 5))}, inside: ${fix(d + 0.1)}, outside: ${fix(d + 2.5)} }`,
        bearing('inboard', 'freehub.left'),
        `  - { spacer: freehub, length: 18.01, inside: ${fix(d + 0.1)}, outside: ${fix(sleeve)} }`,
        bearing('outboard', 'freehub.right'),
      ]
    : [];
  const driverRing = chance(0.5);
  const driver = rear
    ? [
        'freehub:',
        `  outside: ${D + 4}`,
        '  between-shoulders: 18',
        `  through: ${fix(through)}`,
        '  seats:',
        `    left: { bore: ${D} N7, depth: ${fix(B + 0.2)} }`,
        driverRing
          ? `    right: { bore: ${D} N7, depth: ${fix(B + 2.6)}, retaining-ring: { side: open, thickness: ${thickness}, groove-width: ${groove}, groove-from-face: ${fix(2.58 - thickness)}, size: ${D} } }`
          : `    right: { bore: ${D} N7, depth: ${fix(B + 0.2)} }`,
      ]
    : [];
  return [
    `hub: Heron ${seed}`,
    `position: ${rear ? 'rear' : 'front'}`,
    'width: 100 ±20',
    'shell:',
    `  outside: ${D + 8}`,
    `  between-shoulders: ${fix(inner)}`,
    `  through: ${fix(through)}`,
    '  seats:',
    seat('left', 1),
    seat('right', paired ? 2 : 1),
    ...driver,
    `axle: { diameter: ${d} ${tight ? pick(['k6', 'm6']) : pick(['h6', 'g6'])}, bore: 10.1 }`,
    'stack:',
    cap('left'),
    ...shim,
    bearing('left', 'shell.left'),
    between_,
    bearing('right', 'shell.right'),
    ...(paired ? [bearing('far', 'shell.right')] : []),
    ...freehub,
    cap('right'),
    '',
  ].join('\n');
}

/** A hub that cannot be built as drawn: an axle with shoulders where none can pass. */
export function lockedHub(seed: number): string {
  const { chance, between, pick } = diceOf(seed + 5000);
  const [code, d, D, B] = pick(sizes);
  const kind = pick(['outer-collars', 'ring-behind-collar', 'freehub-between-collars'] as const);
  const inner = between(30, 60);
  const through = fix(D - between(2.5, 4));
  const [thickness, groove] = rings.get(D) ?? [1.2, 1.3];
  const collar = (name: string, outside: number): string =>
    `  - { collar: ${name}, length: ${fix(between(3, 8))}, outside: ${fix(outside)} }`;
  const spacer = (name: string, length: number): string =>
    `  - { spacer: ${name}, length: ${fix(length)}, inside: ${fix(d + 0.1)}, outside: ${fix(d + 2.5)} }`;
  const bearing = (name: string, where: string): string =>
    `  - { bearing: ${name}, code: ${code}, seat: ${where} }`;
  const cap = (side: string): string =>
    `  - { end-cap: ${side}, length: ${fix(between(10, 20))}, face: ${fix(d + 2.4)} }`;
  const ring = `, retaining-ring: { side: open, thickness: ${thickness}, groove-width: ${groove}, groove-from-face: ${fix(2.58 - thickness)}, size: ${D} }`;
  const low = (): number => d + between(2, 3);
  const high = D - between(0.3, 1);
  const stack =
    kind === 'outer-collars'
      ? [
          collar('a', low()),
          bearing('left', 'shell.left'),
          spacer('centre', inner),
          bearing('right', 'shell.right'),
          collar('b', low()),
        ]
      : kind === 'ring-behind-collar'
        ? [
            bearing('left', 'shell.left'),
            `  - { collar: centre, length: ${fix(inner)}, outside: ${fix(low())} }`,
            bearing('right', 'shell.right'),
            `  - { collar: b, length: ${fix(between(3, 8))}, outside: ${fix(high)} }`,
          ]
        : [
            bearing('left', 'shell.left'),
            spacer('centre', inner),
            bearing('right', 'shell.right'),
            collar('a', low()),
            bearing('inboard', 'freehub.left'),
            spacer('driver', 18),
            bearing('outboard', 'freehub.right'),
            collar('b', low()),
          ];
  const right = kind === 'ring-behind-collar' ? `depth: ${fix(B + 2.6)}${ring}` : `depth: ${fix(B + 0.2)}`;
  const driver = [
    'freehub:',
    `  outside: ${D + 4}`,
    '  between-shoulders: 18',
    `  through: ${through}`,
    '  seats:',
    `    left: { bore: ${D} N7, depth: ${fix(B + 0.2)} }`,
    `    right: { bore: ${D} N7, depth: ${fix(B + 0.2)} }`,
  ];
  return [
    `hub: Rail ${seed}`,
    `position: ${kind === 'freehub-between-collars' ? 'rear' : 'front'}`,
    'width: 100 ±20',
    'shell:',
    `  outside: ${D + 8}`,
    `  between-shoulders: ${fix(inner)}`,
    `  through: ${through}`,
    '  seats:',
    `    left: { bore: ${D} N7, depth: ${fix(B + 0.2)} }`,
    `    right: { bore: ${D} N7, ${right} }`,
    ...(kind === 'freehub-between-collars' ? driver : []),
    `axle: { diameter: ${d} ${chance(0.5) ? 'h6' : 'k6'}, bore: 10.1 }`,
    'stack:',
    cap('left'),
    ...stack,
    cap('right'),
    '',
  ].join('\n');
}
