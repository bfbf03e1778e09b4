import { flowAt } from './cursor-flow.ts';
import {
  descend,
  isList,
  itemLevel,
  keysBeside,
  kindIn,
  kindsOf,
  type Level,
  listOf,
  parentLines,
} from './cursor-lines.ts';
import type { SpecKind } from './document.ts';
import type { Span, SpecPath } from './place.ts';
import { sectionKeys } from './schema/catalogue.ts';
import { namesOf } from './schema/child-section.ts';
import type { SectionId } from './schema/key-info.ts';
import { type TextLine, textLines } from './text-lines.ts';

/** Where somebody is writing, worked out from indentation and the line alone: half-typed text has no tree. */
export interface Cursor {
  /** The section the cursor writes in; for a value the section its key belongs to. */
  readonly section: SectionId;
  /** Path of that section. */
  readonly path: SpecPath;
  /** A key; a value; the name of a part; the kind an item begins with. */
  readonly role: 'key' | 'value' | 'name' | 'item-kind';
  /** The key whose value is written; for a name the kind. */
  readonly key: string | null;
  /** What stands before the cursor of the word or value. */
  readonly typed: string;
  /** What an answer replaces: the whole word or value. */
  readonly replace: Span;
  /** Keys the section has already, this one left out. */
  readonly present: readonly string[];
  /** The kind of part, once it is known. */
  readonly kind?: string;
  /** Inside braces or brackets. */
  readonly flow: boolean;
  /** For a kind: the dash before it stands already. */
  readonly dash: boolean;
  /** The blanks before a key of this section. */
  readonly indent: string;
}

/** Never throws; any offset of any text gives an answer. */
export function cursorAt(text: string, offset: number, kind: SpecKind): Cursor {
  if (text.charCodeAt(0) === 0xfeff) {
    const cursor = cursorAt(text.slice(1), offset - 1, kind);
    return { ...cursor, replace: { start: cursor.replace.start + 1, end: cursor.replace.end + 1 } };
  }
  const at = Math.max(0, Math.min(offset, text.length));
  const lines = textLines(text);
  const index = Math.max(
    0,
    lines.findLastIndex((line) => line.start <= at),
  );
  const line = lines[index] ?? { start: 0, end: 0, text: '', indent: 0, idle: true, block: false };
  const head = /^[ \t\ufeff]*(?:-(?:[ \t]+|$))*/.exec(line.text.slice(0, at - line.start))?.[0] ?? '';
  const parents = parentLines(lines, index, line, at);
  const place = descend(kind, lines, parents);
  const before = line.text.slice(head.length, at - line.start);
  const dashes = (head.match(/-/g) ?? []).length;
  const inside =
    0 < dashes || place.list ? itemLevel(place, lines, index, line, dashes, head.length) : place.level;
  return within(text, lines, index, line, inside, before, at, head);
}

/** From the section of the line to the braces the cursor is in, and what it writes there. */
function within(
  text: string,
  lines: readonly TextLine[],
  index: number,
  line: TextLine,
  level: Level,
  before: string,
  at: number,
  head: string,
): Cursor {
  const flow = flowAt(level, before, text, at);
  if (flow) return flow;
  const indent = ' '.repeat(head.length);
  const match = /^("[^"]*"|'[^']*'|[^\s:#][^:#]*?)[ \t]*:(?:[ \t]+|$)(.*)$/.exec(before);
  const present = keysBeside(lines, index, head.length, 0 < (head.match(/-/g) ?? []).length);
  const dash = head.includes('-');
  const base = { section: level.section, path: level.path, flow: false, dash, indent, present };
  const kinds = kindsOf(level.section);
  const kind = kindIn(level.section);
  if (!match) {
    const item = isList(level.section) && level.section !== 'remove' && kinds.length !== 0;
    const rest = /^[^\s:#]*/.exec(text.slice(at, line.end))?.[0] ?? '';
    const start = at - before.length;
    const onKind = dash && kind !== null;
    const role = item || onKind ? 'item-kind' : level.section === 'remove' ? 'value' : 'key';
    return {
      ...base,
      section: onKind ? listOf(level) : level.section,
      ...(kind ? { kind } : {}),
      role,
      key: null,
      typed: before,
      replace: { start, end: at + rest.length },
    };
  }
  const key = match[1] ?? '';
  const typed = match[2] ?? '';
  const named = kinds.includes(key);
  return {
    ...base,
    present: present.filter((k) => k !== key),
    ...(named ? { kind: key } : kind ? { kind } : {}),
    role: named ? 'name' : 'value',
    key,
    typed,
    replace: { start: at - typed.length, end: valueEnd(text, at, line.end) },
  };
}

/** The end of a value: before a comment and the blanks before it. */
function valueEnd(text: string, at: number, lineEnd: number): number {
  const rest = text.slice(at, lineEnd);
  const comment = rest.search(/(?:^|[ \t])#/);
  return at + (comment < 0 ? rest : rest.slice(0, comment)).trimEnd().length;
}

/** What can be written as a key here: the section's keys, or the names a section of names takes. */
export function keysAt(cursor: Cursor): readonly string[] {
  const names = namesOf(cursor.section);
  return names.length === 0 ? sectionKeys(cursor.section).map((info) => info.key) : names;
}
