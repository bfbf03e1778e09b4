import { plain } from '../../engine/base/figures.ts';
import { readDimension } from '../../spec/dimension.ts';
import { readQuantity } from '../../spec/quantity.ts';
import { addUpDoubt } from './add-up-doubt.ts';
import { askBearing, type FoundBearing } from './ask-bearing.ts';
import { ask, choose, type Question, type Script, seen } from './question.ts';

/** What the answers so far lead to: the next question, or the file. */
export type Turn =
  | { readonly kind: 'question'; readonly question: Question }
  | {
      readonly kind: 'file';
      /** A hub file with what was read written as measured. */
      readonly text: string;
      readonly name: string;
      /** What is not sure, a sentence each. */
      readonly doubts: readonly string[];
    };

/**
 * The dialogue in which a hub on the stand is written down: a pure function of the answers given so far, the same in
 * the terminal and in the editor. `<` takes the last answer back.
 */
export function measuredHub(answers: readonly string[]): Turn {
  const script = hub();
  let step = script.next();
  for (const answer of withoutTakenBack(answers)) {
    if (step.done) break;
    step = script.next(answer);
  }
  return step.done ? { kind: 'file', ...step.value } : { kind: 'question', question: step.value };
}

function withoutTakenBack(answers: readonly string[]): readonly string[] {
  const kept: string[] = [];
  for (const answer of answers) {
    if (answer.trim() === '<') kept.pop();
    else kept.push(answer);
  }
  return kept;
}

type File = Omit<Extract<Turn, { kind: 'file' }>, 'kind'>;

function* hub(): Script<File> {
  const name = yield* ask({ text: 'Name of the hub', hint: 'as Dunlin front', choices: null }, (answer) =>
    answer === '' ? { problem: 'a name is wanted, any will do' } : { value: answer },
  );
  const position = yield* choose('Which wheel is it for', ['front', 'rear']);
  const width = yield* reading('Width over the end caps, dropout face to dropout face', 'mm', '100.02');
  const left = yield* askBearing('the left bearing of the shell', null);
  const right = yield* askBearing('the right bearing of the shell', left);
  const between = yield* choose('What stands between their inner rings', [
    'a spacer sleeve',
    'a shoulder of the axle',
    'nothing that was found',
  ]);
  const sleeve =
    between === 'nothing that was found'
      ? null
      : yield* lengths(between === 'a spacer sleeve' ? 'the sleeve' : 'the shoulder');
  const driver = position === 'rear' ? yield* freehub(right) : null;
  const caps = yield* endCaps();
  const housing = yield* shell(left, right);
  const axle = yield* reading('Diameter of the axle under the inner rings', 'mm', '16.99');
  const axleOf = yield* choose('What the axle is made of', metals);
  const clamp = yield* ask(
    { text: 'Force of the axle or skewer that clamps it', hint: 'as 5 kN; empty: not known', choices: null },
    (answer) => {
      if (answer === '') return { value: null };
      const read = readQuantity(answer, 'force');
      return 'problem' in read ? { problem: read.problem.message } : { value: answer };
    },
  );
  const bearings = [left, right, ...(driver?.bearings ?? [])];
  const read = [caps.left, caps.right, ...(driver?.lengths ?? [])].map(lengthIn);
  // Without a sleeve nothing is known of the distance, and a freehub without bearings hides what is in it.
  const whole = sleeve !== null && (position === 'front' || driver !== null);
  const addUp = whole
    ? addUpDoubt(width === null ? null : mmOf(width), [
        ...read,
        lengthIn(sleeve),
        ...bearings.map((bearing) => bearing.width),
      ])
    : [];
  const doubts = [
    ...bearings.flatMap(({ doubt }) => doubt ?? []),
    ...(width === null
      ? [`the width is not measured: ${widthOf(null, position).split(' ')[0]} mm is taken`]
      : []),
    ...addUp,
    ...housing.doubts,
    ...(driver?.doubts ?? []),
  ];
  const axleLines = [...madeOf(axleOf), ...(axle === null ? [] : [`  diameter: ${nominalOf(axle)}`])];
  const text = [
    '# As found on the stand: what was read off the parts is written as measured.',
    `hub: ${quoted(name)}`,
    `position: ${position}`,
    `width: ${widthOf(width, position)}`,
    '',
    ...housing.lines,
    ...(driver ? driver.housing : []),
    ...(axleLines.length === 0 ? [] : ['', 'axle:', ...axleLines]),
    '',
    'stack:',
    ...item('end-cap', 'left', caps.left),
    ...item('bearing', 'left', [...left.lines, 'seat: shell.left']),
    ...(sleeve ? item(between === 'a spacer sleeve' ? 'spacer' : 'collar', 'centre', sleeve) : []),
    ...item('bearing', 'right', [...right.lines, 'seat: shell.right']),
    ...(driver ? driver.stack : []),
    ...item('end-cap', 'right', caps.right),
    ...(clamp === null ? [] : ['', `clamp: ${clamp}`]),
    '',
  ].join('\n');
  return { text, name, doubts: [...new Set(doubts)] };
}

/** A length read off a part, as written; null where it is not known. */
function* reading(what: string, unit: string, example: string): Script<string | null> {
  return yield* ask(
    { text: what, hint: `${unit}, as ${example} or ${example} ±0.01; empty: not known`, choices: null },
    (answer) => {
      if (answer === '') return { value: null };
      if (!/^[Ø⌀\d.]/.test(answer)) return { problem: `${answer} is no length in ${unit}` };
      const read = readDimension(`measured ${answer}`, 'length');
      return 'problem' in read
        ? { problem: read.problem.message.replace('measured ', '') }
        : { value: answer };
    },
  );
}

function* lengths(what: string): Script<readonly string[]> {
  const length = yield* reading(`Length of ${what}, face to face`, 'mm', '62.04');
  const outside = yield* reading(`Outside diameter of ${what}`, 'mm', '19.5');
  const inside = what === 'the sleeve' ? yield* reading(`Inside diameter of ${what}`, 'mm', '17.1') : null;
  return [...measured('length', length), ...measured('inside', inside), ...measured('outside', outside)];
}

function* endCaps(): Script<{ readonly left: readonly string[]; readonly right: readonly string[] }> {
  const left = yield* reading('Left end cap, from the dropout face to the bearing', 'mm', '14.02');
  const right = yield* reading('Right end cap, from the dropout face to the bearing', 'mm', '14.02');
  const face = yield* reading('Diameter of the face that bears on the bearing', 'mm', '19.4');
  const rest = measured('face', face);
  return { left: [...measured('length', left), ...rest], right: [...measured('length', right), ...rest] };
}

interface Shell {
  readonly lines: readonly string[];
  readonly doubts: readonly string[];
}

function* shell(left: FoundBearing, right: FoundBearing): Script<Shell> {
  const metal = yield* choose('What the shell is made of', metals);
  const shoulders = yield* reading('Distance between the two shoulders in the shell', 'mm', '62.03');
  const outside = yield* reading('Outside diameter of the shell around its seats', 'mm', '34');
  const seats: string[] = [];
  const doubts: string[] = [];
  for (const side of ['left', 'right'] as const) {
    const bore = yield* reading(`Bore of the ${side} seat, by bore gauge`, 'mm', '25.985');
    const depth = yield* reading(`Depth of the ${side} seat, from the end of the shell`, 'mm', '5.1');
    const ring = yield* choose(`Is there a retaining ring before the ${side} bearing`, seen);
    if (ring === 'not looked') doubts.push(lookForRing(`the ${side} bearing`));
    const keys = [
      ...boreOf(bore, side === 'left' ? left : right),
      ...measured('depth', depth),
      ...(ring === 'yes' ? ['retaining-ring: { side: open }'] : []),
    ];
    seats.push(`    ${side}: ${keys.length === 0 ? '{}' : `{ ${keys.join(', ')} }`}`);
  }
  return {
    lines: [
      'shell:',
      ...madeOf(metal),
      ...measured('outside', outside).map((line) => `  ${line}`),
      ...measured('between-shoulders', shoulders).map((line) => `  ${line}`),
      '  seats:',
      ...seats,
    ],
    doubts,
  };
}

/** A bearing that is pressed against a ring nobody took out breaks the seat. */
const lookForRing = (bearing: string): string =>
  `nobody looked for a retaining ring before ${bearing}: look before it is pushed`;

const metals = ['not known', 'aluminium', 'steel', 'titanium'] as const;

const madeOf = (metal: (typeof metals)[number]): readonly string[] =>
  metal === 'not known' ? [] : [`  material: ${metal}`];

interface Driver {
  readonly bearings: readonly FoundBearing[];
  /** Its items that hold a length. */
  readonly lengths: readonly (readonly string[])[];
  readonly housing: readonly string[];
  readonly stack: readonly string[];
  readonly doubts: readonly string[];
}

function* freehub(same: FoundBearing): Script<Driver | null> {
  const own = yield* choose('Does the freehub run on bearings of its own', ['yes', 'no']);
  if (own === 'no') return null;
  const inboard = yield* askBearing('the inboard bearing of the freehub', same);
  const outboard = yield* askBearing('the outboard bearing of the freehub', inboard);
  const gap = yield* reading('Length of what stands between shell bearing and freehub bearing', 'mm', '1.2');
  const inner = yield* reading('Length of the spacer inside the freehub', 'mm', '20.01');
  const shoulders = yield* reading('Distance between the two shoulders in the freehub', 'mm', '20');
  const ring = yield* choose('Is there a retaining ring before the outboard bearing of the freehub', seen);
  const held = ring === 'yes' ? ['retaining-ring: { side: open }'] : [];
  return {
    doubts: ring === 'not looked' ? [lookForRing('the outboard bearing of the freehub')] : [],
    bearings: [inboard, outboard],
    lengths: [measured('length', gap), measured('length', inner)],
    housing: [
      '',
      'freehub:',
      ...measured('between-shoulders', shoulders).map((line) => `  ${line}`),
      '  seats:',
      `    left: { ${boreOf(null, inboard).join(', ')} }`,
      `    right: { ${[...boreOf(null, outboard), ...held].join(', ')} }`,
    ],
    stack: [
      ...item('spacer', 'gap', measured('length', gap)),
      ...item('bearing', 'inboard', [...inboard.lines, 'seat: freehub.left']),
      ...item('spacer', 'freehub', measured('length', inner)),
      ...item('bearing', 'outboard', [...outboard.lines, 'seat: freehub.right']),
    ],
  };
}

/** A seat that was not measured has the diameter of its bearing, and no fit is judged from that. */
function boreOf(reading: string | null, { outside }: FoundBearing): readonly string[] {
  if (reading !== null) return [`bore: ${nominalOf(reading)}`];
  return outside === null ? [] : [`bore: ${plain(outside)}`];
}

function item(kind: string, name: string, lines: readonly string[]): readonly string[] {
  return [`  - ${kind}: ${name}`, ...lines.map((line) => `    ${line}`)];
}

/** The length in the lines of an item, mm; null where none was read. */
function lengthIn(lines: readonly string[]): number | null {
  const line = lines.find((one) => one.startsWith('length: measured '));
  return line === undefined ? null : mmOf(line.slice('length: measured '.length));
}

function mmOf(answer: string): number | null {
  const read = readDimension(answer, 'length');
  return 'problem' in read ? null : read.dimension.nominal;
}

const measured = (key: string, value: string | null): readonly string[] =>
  value === null ? [] : [`${key}: measured ${value}`];

/** A diameter that parts of whole sizes fit: its nominal is the nearest half millimetre, the reading stands beside it. */
function nominalOf(value: string): string {
  const number = Number.parseFloat(value);
  const nominal = Math.round(number * 2) / 2;
  return Math.abs(nominal - number) <= 0.1 ? `${plain(nominal)} measured ${value}` : `measured ${value}`;
}

/** Over-locknut dimensions of the trade (common practice): a reading near one is that one. */
const widths = [74, 100, 110, 120, 126, 130, 135, 141, 142, 148, 150, 157, 170, 177, 190, 197];

function widthOf(value: string | null, position: 'front' | 'rear'): string {
  if (value === null)
    return `${position === 'front' ? 100 : 142} # not measured: the commonest of a ${position} hub`;
  const number = mmOf(value) ?? Number.parseFloat(value);
  const near = widths.find((width) => Math.abs(width - number) <= 0.8);
  return near === undefined || near === number ? plain(number) : `${near} # read ${value} over the end caps`;
}

/** A name that YAML would read as something else stands in quotes. */
function quoted(name: string): string {
  return /^[\p{L}][\p{L}\p{N} ().-]*$/u.test(name) && !/^(yes|no|on|off|true|false|null)$/i.test(name)
    ? name
    : JSON.stringify(name);
}
