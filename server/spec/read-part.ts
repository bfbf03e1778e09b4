import { isAlias, type YAMLMap } from 'yaml';
import { makeProblem } from './make-problem.ts';
import { type PartValues, type StackKind, type StackPart, stackKinds } from './model.ts';
import { nearestOf } from './nearest.ts';
import type { SpecPath } from './place.ts';
import { keyEntries } from './schema/catalogue.ts';
import type { SectionId } from './schema/key-info.ts';
import { type Entry, entriesOf, type Reader, readEntries } from './section-reader.ts';
import { asMap, isBroken, isEmpty, keyOf, nodeSpan } from './yaml-text.ts';

const kindAliases: Readonly<Record<string, string>> = {
  endcap: 'end-cap',
  cap: 'end-cap',
  sleeve: 'spacer',
  tube: 'spacer',
  shoulder: 'collar',
  nut: 'locknut',
  spring: 'wave-washer',
  gasket: 'seal',
};

const aliasOf = (word: string): string | undefined =>
  Object.hasOwn(kindAliases, word.toLowerCase()) ? kindAliases[word.toLowerCase()] : undefined;

/** The kind and the name an item of a list begins with. */
export interface ItemHead<K extends string> {
  readonly kind: K;
  readonly name: string;
  /** The entry that named it; null for a kind that was left out. */
  readonly entry: Entry;
  /** The kind was not known and stands for what was written. */
  readonly guessed: boolean;
}

/** A part of the stack, or null where the item says too little to be one. */
export function readPart(reader: Reader, node: unknown, path: SpecPath): StackPart | null {
  const map = itemMap(reader, node, stackKinds, 'spacer');
  if (!map) return null;
  const entries = entriesOf(reader, map, path);
  const head = itemHead(reader, entries, stackKinds, 'part:end-cap', 'spacer', path);
  return head ? partOf(reader, entries, map, head, path) : null;
}

/** The rest of a part once its kind is known. */
export function partOf(
  reader: Reader,
  entries: readonly Entry[],
  map: YAMLMap<unknown, unknown>,
  head: ItemHead<StackKind>,
  path: SpecPath,
  also?: SectionId,
): StackPart {
  const section: SectionId = `part:${head.kind}`;
  // From a kind that lacks its dash on, the keys are another part's.
  const stray = entries.findIndex(
    (e) => e !== head.entry && (stackKinds as readonly string[]).includes(e.key),
  );
  const own = stray < 0 ? entries : entries.slice(0, stray + 1);
  const rest = own.filter((entry) => entry !== head.entry);
  const options = { head: head.entry.keySpan, lenient: head.guessed };
  const values = readEntries<PartValues>(
    reader,
    rest,
    map,
    path,
    section,
    also ? { ...options, also } : options,
  );
  return { kind: head.kind, name: head.name, address: `${head.kind}.${head.name}`, path, values };
}

/** An item as a mapping; anything half-typed is passed over or told what is missing. */
export function itemMap(
  reader: Reader,
  node: unknown,
  kinds: readonly string[],
  example: string,
): YAMLMap<unknown, unknown> | null {
  const map = asMap(node);
  if (map) return map;
  if (isEmpty(node) || isAlias(node)) return null;
  const span = nodeSpan(reader.yaml, node);
  if (!span || reader.yaml.broken.some((b) => b.start <= span.end && span.start <= b.end)) return null;
  const text = reader.yaml.text.slice(span.start, span.end).split(/[\r\n]/)[0] ?? '';
  const kind = kinds.find((k) => k === text) ?? nearestOf(text, kinds);
  const wanted = kind ? `${kind}: left` : `${example}: left`;
  const message = `${text} names no part: an item begins with what it is and its name, as in - ${wanted}`;
  const at = { start: span.start, end: span.start + text.length };
  reader.problems.push(
    makeProblem('unknown-kind', message, at, {
      fixes: kind
        ? [
            {
              title: `Write ${kind}: and a name`,
              changes: [{ span: at, text: `${kind}: $0` }],
              snippet: true,
              preferred: true,
            },
          ]
        : [],
    }),
  );
  return null;
}

/** Finds the entry that says what an item is; an unknown kind gets one finding and its nearest kind. */
export function itemHead<K extends string>(
  reader: Reader,
  entries: readonly Entry[],
  kinds: readonly K[],
  usual: SectionId,
  fallback: K,
  path: SpecPath,
): ItemHead<K> | null {
  const named = entries.find((entry) => (kinds as readonly string[]).includes(entry.key));
  if (named) return { kind: named.key as K, name: nameOf(reader, named, path), entry: named, guessed: false };
  const first = entries[0];
  if (!first) return null;
  const group = usual.split(':')[0];
  const nothing = { kind: fallback, name: '', entry: first, guessed: true } as const;
  const nearOf = (entry: Entry): K | null =>
    (kinds.find((k) => k === aliasOf(entry.key)) ??
      nearestOf(entry.key.replace(/[_\s]/g, '-'), kinds)) as K | null;
  const isKey = (key: string) => kinds.some((k) => keyEntries(`${group}:${k}` as SectionId).has(key));
  const likely = entries.find((entry) => !isKey(entry.key) && nearOf(entry) !== null) ?? first;
  const near = nearOf(likely);
  if (isKey(likely.key)) {
    const message = `this item does not say what it is; it begins with its kind and name, as in - ${fallback}: left`;
    reader.problems.push(makeProblem('unknown-kind', message, first.keySpan, { data: { path, kinds } }));
    return { ...nothing, entry: { ...first, key: '' } };
  }
  const list = kinds.length <= 8 ? kinds.join(', ') : `${kinds.slice(0, 8).join(', ')} …`;
  const message = near
    ? `${likely.key} is no kind of part; nearest is ${near}`
    : `${likely.key} is no kind of part; the kinds are ${list}`;
  const fixes = near
    ? [
        {
          title: `Write ${near} for ${likely.key}`,
          changes: [{ span: likely.keySpan, text: near }],
          preferred: true,
        },
      ]
    : [];
  reader.problems.push(
    makeProblem('unknown-kind', message, likely.keySpan, {
      data: near ? { kind: likely.key, suggestion: near, path } : { kind: likely.key, path },
      fixes,
    }),
  );
  return { kind: near ?? fallback, name: likely.written ?? '', entry: likely, guessed: near === null };
}

function nameOf(reader: Reader, entry: Entry, path: SpecPath): string {
  const name = entry.written?.trim() ?? '';
  if (name !== '') return name;
  if (isAlias(entry.value) || isBroken(reader.yaml, entry.keySpan)) return '';
  const message = `${entry.key} has no name yet, such as ${entry.key}: left; its name is its address in the file`;
  reader.problems.push(
    makeProblem('value-not-understood', message, entry.keySpan, { data: { key: entry.key, path } }),
  );
  return '';
}

/** The key that names an item, from the node alone. */
export const firstKey = (node: unknown): string | null => {
  const pair = asMap(node)?.items[0];
  return pair ? keyOf(pair) : null;
};
