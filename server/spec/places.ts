import { isMap, isPair, isScalar, isSeq, type Pair } from 'yaml';
import { commaValue } from './comma-value.ts';
import type { SpanPart } from './document.ts';
import type { Span, SpecPath } from './place.ts';
import { isEmpty, keyOf, nodeSpan, pairOf, type YamlText } from './yaml-text.ts';

/** Where paths stand in a text; worked out when asked, never ahead. */
export interface Places {
  span(path: SpecPath, part?: SpanPart): Span;
  has(path: SpecPath): boolean;
  pathAt(offset: number): { readonly path: SpecPath; readonly part: 'key' | 'value' } | null;
}

/** What stands at a path: a pair of a mapping, or an item of a list. */
export interface Found {
  readonly pair: Pair<unknown, unknown> | null;
  readonly node: unknown;
  /** The mapping or list it stands in. */
  readonly parent: unknown;
}

export function placesOf(yaml: YamlText): Places {
  return {
    span: (path, part = 'value') => spanAt(yaml, path, part),
    has: (path) => findPath(yaml, path).left === 0,
    pathAt: (offset) => pathAt(yaml, offset),
  };
}

/** The deepest thing written on the way to the path, and how many steps were left. */
export function findPath(yaml: YamlText, path: SpecPath): { readonly found: Found; readonly left: number } {
  let found: Found = { pair: null, node: yaml.root, parent: null };
  for (let i = 0; i < path.length; i++) {
    const step = path[i];
    const node = found.node;
    if (isMap(node)) {
      const pair = pairOf(node, String(step));
      if (!pair) return { found, left: path.length - i };
      found = { pair, node: pair.value, parent: node };
    } else if (isSeq(node) && typeof step === 'number') {
      const item = node.items[step];
      if (item === undefined) return { found, left: path.length - i };
      found = { pair: null, node: item, parent: node };
    } else return { found, left: path.length - i };
  }
  return { found, left: 0 };
}

function spanAt(yaml: YamlText, path: SpecPath, part: SpanPart): Span {
  const { found, left } = findPath(yaml, path);
  if (left === 0 && part === 'value' && !isEmpty(found.node)) {
    const span = valueSpan(yaml, found);
    if (span && !hasBreak(yaml.text, span)) return span;
    if (span && isScalar(found.node)) return firstLine(yaml.text, span);
  }
  if (part === 'whole') {
    const key = nodeSpan(yaml, found.pair?.key);
    const value = nodeSpan(yaml, found.node);
    if (key || value) {
      const end = found.pair ? pairEnd(yaml, found.pair) : contentEnd(yaml, found.node);
      return { start: (key ?? value)?.start ?? 0, end: end ?? (value ?? key)?.end ?? 0 };
    }
  }
  return headSpan(yaml, found);
}

/** A value, with the figures after a decimal comma in braces. */
function valueSpan(yaml: YamlText, found: Found): Span | null {
  const span = nodeSpan(yaml, found.node);
  if (!span || yaml.text[span.end] !== ',' || !isMap(found.parent) || !found.pair) return span;
  const comma = commaValue(yaml, found.parent, found.parent.items.indexOf(found.pair));
  return comma ? { start: span.start, end: comma.end } : span;
}

/** A key; for an item of a list its first key with what stands beside it. */
function headSpan(yaml: YamlText, found: Found): Span {
  const key = nodeSpan(yaml, found.pair?.key);
  if (key) return firstLine(yaml.text, key);
  const { node } = found;
  if (node === yaml.root) return rootHead(yaml);
  if (isMap(node)) {
    const first = node.items[0];
    const start = nodeSpan(yaml, first?.key);
    if (start) {
      const value = isScalar(first?.value) && !isEmpty(first.value) ? nodeSpan(yaml, first.value) : null;
      return firstLine(yaml.text, { start: start.start, end: value?.end ?? start.end });
    }
  }
  const span = nodeSpan(yaml, node);
  return span ? firstLine(yaml.text, span) : rootHead(yaml);
}

/** The first line of the file that says something. */
function rootHead(yaml: YamlText): Span {
  const first = isMap(yaml.root) ? nodeSpan(yaml, yaml.root.items[0]?.key) : nodeSpan(yaml, yaml.root);
  const start = first?.start ?? (yaml.text.charCodeAt(0) === 0xfeff ? 1 : 0);
  return firstLine(yaml.text, { start, end: yaml.text.length });
}

function hasBreak(text: string, span: Span): boolean {
  for (let i = span.start; i < span.end; i++) {
    const c = text.charCodeAt(i);
    if (c === 10 || c === 13) return true;
  }
  return false;
}

function firstLine(text: string, span: Span): Span {
  let end = span.start;
  while (end < span.end && text.charCodeAt(end) !== 10 && text.charCodeAt(end) !== 13) end++;
  while (span.start < end && /[ \t]/.test(text[end - 1] ?? '')) end--;
  return { start: span.start, end };
}

/** Where the text of a node ends, blanks and comments after it not counted; null where nothing is written. */
export function contentEnd(yaml: YamlText, node: unknown): number | null {
  const span = isEmpty(node) ? null : nodeSpan(yaml, node);
  if (!span) return null;
  if ((isMap(node) || isSeq(node)) && !node.flow) {
    const last = node.items.at(-1);
    if (isPair(last)) return pairEnd(yaml, last);
    return last === undefined ? span.end : (contentEnd(yaml, last) ?? span.start + 1);
  }
  if (!isScalar(node)) return span.end;
  return span.start + yaml.text.slice(span.start, span.end).trimEnd().length;
}

/** Where a pair ends: its value, or the colon of an empty one. */
export function pairEnd(yaml: YamlText, pair: Pair<unknown, unknown>): number {
  const end = contentEnd(yaml, pair.value);
  if (end !== null) return end;
  const key = nodeSpan(yaml, pair.key)?.end ?? 0;
  const colon = /^[ \t]*:/.exec(yaml.text.slice(key, key + 200));
  return key + (colon?.[0].length ?? 0);
}

function pathAt(yaml: YamlText, offset: number): ReturnType<Places['pathAt']> {
  const path: (string | number)[] = [];
  let part: 'key' | 'value' | null = null;
  let node: unknown = yaml.root;
  for (let depth = 0; depth < 100; depth++) {
    const into: { step: string | number; part: 'key' | 'value'; node: unknown } | null = isMap(node)
      ? pairAt(yaml, node.items, offset)
      : isSeq(node)
        ? itemAt(yaml, node.items, offset)
        : null;
    if (!into) break;
    path.push(into.step);
    part = into.part;
    if (part === 'key') break;
    node = into.node;
  }
  return part === null ? null : { path, part };
}

function pairAt(yaml: YamlText, pairs: readonly Pair<unknown, unknown>[], offset: number) {
  for (let i = pairs.length - 1; 0 <= i; i--) {
    const pair = pairs[i];
    const step = pair ? keyOf(pair) : null;
    const key = nodeSpan(yaml, pair?.key);
    if (!pair || step === null || !key || offset < key.start) continue;
    if (offset <= key.end) return { step, part: 'key' as const, node: pair.value };
    return holds(yaml, pair.value, offset) ? { step, part: 'value' as const, node: pair.value } : null;
  }
  return null;
}

function itemAt(yaml: YamlText, items: readonly unknown[], offset: number) {
  for (let i = items.length - 1; 0 <= i; i--) {
    const span = nodeSpan(yaml, items[i]);
    if (!span || offset < span.start) continue;
    return holds(yaml, items[i], offset) ? { step: i, part: 'value' as const, node: items[i] } : null;
  }
  return null;
}

/** A block's range runs into the blank after it: only its text counts. */
function holds(yaml: YamlText, node: unknown, offset: number): boolean {
  const start = nodeSpan(yaml, node)?.start;
  if (start === undefined || offset < start) return false;
  return offset <= Math.max(start, contentEnd(yaml, node) ?? start);
}
