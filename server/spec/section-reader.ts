import { isAlias, isMap, isScalar, isSeq, type Pair, type YAMLMap } from 'yaml';
import { commaValue } from './comma-value.ts';
import { lineOf } from './lines.ts';
import { makeProblem, replaceFix } from './make-problem.ts';
import { missingKey } from './missing-key.ts';
import type { Fields, Placed, Span, SpecPath } from './place.ts';
import type { Fix, Problem } from './problem.ts';
import { type KeyEntry, keyEntries } from './schema/catalogue.ts';
import type { SectionId } from './schema/key-info.ts';
import { unknownKey } from './unknown-key.ts';
import type { ValueProblem } from './value-problem.ts';
import {
  asMap,
  asScalar,
  isBroken,
  isEmpty,
  keyOf,
  nodeSpan,
  writtenOf,
  type YamlText,
} from './yaml-text.ts';

/** A text being read: what was met on the way is added to `problems`. */
export interface Reader {
  readonly yaml: YamlText;
  readonly problems: Problem[];
}

/** A key of a mapping as the readers see it. */
export interface Entry {
  readonly key: string;
  readonly keySpan: Span;
  readonly value: unknown;
  /** The written value of a scalar; null for anything else. */
  readonly written: string | null;
  readonly valueSpan: Span | null;
}

/** What a section's reading needs to know beside its node. */
export interface SectionOptions {
  /** Keys read elsewhere, and never unknown here. */
  readonly skip?: readonly string[];
  /** A second set of keys taken here too. */
  readonly also?: SectionId;
  /** Where a missing key is reported; by default the head of the section. */
  readonly head?: Span;
  /** In a change of another part no key is required. */
  readonly partial?: boolean;
  /** The kind was a guess: its keys are read where known and not complained of. */
  readonly lenient?: boolean;
}

/** The entries of a mapping in order, doubled keys reported and left out. */
export function entriesOf(reader: Reader, map: YAMLMap<unknown, unknown>, path: SpecPath): Entry[] {
  const entries: Entry[] = [];
  const seen = new Map<string, Entry>();
  for (let i = 0; i < map.items.length; i++) {
    const pair = map.items[i];
    const key = pair ? keyOf(pair) : null;
    if (!pair || key === null || (key === '' && isEmpty(pair.value))) continue;
    const entry = entryOf(reader, pair, key);
    const comma = commaValue(reader.yaml, map, i);
    const whole = comma ? joined(reader, entry, comma.end) : entry;
    i += comma?.count ?? 0;
    const first = seen.get(key);
    if (first) {
      reader.problems.push(duplicateKey(reader, whole, first, path));
      continue;
    }
    seen.set(key, whole);
    entries.push(whole);
  }
  return entries;
}

function entryOf(reader: Reader, pair: Pair<unknown, unknown>, key: string): Entry {
  const scalar = asScalar(pair.value);
  let keySpan: Span | null = null;
  let valueSpan: Span | null | undefined;
  return {
    key,
    get keySpan() {
      keySpan ??= nodeSpan(reader.yaml, pair.key) ?? { start: 0, end: 0 };
      return keySpan;
    },
    value: pair.value,
    written: scalar ? writtenOf(reader.yaml, scalar) : null,
    get valueSpan() {
      if (valueSpan === undefined) valueSpan = nodeSpan(reader.yaml, pair.value);
      return valueSpan;
    },
  };
}

function joined(reader: Reader, entry: Entry, end: number): Entry {
  const start = entry.valueSpan?.start ?? entry.keySpan.end;
  return {
    key: entry.key,
    keySpan: entry.keySpan,
    value: entry.value,
    written: reader.yaml.text.slice(start, end),
    valueSpan: { start, end },
  };
}

/** A mapping read by its section's schema: every value understood, the problems of the rest reported. */
export function readSection<V>(
  reader: Reader,
  map: YAMLMap<unknown, unknown> | null,
  path: SpecPath,
  section: SectionId,
  options: SectionOptions = {},
): Fields<V> {
  const entries = map ? entriesOf(reader, map, path) : [];
  return readEntries(reader, entries, map, path, section, options);
}

export function readEntries<V>(
  reader: Reader,
  entries: readonly Entry[],
  map: YAMLMap<unknown, unknown> | null,
  path: SpecPath,
  section: SectionId,
  options: SectionOptions = {},
): Fields<V> {
  const known = keyEntries(section);
  const also = options.also ? keyEntries(options.also) : null;
  const values: Record<string, Placed<unknown>> = {};
  const meant = new Set<string>();
  for (const entry of entries) {
    if (options.skip?.includes(entry.key)) continue;
    const schema = known.get(entry.key) ?? also?.get(entry.key);
    if (!schema) {
      if (options.lenient) continue;
      const suggestion = unknownKey(reader, entry, entries, path, section, options.also ?? null);
      if (suggestion) meant.add(suggestion);
      continue;
    }
    if (schema.info.section !== null) continue;
    const read = readValue(reader, entry, schema, [...path, entry.key]);
    if (read) values[entry.key] = read;
  }
  if (options.partial !== true && options.lenient !== true) {
    for (const { info } of known.values()) {
      if (!info.required || meant.has(info.key) || entries.some((e) => e.key === info.key)) continue;
      missingKey(reader, { info, entries, map, path, section, head: options.head });
    }
  }
  return values as Fields<V>;
}

/** One value by its key's schema; null, with the problem reported, where it is not understood. */
export function readValue<T>(
  reader: Reader,
  entry: Entry,
  schema: KeyEntry,
  path: SpecPath,
): Placed<T> | null {
  const { info } = schema;
  if (entry.written === null) {
    if (isAlias(entry.value)) return null;
    if (isEmpty(entry.value)) emptyValue(reader, entry, schema, path);
    else {
      const what = isSeq(entry.value) ? 'a list' : 'a section with keys of its own';
      const message = `${entry.key} is one value${example(schema)}; ${what} stands here`;
      reader.problems.push(
        makeProblem('value-not-understood', message, entry.keySpan, { data: { key: entry.key, path } }),
      );
    }
    return null;
  }
  const result = schema.schema.safeParse(entry.written);
  if (result.success) return { value: result.data as T, path };
  const issue = result.error.issues[0];
  const params = issue && 'params' in issue ? (issue.params as { problem?: ValueProblem }) : null;
  if (params?.problem)
    reader.problems.push(valueProblem(reader, entry, params.problem, { path, type: info.type }));
  return null;
}

/** A problem of a written value, put at its place in the text. */
export function valueProblem(
  reader: Reader,
  entry: Entry,
  problem: ValueProblem,
  data: Readonly<Record<string, unknown>>,
): Problem {
  const span = entry.valueSpan ?? entry.keySpan;
  const text = reader.yaml.text.slice(span.start, span.end);
  const plain = text === entry.written;
  const quoted =
    !plain && text.length === (entry.written?.length ?? 0) + 2 && text.slice(1, -1) === entry.written;
  const shift = span.start + (quoted ? 1 : 0);
  const [start, end] = problem.at;
  const at =
    (plain || quoted) && start < end
      ? { start: shift + start, end: shift + end }
      : withinLine(reader.yaml.text, span);
  const fixes: Fix[] = [];
  if (problem.suggestion !== undefined && (plain || quoted)) {
    const inner = quoted ? { start: span.start + 1, end: span.end - 1 } : span;
    fixes.push(replaceFix(`Write ${problem.suggestion}`, inner, problem.suggestion));
  }
  const suggestion = problem.suggestion === undefined ? {} : { suggestion: problem.suggestion };
  const message = `${entry.key}: ${problem.message}`;
  return makeProblem(problem.code, message, at, {
    data: { key: entry.key, written: entry.written, ...suggestion, ...data },
    fixes,
  });
}

function withinLine(text: string, span: Span): Span {
  const line = text.slice(span.start, span.end).search(/[\r\n]/);
  return line < 0 ? span : { start: span.start, end: span.start + line };
}

function emptyValue(reader: Reader, entry: Entry, schema: KeyEntry, path: SpecPath): void {
  if (schema.info.type === 'text') return;
  if (isBroken(reader.yaml, entry.keySpan)) return;
  const message = `${entry.key} has no value yet${example(schema)}`;
  const code = schema.info.required ? 'missing-key' : 'value-not-understood';
  reader.problems.push(
    makeProblem(code, message, entry.keySpan, { data: { key: entry.key, path, empty: true } }),
  );
}

const example = (schema: KeyEntry): string =>
  schema.info.examples[0] === undefined ? '' : `, such as ${schema.info.examples[0]}`;

function duplicateKey(reader: Reader, second: Entry, first: Entry, path: SpecPath): Problem {
  const message = `${second.key} stands twice here; the first is read: remove or rename this one`;
  const { text } = reader.yaml;
  const lineStart = lineOf(text, second.keySpan.start).start;
  const valueEnd = second.valueSpan?.end ?? second.keySpan.end;
  const alone = text.slice(lineStart, second.keySpan.start).trim() === '';
  const fixes: Fix[] = [];
  if (alone && isScalar(second.value) && !/[\r\n]/.test(text.slice(lineStart, valueEnd))) {
    const rest = /^[^\r\n]*(?:\r\n|\r|\n)?/.exec(text.slice(valueEnd))?.[0] ?? '';
    if (/^\s*$/.test(rest)) {
      const span = { start: lineStart, end: valueEnd + rest.length };
      fixes.push({ title: `Remove the second ${second.key}`, changes: [{ span, text: '' }] });
    }
  }
  return makeProblem('duplicate-key', message, second.keySpan, {
    related: [{ span: first.keySpan, message: `the first ${second.key}` }],
    data: { key: second.key, path },
    fixes,
  });
}

/** The mapping an entry opens: null with a problem where something else stands; an empty value is an empty section. */
export function sectionMap(
  reader: Reader,
  entry: Entry,
  path: SpecPath,
  wanted: string,
): { readonly map: YAMLMap<unknown, unknown> | null; readonly ok: boolean } {
  const map = asMap(entry.value);
  if (map || isEmpty(entry.value)) return { map, ok: true };
  if (!isAlias(entry.value)) reader.problems.push(notSection(entry, path, wanted));
  return { map: null, ok: false };
}

function notSection(entry: Entry, path: SpecPath, wanted: string): Problem {
  const here = entry.written ?? (isMap(entry.value) ? 'a section' : 'a list');
  const message = `${entry.key} wants ${wanted}; here stands ${here}`;
  const span =
    entry.written !== null && !/[\r\n]/.test(entry.written)
      ? (entry.valueSpan ?? entry.keySpan)
      : entry.keySpan;
  return makeProblem('value-not-understood', message, span, { data: { key: entry.key, path } });
}
