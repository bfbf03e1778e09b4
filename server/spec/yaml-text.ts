import { isMap, isScalar, type Node, type Pair, type parseDocument, type Scalar, type YAMLMap } from 'yaml';
import { lineOf } from './lines.ts';
import type { Span } from './place.ts';
import type { Problem } from './problem.ts';

/** The text of a file and its tree. Offsets handed out are those of the text as the user wrote it. */
export interface YamlText {
  readonly text: string;
  readonly root: Node | null;
  /** From an offset of the tree to one of the text: they differ where the text was mended before it was parsed. */
  at(offset: number): number;
  /** The parser saw another text: written values come from the user's. */
  readonly mended: boolean;
  /** Found while parsing: syntax and what of YAML is not read. */
  readonly problems: Problem[];
  /** Stretches where the syntax broke: what is missing near them may only seem so. */
  readonly broken: readonly Span[];
}

/**
 * Every scalar is its text (`6205E2` is a code, `14.0` keeps its zero); doubled keys and the like are found by our own
 * readers, because the library's check grows with the square of the keys.
 */
export const parseOptions = {
  schema: 'failsafe',
  version: '1.2',
  uniqueKeys: false,
  prettyErrors: false,
  stringKeys: true,
  merge: false,
  logLevel: 'silent',
} as const satisfies Parameters<typeof parseDocument>[1];

export const asMap = (node: unknown): YAMLMap<unknown, unknown> | null => (isMap(node) ? node : null);

/** The node as a scalar with text; an empty value (`length:`) is none. */
export function asScalar(node: unknown): Scalar | null {
  return isScalar(node) && !isEmpty(node) ? node : null;
}

/** Whether nothing is written where a value could stand. */
export function isEmpty(node: unknown): boolean {
  if (node === null || node === undefined) return true;
  if (!isScalar(node)) return false;
  if (node.value === null) return true;
  return node.value === '' && (node.type === 'PLAIN' || node.type === undefined);
}

/** The key of a pair as written; null for a key that is not a word. */
export function keyOf(pair: Pair<unknown, unknown>): string | null {
  return isScalar(pair.key) && typeof pair.key.value === 'string' ? pair.key.value : null;
}

/** The text of a scalar, quotes and folds undone. */
export function writtenOf(yaml: YamlText, node: Scalar): string {
  const value = typeof node.value === 'string' ? node.value : String(node.value ?? '');
  if (node.type !== 'PLAIN' || !node.range || !yaml.mended) return value;
  const source = yaml.text.slice(yaml.at(node.range[0]), yaml.at(node.range[1]));
  return /[\r\n]/.test(source) ? value : source.trim();
}

/** Whether the syntax broke on the line of a span: what seems to be missing there may only seem so. */
export function isBroken(yaml: YamlText, span: Span): boolean {
  if (yaml.broken.length === 0) return false;
  const line = lineOf(yaml.text, span.start);
  const end = Math.max(line.end, span.end);
  return yaml.broken.some((b) => b.start <= end && line.start <= b.end);
}

/** Where a node stands, without the blanks and comments after it. */
export function nodeSpan(yaml: YamlText, node: unknown): Span | null {
  const range = (node as Node | null | undefined)?.range;
  if (!range) return null;
  return { start: yaml.at(range[0]), end: yaml.at(range[1]) };
}

/** The pair of a mapping with the key; the first where it is doubled. */
export function pairOf(map: YAMLMap<unknown, unknown>, key: string): Pair<unknown, unknown> | null {
  for (const pair of map.items) if (isScalar(pair.key) && pair.key.value === key) return pair;
  return null;
}
