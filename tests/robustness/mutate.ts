import { randomFromSeed } from '../../server/engine/base/random.ts';

/** Draws from a seeded generator. */
export interface Dice {
  /** A whole number from 0 up to, not including, `count`. */
  below(count: number): number;
  pick<T>(items: readonly [T, ...T[]]): T;
}

export function dice(seed: number): Dice {
  const next = randomFromSeed(seed);
  const below = (count: number): number => (count <= 1 ? 0 : next() % count);
  return { below, pick: (items) => items[below(items.length)] ?? items[0] };
}

/** What gets typed, pasted and merged into spec files, and what YAML reads as something else. */
const pieces: readonly [string, ...string[]] = [
  '{',
  ...'}[]:-#&*!|>\'"%@,?~=`<\\ \t.±/0x$',
  ': ',
  '- ',
  ' #',
  '---\n',
  '...\n',
  '%YAML 1.1\n',
  '<<<<<<< ours\n',
  '=======\n',
  '>>>>>>> theirs\n',
  '||||||| base\n',
  '<<: *a',
  '&a ',
  '*a',
  '&a [*a]',
  '!!binary ',
  '!!js/function >',
  '? ',
  '|\n',
  '>-\n',
  '"\\u12',
  "''",
  'é',
  '\u00a0',
  '\ufeff',
  '\u2028',
  '\u0000',
  '\ud800',
  '😀',
  '−',
  '…',
  '\r',
  '\r\n',
  '\n',
  '\n\n',
  '1e308',
  '9'.repeat(40),
  `-${'9'.repeat(400)}`,
  '0',
  '-0',
  '1e-320',
  '.nan',
  '.inf',
  '0x1F',
  '012',
  '1_000',
  'null',
  'true',
  '14,03',
  '1/0 in',
  '±0',
  '±99',
  '5..2',
  '26 N7',
  '17 h6',
  ' measured 3',
  'kN',
  '-5 kN',
  '__proto__: ',
  'constructor: ',
  'toString: { hasOwnProperty: 1 }',
  'constructor',
  'valueOf',
  '[['.repeat(40),
  '{a: '.repeat(30),
  '- '.repeat(60),
  '[]'.repeat(200),
  'x'.repeat(5_000),
  '# allow width-off because it is asked for\n',
  '# allow width-off\n',
  '    # allow nothing-of-that-kind because x\n',
  'a: &a [x,x]\nb: &b [*a,*a]\nc: &c [*b,*b]\nd: [*c,*c]\n',
  'variants: { a: { change: { axle: { bore: 3 } } } }\n',
  '  - spacer: a\n    length: 0\n',
  '  - bearing: x\n    code: 6803\n    seat: shell.left\n',
  '  - shim: a\n    count: 1000000\n    length: 1\n',
];

type Change = (text: string, lines: string[], by: Dice) => string;

const spot = (text: string, by: Dice): number => by.below(text.length + 1);
const joined = (lines: readonly string[]): string => lines.join('\n');

/** One change each: characters, lines, indentation, numbers. */
const kinds: readonly [Change, ...Change[]] = [
  (text, _, by) => {
    const at = spot(text, by);
    return text.slice(0, at) + text.slice(at + 1 + by.below(6));
  },
  (text, _, by) => {
    const at = spot(text, by);
    return text.slice(0, at) + by.pick(pieces) + text.slice(at);
  },
  (text, _, by) => {
    const at = spot(text, by);
    return text.slice(0, at) + by.pick(pieces) + text.slice(at + 1 + by.below(3));
  },
  (text, _, by) => {
    const at = spot(text, by);
    const end = at + by.below(30);
    return text.slice(0, end) + text.slice(at, end) + text.slice(end);
  },
  (_, lines, by) => joined(lines.toSpliced(by.below(lines.length), 1 + by.below(3))),
  (_, lines, by) => {
    const at = by.below(lines.length);
    return joined(lines.toSpliced(at, 0, ...lines.slice(at, at + 1 + by.below(4))));
  },
  (_, lines, by) => {
    const [a, b] = [by.below(lines.length), by.below(lines.length)];
    return joined(lines.with(a, lines[b] ?? '').with(b, lines[a] ?? ''));
  },
  (_, lines, by) => {
    const at = by.below(lines.length);
    const indent = by.pick([' ', '  ', '    ', '\t', ' \t', ' '.repeat(120)]);
    return joined(lines.with(at, indent + (lines[at] ?? '')));
  },
  (_, lines, by) => {
    const at = by.below(lines.length);
    return joined(lines.with(at, (lines[at] ?? '').replace(/^ {1,2}/, '')));
  },
  (_, lines, by) => {
    const at = by.below(lines.length);
    const line = lines[at] ?? '';
    return joined(lines.with(at, line.slice(0, by.below(line.length + 1))));
  },
  (_, lines, by) => {
    const at = by.below(lines.length);
    return joined(lines.toSpliced(at, 0, by.pick(pieces)));
  },
  (_, lines, by) => {
    const at = by.below(lines.length);
    return joined(lines.with(at, (lines[at] ?? '').replace(/:.*/, `: ${by.pick(pieces)}`)));
  },
  (text, _, by) => changed(text, /\d+(?:\.\d+)?/g, by, (found) => number(found, by)),
  (text, _, by) =>
    changed(text, /\d+(?:\.\d+)?/g, by, (found) =>
      String(Math.round(Number(found) * (80 + by.below(40))) / 100),
    ),
  (text, _, by) =>
    changed(text, /[a-z-]{3,}/g, by, (found) => {
      const at = by.below(found.length);
      return found.slice(0, at) + (found[at + 1] ?? '') + (found[at] ?? '') + found.slice(at + 2);
    }),
  (text, _, by) =>
    changed(text, /[a-z-]{3,}/g, by, () =>
      by.pick([...text.matchAll(/[a-z-]{3,}/g)].map(String) as [string]),
    ),
];

/** One word of a kind made another. */
function changed(text: string, words: RegExp, by: Dice, make: (found: string) => string): string {
  const found = [...text.matchAll(words)];
  const one = found[by.below(found.length)];
  if (!one) return text;
  return text.slice(0, one.index) + make(one[0]) + text.slice(one.index + one[0].length);
}

function number(found: string, by: Dice): string {
  return by.pick([
    '0',
    '-1',
    `${found}0`,
    `${found}e9`,
    `-${found}`,
    found.slice(1),
    '1e999',
    `${found},5`,
    '',
  ]);
}

/** A text with one to four changes, the same ones for a seed each time. */
export function mutated(original: string, seed: number): string {
  const by = dice(seed);
  let text = original;
  const count = 1 + by.below(4);
  for (let i = 0; i < count; i++) text = by.pick(kinds)(text, text.split('\n'), by);
  return text.slice(0, 40_000);
}
