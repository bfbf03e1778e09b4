import { isMap, isScalar, isSeq, type YAMLSeq } from 'yaml';
import type { SpecDocument } from './document.ts';
import {
  afterColon,
  columnOf,
  commentLines,
  indentStep,
  insertion,
  isFlow,
  plainOrQuoted,
  removeFromFlow,
  removeLines,
} from './edit-text.ts';
import { lineOf, newlineOf, nextLine } from './lines.ts';
import type { Span, SpecPath } from './place.ts';
import { contentEnd, findPath, pairEnd } from './places.ts';
import type { TextChange } from './problem.ts';
import { treeOf } from './spec-document.ts';
import { isEmpty, nodeSpan, pairOf, type YamlText } from './yaml-text.ts';

/*
 * Changes of the text that touch what they must and nothing else: comments, order, indentation and line endings stay.
 * Every function gives no change where it cannot do what is asked.
 */

/** Writes another value at a path; a key that is not there yet is added. Quotes around the old value stay. */
export function setValue(doc: SpecDocument, path: SpecPath, text: string): TextChange[] {
  const yaml = treeOf(doc);
  if (!yaml) return [];
  const { found, left } = findPath(yaml, path);
  if (0 < left) {
    const key = path.at(-1);
    return typeof key === 'string' ? insertKey(doc, path.slice(0, -1), key, text) : [];
  }
  if (isMap(found.node) || isSeq(found.node)) return [];
  const inFlow = isFlow(yaml, path);
  if (isEmpty(found.node)) {
    const at = found.pair ? afterColon(yaml, found.pair) : null;
    return at === null ? [] : [{ span: { start: at, end: at }, text: ` ${plainOrQuoted(text, inFlow)}` }];
  }
  if (!isScalar(found.node)) return [];
  const span = doc.span(path, 'value');
  const whole = nodeSpan(yaml, found.node);
  const { type } = found.node;
  if (!whole) return [];
  if (type === 'QUOTE_DOUBLE') return [{ span: whole, text: `"${text.replace(/[\\"]/g, '\\$&')}"` }];
  if (type === 'QUOTE_SINGLE') return [{ span: whole, text: `'${text.replaceAll("'", "''")}'` }];
  if (type !== 'PLAIN') {
    const end = contentEnd(yaml, found.node) ?? whole.end;
    return [{ span: { start: whole.start, end }, text: plainOrQuoted(text, inFlow) }];
  }
  const start = Math.min(span.start, whole.start);
  return [{ span: { start, end: Math.max(span.end, whole.end) }, text: plainOrQuoted(text, inFlow) }];
}

/** Adds a key to the section at a path, after the key named or at its end; sections on the way are made. */
export function insertKey(
  doc: SpecDocument,
  section: SpecPath,
  key: string,
  valueText: string,
  options: { readonly after?: string } = {},
): TextChange[] {
  const yaml = treeOf(doc);
  if (!yaml) return [];
  const { found, left } = findPath(yaml, section);
  if (0 < left) return insertSection(doc, section, left, key, valueText);
  const { text } = doc;
  const newline = newlineOf(text);
  const pair = valueText === '' ? `${key}:` : `${key}: ${valueText}`;
  if (isMap(found.node) && 0 < found.node.items.length) {
    const map = found.node;
    const after = (options.after === undefined ? null : pairOf(map, options.after)) ?? map.items.at(-1);
    if (!after) return [];
    const end = pairEnd(yaml, after);
    if (map.flow) return [insertion(end, `, ${pair}`)];
    const at = lineOf(text, end).end;
    return [insertion(at, `${newline}${' '.repeat(columnOf(yaml, map))}${pair}`)];
  }
  if (isMap(found.node)) {
    const span = nodeSpan(yaml, found.node);
    return span ? [{ span, text: `{ ${pair} }` }] : [];
  }
  if (!isEmpty(found.node) || isSeq(found.node)) return [];
  if (!found.pair) {
    if (section.length !== 0) return [];
    const start = text.length;
    const separate = text.trim() === '' || /[\r\n]$/.test(text) ? '' : newline;
    return [insertion(start, `${separate}${pair}${newline}`)];
  }
  const colon = afterColon(yaml, found.pair);
  if (colon === null) return [];
  if (isFlow(yaml, section)) return [insertion(colon, ` { ${pair} }`)];
  const keySpan = nodeSpan(yaml, found.pair.key);
  const column = keySpan ? keySpan.start - lineOf(text, keySpan.start).start : 0;
  return [insertion(lineOf(text, colon).end, `${newline}${' '.repeat(column + indentStep(yaml))}${pair}`)];
}

/** Takes a key and its value out; comments that stood with them stay as lines of their own. */
export function removeKey(doc: SpecDocument, path: SpecPath): TextChange[] {
  const yaml = treeOf(doc);
  if (!yaml) return [];
  const { found, left } = findPath(yaml, path);
  if (0 < left || !found.pair || !isMap(found.parent)) return [];
  const map = found.parent;
  const index = map.items.indexOf(found.pair);
  const start = nodeSpan(yaml, found.pair.key)?.start;
  if (start === undefined) return [];
  const end = pairEnd(yaml, found.pair);
  if (map.flow) return [removeFromFlow(yaml, map.items, index, { start, end })];
  const line = lineOf(doc.text, start);
  const before = doc.text.slice(line.start, start);
  if (before.trim() === '') return [removeLines(doc.text, { start: line.start, end }, before)];
  // The first key of an item: the next key moves up behind the dash.
  const next = index === 0 ? nodeSpan(yaml, map.items[1]?.key) : null;
  if (!next || next.start < end) return [];
  const kept = commentLines(doc.text, { start, end: next.start }, ' '.repeat(start - line.start));
  return [
    {
      span: { start, end: next.start },
      text:
        kept.length === 0
          ? ''
          : `${kept.join(newlineOf(doc.text)).trimStart()}${newlineOf(doc.text)}${' '.repeat(start - line.start)}`,
    },
  ];
}

/** Gives the key at a path another name. */
export function renameKey(doc: SpecDocument, path: SpecPath, key: string): TextChange[] {
  const yaml = treeOf(doc);
  if (!yaml) return [];
  const { found, left } = findPath(yaml, path);
  const span = left === 0 ? nodeSpan(yaml, found.pair?.key) : null;
  return span ? [{ span, text: key }] : [];
}

/** Puts `# allow CODE because REASON` on the line above what stands at a path. */
export function allowLine(doc: SpecDocument, path: SpecPath, code: string, reason: string): TextChange[] {
  const { text } = doc;
  if (text.trim() === '') return [];
  const line = lineOf(text, doc.span(path, 'key').start);
  const bom = text.charCodeAt(line.start) === 0xfeff ? 1 : 0;
  const indent = /^[ \t]*/.exec(text.slice(line.start + bom, line.end))?.[0] ?? '';
  return [insertion(line.start + bom, `${indent}# allow ${code} because ${reason}${newlineOf(text)}`)];
}

/** Takes an item out of a list; comments that stood in it stay as lines of their own, those above it where they are. */
export function removeItem(doc: SpecDocument, path: SpecPath): TextChange[] {
  const found = itemAt(doc, path);
  if (!found) return [];
  const { yaml, list, index, span } = found;
  if (list.flow) return [removeFromFlow(yaml, list.items, index, span)];
  const line = lineOf(doc.text, span.start);
  return [
    removeLines(doc.text, { start: line.start, end: span.end }, doc.text.slice(line.start, span.start)),
  ];
}

/** Puts an item before the one at `index`, or at the end. The lines are the item's, without dash and indentation. */
export function insertItem(
  doc: SpecDocument,
  path: SpecPath,
  index: number,
  lines: readonly string[],
): TextChange[] {
  const yaml = treeOf(doc);
  if (!yaml) return [];
  const { found, left } = findPath(yaml, path);
  if (0 < left) return [];
  const { text } = doc;
  const newline = newlineOf(text);
  const inline = 1 < lines.length || lines[0]?.includes(': ') ? `{ ${lines.join(', ')} }` : (lines[0] ?? '');
  const list = found.node;
  if (isSeq(list) && (list.flow || isFlow(yaml, path))) {
    const before = nodeSpan(yaml, list.items[index]);
    if (before) return [insertion(before.start, `${inline}, `)];
    const last = nodeSpan(yaml, list.items.at(-1));
    if (last) return [insertion(last.end, `, ${inline}`)];
    const span = nodeSpan(yaml, list);
    return span ? [{ span, text: `[${inline}]` }] : [];
  }
  const key = nodeSpan(yaml, found.pair?.key);
  if (!key) return [];
  const block = (indent: string) =>
    lines.map((line, i) => `${newline}${indent}${i === 0 ? '- ' : '  '}${line}`).join('');
  if (isSeq(list) && 0 < list.items.length) {
    const at = Math.min(index, list.items.length);
    const previous = 0 < at ? itemSpan(yaml, list, at - 1) : null;
    const neighbour = previous ?? itemSpan(yaml, list, 0);
    if (!neighbour) return [];
    const indent = text.slice(lineOf(text, neighbour.start).start, neighbour.start);
    return [insertion(lineOf(text, previous?.end ?? key.end).end, block(indent))];
  }
  if (!isEmpty(list)) return [];
  const column = key.start - lineOf(text, key.start).start;
  return [insertion(lineOf(text, key.end).end, block(' '.repeat(column + indentStep(yaml))))];
}

/** Swaps two items of one list, each with the comments directly above it and beside it. */
export function swapItems(doc: SpecDocument, a: SpecPath, b: SpecPath): TextChange[] {
  const one = itemAt(doc, a);
  const other = itemAt(doc, b);
  if (!one || !other || one.list !== other.list || one.index === other.index) return [];
  const region = (item: NonNullable<typeof one>): Span =>
    item.list.flow ? item.span : withComments(doc.text, item.span);
  const [first, second] = [region(one), region(other)];
  if (first.start < second.end && second.start < first.end) return [];
  return [
    { span: first, text: doc.text.slice(second.start, second.end) },
    { span: second, text: doc.text.slice(first.start, first.end) },
  ];
}

function insertSection(
  doc: SpecDocument,
  section: SpecPath,
  left: number,
  key: string,
  valueText: string,
): TextChange[] {
  const yaml = treeOf(doc);
  const missing = section.slice(section.length - left);
  if (!yaml || missing.some((step) => typeof step !== 'string')) return [];
  const parent = section.slice(0, section.length - left);
  const [first = '', ...rest] = missing as string[];
  const { found } = findPath(yaml, parent);
  const flow = isFlow(yaml, [...parent, first]) || (isMap(found.node) && found.node.flow === true);
  if (flow) {
    const value = rest.reduceRight((inner, step) => `{ ${step}: ${inner} }`, `{ ${key}: ${valueText} }`);
    return insertKey(doc, parent, first, value);
  }
  const step = indentStep(yaml);
  const base = isMap(found.node) ? columnOf(yaml, found.node) : parent.length * step;
  const newline = newlineOf(doc.text);
  const lines = [...rest, key].map((name, i) => `${newline}${' '.repeat(base + (i + 1) * step)}${name}:`);
  const changes = insertKey(doc, parent, first, '');
  return changes.map((change) => {
    const tail = change.text.endsWith(newline) ? newline : '';
    const body = tail === '' ? change.text : change.text.slice(0, -newline.length);
    return { span: change.span, text: `${body}${lines.join('')} ${valueText}${tail}` };
  });
}

interface Item {
  readonly yaml: YamlText;
  readonly list: YAMLSeq<unknown>;
  readonly index: number;
  readonly span: Span;
}

function itemAt(doc: SpecDocument, path: SpecPath): Item | null {
  const yaml = treeOf(doc);
  const index = path.at(-1);
  if (!yaml || typeof index !== 'number') return null;
  const { found, left } = findPath(yaml, path);
  if (0 < left || !isSeq(found.parent)) return null;
  const span = found.parent.flow ? nodeSpan(yaml, found.node) : itemSpan(yaml, found.parent, index);
  return span && { yaml, list: found.parent, index, span };
}

/** An item of a block list, from its dash to its last text. */
function itemSpan(yaml: YamlText, list: YAMLSeq<unknown>, index: number): Span | null {
  const span = nodeSpan(yaml, list.items[index]);
  if (!span) return null;
  const start = yaml.text.lastIndexOf('-', isEmpty(list.items[index]) ? span.end : span.start - 1);
  return { start: Math.max(start, 0), end: Math.max(contentEnd(yaml, list.items[index]) ?? 0, start + 1) };
}

/** With the comment lines directly above, as far in as the item, and what stands on its last line. */
function withComments(text: string, span: Span): Span {
  const line = lineOf(text, span.start);
  let start = line.start;
  while (0 < start) {
    const above = lineOf(text, start - (text.slice(0, start).endsWith('\r\n') ? 2 : 1));
    if (!/^[ \t]*#/.test(text.slice(above.start, above.end)) || nextLine(text, above.start) !== start) break;
    start = above.start;
  }
  return { start, end: lineOf(text, span.end).end };
}
