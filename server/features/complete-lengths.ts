import { meanContribution } from '../assembly/line.ts';
import { plain } from '../engine/base/figures.ts';
import type { Cursor } from '../spec/cursor.ts';
import type { KeyInfo } from '../spec/schema/key-info.ts';
import type { Snapshot } from '../workspace/workspace.ts';
import type { Suggestion } from './completion-item.ts';
import { samePath } from './section-at.ts';

/** Tolerances to put behind a number; the first is usual for turned lengths (common practice). */
const tolerances = ['±0.02', '±0.01', '±0.05', '+0.05/0', '0/-0.05'] as const;

/** Widths between dropouts that are common (common practice), mm. */
const widths = { front: ['100', '110'], rear: ['130', '135', '142', '148'] } as const;

/** A length: the one that closes the stack, the one of the part's mirror image, tolerances for a number. */
export function lengthSuggestions(snapshot: Snapshot, cursor: Cursor, info: KeyInfo): readonly Suggestion[] {
  const written = /^(\d+(?:\.\d*)?)/.exec(cursor.typed)?.[1];
  if (written !== undefined) return toleranced(written, cursor.typed);
  const found = [closing(snapshot, cursor), mirrored(snapshot, cursor)].filter((item) => item !== null);
  const first = found.filter(({ label }, at) => found.findIndex((other) => other.label === label) === at);
  const examples = info.examples
    .filter((example) => !first.some(({ label }) => label === example))
    .map((example): Suggestion => ({ label: example, text: example, kind: 'value', detail: 'for example' }));
  return [...first, ...examples];
}

/** The width over the end caps, for the position of the hub. */
export function widthSuggestions(snapshot: Snapshot, cursor: Cursor, info: KeyInfo): readonly Suggestion[] {
  if (/^\d/.test(cursor.typed)) return lengthSuggestions(snapshot, cursor, info);
  const position = snapshot.document.hub?.values.position?.value;
  const usual = position ? widths[position] : [...widths.front, ...widths.rear];
  return usual.map((width) => ({
    label: `${width} ±0.2`,
    text: `${width} ±0.2`,
    kind: 'value',
    detail: position ? `a common width, ${position}` : 'a common width',
  }));
}

function toleranced(number: string, typed: string): readonly Suggestion[] {
  const nominal = number.replace(/\.$/, '');
  const all = [
    ...tolerances.map((tolerance) => `${nominal} ${tolerance}`),
    `${plain(Number(nominal) - 0.02)}..${plain(Number(nominal) + 0.02)}`,
    `${nominal} ±0.02 measured ${nominal}`,
    `measured ${nominal}`,
  ];
  return all.map((text) => ({ label: text, text, kind: 'value', filter: `${typed} ${text}` }));
}

/** The length with which the clamped width comes to the middle of its limits, when it is the only one missing. */
function closing({ analysis }: Snapshot, cursor: Cursor): Suggestion | null {
  const loop = analysis.variants[0]?.width.loop;
  const line = analysis.variants[0]?.assembly.line.find(({ part }) => samePath(part.path, cursor.path));
  if (!loop?.wanted || !line || cursor.key !== 'length') return null;
  const others = loop.terms.filter((term) => term !== line.length);
  if (loop.missing.some((term) => term !== line.length)) return null;
  const sum = others.reduce((total, term) => total + meanContribution(term), 0);
  const count = line.part.values.count?.value ?? 1;
  const length = ((loop.wanted.lo + loop.wanted.hi) / 2 - sum) / count;
  if (!(0 < length)) return null;
  const text = `${length.toFixed(2)} ±0.02`;
  return { label: text, text, kind: 'value', detail: 'closes the stack to the width wanted', usual: true };
}

/** The same dimension of the part on the other side. */
function mirrored({ document }: Snapshot, cursor: Cursor): Suggestion | null {
  const stack = document.hub?.stack ?? [];
  const part = stack.find(({ path }) => samePath(path, cursor.path));
  const other = { left: 'right', right: 'left' }[part?.name ?? ''];
  const twin = stack.find(({ kind, name }) => kind === part?.kind && name === other);
  const written = twin?.values[cursor.key as 'length']?.value.written;
  return twin && written
    ? { label: written, text: written, kind: 'value', detail: `as ${twin.address}` }
    : null;
}

/** Nominal diameters that make sense here: of the rings in a seat, of the bores on the axle. */
export function diameterNominals(
  { analysis }: Snapshot,
  cursor: Cursor,
  { key }: KeyInfo,
): readonly string[] {
  const bearings = analysis.variants[0]?.assembly.bearings ?? [];
  const sizes = bearings.flatMap(({ bearing, part }) =>
    bearing ? [{ ...bearing, seat: part.values.seat?.value }] : [],
  );
  const distinct = (values: readonly number[]): readonly string[] => [...new Set(values)].map(plain);
  if (cursor.section === 'seat' && key === 'bore') {
    const address = `${cursor.path[0]}.${cursor.path.at(-1)}`;
    const inHere = sizes.filter(({ seat }) => seat === address);
    return distinct((inHere.length > 0 ? inHere : sizes).map(({ outside }) => outside));
  }
  if (key === 'diameter' || key === 'journal') return distinct(sizes.map(({ bore }) => bore));
  return [];
}
