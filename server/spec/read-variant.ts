import { isSeq, type YAMLMap } from 'yaml';
import { makeProblem } from './make-problem.ts';
import {
  type AddedPart,
  type Housing,
  type HousingName,
  type PartChange,
  type PartValues,
  type StackKind,
  stackKinds,
  type Variant,
} from './model.ts';
import type { Placed, SpecPath } from './place.ts';
import { readAxle, readClamp } from './read-clamp.ts';
import { readHousing, readSeat } from './read-housing.ts';
import { itemHead, itemMap, partOf } from './read-part.ts';
import {
  type Entry,
  entriesOf,
  type Reader,
  readEntries,
  readSection,
  sectionMap,
} from './section-reader.ts';
import { asScalar, isEmpty, writtenOf } from './yaml-text.ts';

type Mutable<T> = { -readonly [K in keyof T]: T[K] };
type Sections = Mutable<Pick<Variant, 'axle' | 'clamp' | 'shell' | 'freehub'>>;

export function readVariants(reader: Reader, entry: Entry, path: SpecPath): Variant[] {
  const { map } = sectionMap(reader, entry, path, 'variants by name, such as thru-15:');
  if (!map) return [];
  const variants: Variant[] = [];
  for (const item of entriesOf(reader, map, path)) {
    const at = [...path, item.key];
    const inner = sectionMap(reader, item, at, 'keys of a variant, such as change and width');
    if (inner.ok) variants.push(readVariant(reader, item.key, inner.map, at));
  }
  return variants;
}

function readVariant(
  reader: Reader,
  name: string,
  map: YAMLMap<unknown, unknown> | null,
  path: SpecPath,
): Variant {
  const entries = map ? entriesOf(reader, map, path) : [];
  const values = readEntries<{ width: never; notes: string }>(
    reader,
    entries,
    map,
    path,
    'variant',
  ) as Variant['values'];
  const sections: Sections = { axle: null, clamp: null, shell: null, freehub: null };
  const change: PartChange[] = [];
  const replace: PartChange[] = [];
  const add: AddedPart[] = [];
  const remove: Placed<string>[] = [];
  for (const entry of entries) {
    const at = [...path, entry.key];
    if (entry.key === 'change' || entry.key === 'replace') {
      const into = entry.key === 'change' ? change : replace;
      readChanges(reader, entry, at, into, sections);
    } else if (entry.key === 'add') readAdded(reader, entry, at, add);
    else if (entry.key === 'remove') readRemoved(reader, entry, at, remove);
    else readHubSection(reader, entry, entry.key, at, sections);
  }
  return { name, path, values, change, replace, add, remove, ...sections };
}

/** `axle`, `clamp`, `shell`, `freehub` or one seat (`shell.left`); false for anything else. */
function readHubSection(
  reader: Reader,
  entry: Entry,
  address: string,
  path: SpecPath,
  into: Sections,
): boolean {
  const [section = '', seat] = address.split('.');
  if (address === 'axle') into.axle = readAxle(reader, entry, path) ?? into.axle;
  else if (address === 'clamp') into.clamp = readClamp(reader, entry, path) ?? into.clamp;
  else if (section === 'shell' || section === 'freehub') {
    const read =
      seat === undefined
        ? readHousing(reader, entry, section, path, true)
        : seatChange(reader, entry, section, seat, path);
    if (read) into[section] = merged(into[section], read);
  } else return false;
  return true;
}

function seatChange(
  reader: Reader,
  entry: Entry,
  housing: HousingName,
  name: string,
  path: SpecPath,
): Housing | null {
  const seat = readSeat(reader, entry, housing, name, path, true);
  return seat && { name: housing, path, values: {}, seats: [seat], flanges: [], cups: [] };
}

function merged(first: Housing | null, second: Housing): Housing {
  if (!first) return second;
  return {
    name: first.name,
    path: first.path,
    values: { ...first.values, ...second.values },
    seats: [...first.seats, ...second.seats],
    flanges: [...first.flanges, ...second.flanges],
    cups: [...first.cups, ...second.cups],
  };
}

function readChanges(
  reader: Reader,
  entry: Entry,
  path: SpecPath,
  into: PartChange[],
  sections: Sections,
): void {
  const { map } = sectionMap(
    reader,
    entry,
    path,
    'parts by their address, such as end-cap.left: { bore: 15.05 }',
  );
  if (!map) return;
  for (const item of entriesOf(reader, map, path)) {
    const at = [...path, item.key];
    if (readHubSection(reader, item, item.key, at, sections)) continue;
    const kind = stackKinds.find((k) => item.key.startsWith(`${k}.`));
    if (!kind) {
      notAddress(reader, item, at);
      continue;
    }
    const inner = sectionMap(reader, item, at, `keys of a ${kind}`);
    if (!inner.ok) continue;
    const options = { partial: entry.key === 'change', head: item.keySpan };
    const values = readSection<PartValues>(reader, inner.map, at, `part:${kind}`, options);
    into.push({ address: { value: item.key, path: at }, values });
  }
}

function notAddress(reader: Reader, item: Entry, path: SpecPath): void {
  const message = `${item.key} is no address; a part is named by kind and name, as in end-cap.left`;
  reader.problems.push(
    makeProblem('value-not-understood', message, item.keySpan, { data: { key: item.key, path } }),
  );
}

function readAdded(reader: Reader, entry: Entry, path: SpecPath, into: AddedPart[]): void {
  const items = listOf(reader, entry, path, '- { shim: left, length: 0.1, after: end-cap.left }');
  for (const [i, node] of items.entries()) {
    const at = [...path, i];
    const map = itemMap(reader, node, stackKinds, 'shim');
    if (!map) continue;
    const entries = entriesOf(reader, map, at);
    const head = itemHead<StackKind>(reader, entries, stackKinds, 'part:end-cap', 'spacer', at);
    if (!head) continue;
    const part = partOf(reader, entries, map, head, at, 'added');
    const { after = null, before = null } = part.values as {
      after?: Placed<string>;
      before?: Placed<string>;
    };
    into.push({ part, after, before });
  }
}

function readRemoved(reader: Reader, entry: Entry, path: SpecPath, into: Placed<string>[]): void {
  if (entry.written !== null) {
    into.push({ value: entry.written.trim(), path });
    return;
  }
  for (const [i, node] of listOf(reader, entry, path, '[washer.left]').entries()) {
    const scalar = asScalar(node);
    if (scalar) into.push({ value: writtenOf(reader.yaml, scalar).trim(), path: [...path, i] });
  }
}

/** The items of a list; a problem where something else stands. */
export function listOf(reader: Reader, entry: Entry, path: SpecPath, example: string): readonly unknown[] {
  if (isSeq(entry.value)) return entry.value.items;
  if (isEmpty(entry.value)) return [];
  const here = entry.written === null ? 'keys stand here' : `${entry.written.split('\n')[0]} stands here`;
  const message = `${entry.key} is a list, each item on its own line with a dash, such as ${example}; ${here}`;
  reader.problems.push(
    makeProblem('value-not-understood', message, entry.keySpan, { data: { key: entry.key, path } }),
  );
  return [];
}
