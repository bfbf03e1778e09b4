import { isMap, isSeq, type Pair, type YAMLMap } from 'yaml';
import { commentsIn } from './comments.ts';
import { lineOf, newlineOf, nextLine } from './lines.ts';
import type { Span, SpecPath } from './place.ts';
import { findPath } from './places.ts';
import type { TextChange } from './problem.ts';
import { keyOf, nodeSpan, type YamlText } from './yaml-text.ts';

/** Takes whole lines out, from a line's start to the end of the line where the span ends. */
export function removeLines(text: string, span: Span, indent: string): TextChange {
  const end = nextLine(text, span.end);
  const kept = commentLines(text, { start: span.start, end }, indent).map((line) => line + newlineOf(text));
  const last = end === text.length && !/[\r\n]$/.test(text);
  if (!last) return { span: { start: span.start, end }, text: kept.join('') };
  // The last line has no line break: the one before it goes instead.
  const before = /(?:\r\n|\r|\n)$/.exec(text.slice(0, span.start))?.[0].length ?? 0;
  const lines = kept.join('').replace(/(?:\r\n|\r|\n)$/, '');
  return lines === ''
    ? { span: { start: span.start - before, end }, text: '' }
    : { span: { start: span.start, end }, text: lines };
}

/** Takes one of several out of braces or brackets, with its comma. */
export function removeFromFlow(
  yaml: YamlText,
  items: readonly unknown[],
  index: number,
  span: Span,
): TextChange {
  const startOf = (item: unknown) => nodeSpan(yaml, (item as Pair | undefined)?.key ?? item)?.start;
  const next = index + 1 < items.length ? startOf(items[index + 1]) : undefined;
  if (next !== undefined) return { span: { start: span.start, end: next }, text: '' };
  if (index === 0) return { span, text: '' };
  const comma = yaml.text.lastIndexOf(',', span.start);
  return { span: { start: comma, end: span.end }, text: '' };
}

/** Whether a path leads through braces or brackets. */
export function isFlow(yaml: YamlText, path: SpecPath): boolean {
  for (let i = 0; i < path.length; i++) {
    const { node } = findPath(yaml, path.slice(0, i)).found;
    if ((isMap(node) || isSeq(node)) && node.flow) return true;
  }
  return false;
}

/** How far the file indents a section's keys: as its first one, 2 where it has none. */
export function indentStep(yaml: YamlText): number {
  for (const pair of isMap(yaml.root) ? yaml.root.items : []) {
    if (isMap(pair.value) && !pair.value.flow) return columnOf(yaml, pair.value) || 2;
  }
  return 2;
}

export const insertion = (at: number, text: string): TextChange => ({ span: { start: at, end: at }, text });

/** Text as a scalar that reads back as itself. */
export function plainOrQuoted(text: string, inFlow: boolean): string {
  const safe =
    text !== '' &&
    !/^[[\]{}#&*!|>'"%@`,]|^[-?:](?:\s|$)|^\s|\s$|:(?:\s|$)|\s#|[\r\n\t]/.test(text) &&
    !(inFlow && /[,[\]{}]/.test(text));
  return safe ? text : `'${text.replaceAll("'", "''")}'`;
}

export function columnOf(yaml: YamlText, map: YAMLMap<unknown, unknown>): number {
  const start = nodeSpan(yaml, map.items[0]?.key)?.start;
  if (start === undefined) return 0;
  const line = lineOf(yaml.text, start);
  return start - line.start - (yaml.text.charCodeAt(line.start) === 0xfeff ? 1 : 0);
}

export function afterColon(yaml: YamlText, pair: Pair<unknown, unknown>): number | null {
  const end = nodeSpan(yaml, pair.key)?.end;
  if (end === undefined || keyOf(pair) === null) return null;
  const colon = /^[ \t]*:/.exec(yaml.text.slice(end, lineOf(yaml.text, end).end));
  return colon ? end + colon[0].length : null;
}

export function commentLines(text: string, span: Span, indent: string): string[] {
  if (!text.slice(span.start, span.end).includes('#')) return [];
  return commentsIn(text)
    .filter((comment) => span.start <= comment.start && comment.end <= span.end)
    .map((comment) => indent + text.slice(comment.start, comment.end));
}
