import { isMap, isScalar, isSeq, type Node, Pair, parseDocument, Scalar, YAMLMap, YAMLSeq } from 'yaml';
import { entriesWithin, sectionsOf, type TextPart } from './text-parts.ts';
import { parseOptions } from './yaml-text.ts';

/*
 * Most of a long text stays as it is from one key to the next. It is parsed section by section, a long section entry by
 * entry, and what was parsed before is taken again. Nodes are never changed: one that has moved is copied to its place.
 */

/** Texts and sections shorter than this are parsed whole. */
const short = { text: 3_000, section: 1_200 };

interface Parsed {
  /** The text it was parsed from, held apart from the file it stood in. */
  readonly text: string;
  /** Where its first character stood in the file. */
  readonly start: number;
  readonly root: YAMLMap<unknown, unknown> | YAMLSeq<unknown>;
}

/** Parts parsed lately, the oldest first: nothing but a shorter way to the same tree. */
const parsed = new Map<string, Parsed>();
let held = 0;

/** The tree of a text without faults; null where it is short, or has to be parsed whole. */
export function parseInParts(text: string): YAMLMap<unknown, unknown> | null {
  // References reach from one part into another.
  if (text.length < short.text || /[&*!]/.test(text)) return null;
  const sections = sectionsOf(text);
  if (!sections) return null;
  const root = new YAMLMap<unknown, unknown>();
  for (const section of sections) {
    const pair = sectionPair(text, section);
    if (!pair) return null;
    root.items.push(pair);
  }
  root.range = [sections[0]?.start ?? 0, text.length, text.length];
  forget(2 * text.length);
  return root;
}

function sectionPair(text: string, section: TextPart): Pair<unknown, unknown> | null {
  const entries = short.section <= section.end - section.start ? entriesWithin(text, section) : null;
  if (!entries) return pairIn(part(text, section));
  const head = pairIn(part(text, { start: section.start, end: entries[0]?.start ?? section.end }));
  const values = entries.map((entry) => part(text, entry));
  const [first] = values;
  if (!head || !first) return null;
  const value = isMap(first) ? new YAMLMap<unknown, unknown>() : new YAMLSeq<unknown>();
  for (const root of values) {
    if (root === null || isMap(root) !== isMap(first) || root.items.length !== 1) return null;
    value.items.push(root.items[0] as never);
  }
  const end = values.at(-1)?.range?.[1] ?? section.end;
  value.range = [first.range?.[0] ?? section.start, end, end];
  return new Pair<unknown, unknown>(head.key, value);
}

function pairIn(root: Parsed['root'] | null): Pair<unknown, unknown> | null {
  return isMap(root) && root.items.length === 1 ? (root.items[0] ?? null) : null;
}

/** One part at its place; null where anything is wrong with it. */
function part(text: string, { start, end }: TextPart): Parsed['root'] | null {
  const known = parsed.get(text.slice(start, end));
  if (known) {
    // Taken again it is the youngest.
    parsed.delete(known.text);
    const root = known.start === start ? known.root : moved(known.root, start - known.start);
    parsed.set(known.text, { ...known, start, root });
    return root;
  }
  const own = apart(text.slice(start, end));
  const { contents, errors, warnings } = parseDocument(own, parseOptions);
  if (errors.length > 0 || warnings.length > 0 || !(isMap(contents) || isSeq(contents))) return null;
  const root = moved(contents as Parsed['root'], start);
  parsed.set(own, { text: own, start, root });
  held += own.length;
  return root;
}

/** A copy that does not keep the whole file's text in memory. */
const apart = (text: string): string => JSON.parse(JSON.stringify(text)) as string;

function forget(most: number): void {
  for (const [text] of parsed) {
    if (held <= most) return;
    parsed.delete(text);
    held -= text.length;
  }
}

/** A node with everything in it, further down the text. */
function moved<T>(node: T, by: number): T {
  if (by === 0) return node;
  return copied(node, by) as T;
}

function copied(node: unknown, by: number): unknown {
  if (isScalar(node)) {
    const copy = new Scalar(node.value);
    if (node.type) copy.type = node.type;
    return placed(copy, node, by);
  }
  if (isMap(node)) {
    const copy = new YAMLMap<unknown, unknown>();
    if (node.flow) copy.flow = true;
    copy.items = node.items.map(({ key, value }) => new Pair(copied(key, by), copied(value, by)));
    return placed(copy, node, by);
  }
  if (isSeq(node)) {
    const copy = new YAMLSeq<unknown>();
    if (node.flow) copy.flow = true;
    copy.items = node.items.map((item) => copied(item, by));
    return placed(copy, node, by);
  }
  return node;
}

function placed<T extends Node>(copy: T, { range }: Node, by: number): T {
  if (range) copy.range = [range[0] + by, range[1] + by, range[2] + by];
  return copy;
}
