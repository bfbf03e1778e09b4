import { besideKinds } from './beside-model.ts';
import type { SpecKind } from './document.ts';
import { stackKinds } from './model.ts';
import type { Span, SpecPath } from './place.ts';
import { sectionKeys } from './schema/catalogue.ts';
import { childSection, namesOf } from './schema/child-section.ts';
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

/** A section that is open at the cursor. */
interface Level {
  readonly section: SectionId;
  readonly path: SpecPath;
  /** Column of its keys; -1 until one is seen. */
  readonly column: number;
  readonly flow: boolean;
}

/** Never throws; any offset of any text gives an answer. */
export function cursorAt(text: string, offset: number, kind: SpecKind): Cursor {
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

interface Place {
  readonly level: Level;
  /** The innermost parent opens a list. */
  readonly list: boolean;
}

/** The lines above that are less far in, outermost first: the keys and items the line belongs to. */
function parentLines(lines: readonly TextLine[], index: number, line: TextLine, at: number): number[] {
  const blank = line.text.trim() === '' || line.idle;
  let column = blank ? at - line.start : line.indent;
  const item = !blank && /^-(?:\s|$)/.test(line.text.slice(line.indent));
  const parents: number[] = [];
  for (let i = index - 1; 0 <= i; i--) {
    const above = lines[i];
    if (!above || above.idle || above.block) continue;
    const dash = /^-(?:\s|$)/.test(above.text.slice(above.indent));
    const inItem = dash && above.indent < column;
    const listKey =
      !dash &&
      parents.length === 0 &&
      item &&
      above.indent === line.indent &&
      /:\s*(?:#.*)?$/.test(above.text);
    const ofDash =
      !dash &&
      above.indent === column &&
      0 < parents.length &&
      isDashLine(lines[parents[0] ?? -1]) &&
      /:\s*(?:#.*)?$/.test(above.text);
    if (above.indent < column || inItem || listKey || ofDash) {
      parents.unshift(i);
      column = above.indent;
      if (column === 0 && !dash) break;
    }
  }
  return parents;
}

const isDashLine = (line: TextLine | undefined): boolean =>
  !!line && /^-(?:\s|$)/.test(line.text.slice(line.indent));

/** Goes down from the top of the file through the parents. */
function descend(kind: SpecKind, lines: readonly TextLine[], parents: readonly number[]): Place {
  let level: Level = { section: kind, path: [], column: 0, flow: false };
  let list = false;
  for (const index of parents) {
    const line = lines[index];
    if (!line) continue;
    const dash = /^(?:-[ \t]+)+/.exec(line.text.slice(line.indent))?.[0].length ?? 0;
    if (0 < dash || isDashLine(line)) {
      level = itemOf(level, lines, index, line.indent + dash);
      list = false;
    }
    const match = /^([^\s:#{}[\],][^:#{}[\],]*?)[ \t]*:(?:[ \t]+(.*))?$/.exec(
      line.text.slice(line.indent + dash),
    );
    const value = (match?.[2] ?? '').replace(/(?:^|[ \t]+)#.*$/, '');
    if (!match?.[1] || value !== '') continue;
    const child = childSection(level.section, match[1]);
    if (!child) continue;
    level = { section: child, path: [...level.path, match[1]], column: -1, flow: false };
    list = isList(child);
  }
  return { level, list };
}

const isList = (section: SectionId): boolean =>
  section === 'stack' ||
  section === 'beside' ||
  section === 'add' ||
  section === 'remove' ||
  section === 'workshop:drivers';

/** The item a line with a dash begins: its index in the list, and its kind from the words in it. */
function itemOf(level: Level, lines: readonly TextLine[], index: number, column: number): Level {
  const line = lines[index];
  let count = 0;
  for (let i = index - 1; 0 <= i; i--) {
    const above = lines[i];
    if (!above || above.idle || above.block || !line) continue;
    if (above.indent < line.indent) break;
    if (above.indent !== line.indent) continue;
    if (!isDashLine(above)) break;
    count++;
  }
  const kind = itemKind(level.section, lines, index, line?.indent ?? 0);
  const section = itemSection(level.section, kind);
  return { section, path: [...level.path, count], column, flow: false };
}

function itemSection(list: SectionId, kind: string | null): SectionId {
  if (list === 'beside') return kind ? (`beside:${kind}` as SectionId) : 'beside';
  if (list === 'stack' || list === 'add') return kind ? (`part:${kind}` as SectionId) : list;
  return list === 'workshop:drivers' ? 'workshop:driver' : list;
}

function kindsOf(list: SectionId): readonly string[] {
  if (list === 'beside' || list.startsWith('beside:')) return besideKinds;
  return list === 'stack' || list === 'add' || list.startsWith('part:') ? stackKinds : [];
}

/** The kind an item names in one of its lines. */
function itemKind(list: SectionId, lines: readonly TextLine[], index: number, indent: number): string | null {
  const kinds = kindsOf(list);
  for (let i = index; i < lines.length; i++) {
    const line = lines[i];
    if (!line || (i !== index && !line.idle && line.indent <= indent)) break;
    const key = /^[\s-]*([a-z-]+)[ \t]*:(?:\s|$)/.exec(line.text)?.[1];
    if (key && kinds.includes(key)) return key;
  }
  return null;
}

function itemLevel(
  place: Place,
  lines: readonly TextLine[],
  index: number,
  line: TextLine,
  dashes: number,
  column: number,
): Level {
  if (0 < dashes) return itemOf(place.level, lines, index, column);
  return { ...place.level, column: line.indent };
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

/** The list an item stands in. */
function listOf(level: Level): SectionId {
  if (level.section.startsWith('beside:')) return 'beside';
  return level.path.at(-2) === 'add' ? 'add' : 'stack';
}

function kindIn(section: SectionId): string | null {
  return /^(?:part|beside):(.*)$/.exec(section)?.[1] ?? null;
}

/** The end of a value: before a comment and the blanks before it. */
function valueEnd(text: string, at: number, lineEnd: number): number {
  const rest = text.slice(at, lineEnd);
  const comment = rest.search(/(?:^|[ \t])#/);
  return at + (comment < 0 ? rest : rest.slice(0, comment)).trimEnd().length;
}

/** The keys of the block the line is in. */
const contentColumn = (line: TextLine): number =>
  line.indent + (/^(?:-(?:[ \t]+|$))*/.exec(line.text.slice(line.indent))?.[0].length ?? 0);

function keysBeside(lines: readonly TextLine[], index: number, column: number, first: boolean): string[] {
  const keys: string[] = [];
  const collect = (line: TextLine | undefined): boolean => {
    if (!line || line.idle || line.block) return true;
    const dash = /^(?:-[ \t]+)+/.exec(line.text.slice(line.indent))?.[0].length ?? 0;
    const at = line.indent + dash;
    if (at < column) return false;
    if (at === column) {
      const key = /^([^\s:#{}[\],][^:#{}[\],]*?)[ \t]*:(?:\s|$)/.exec(line.text.slice(at))?.[1];
      if (key) keys.push(key);
    }
    return dash === 0 || column < at;
  };
  if (!first) for (let i = index - 1; 0 <= i; i--) if (!collect(lines[i])) break;
  keys.reverse();
  for (let i = index + 1; i < lines.length; i++) {
    const line = lines[i];
    if (line && !line.idle && (line.indent < column || (isDashLine(line) && contentColumn(line) <= column)))
      break;
    if (!collect(line)) break;
  }
  return keys;
}

/** The braces the cursor is in, read from the start of the value; null outside of any. */
function flowAt(outer: Level, before: string, text: string, at: number): Cursor | null {
  const stack: { level: Level; close: string; key: string | null; keys: string[]; count: number }[] = [];
  let word = '';
  let key: string | null = null;
  let quote = '';
  const start = at - before.length;
  for (let i = 0; i < before.length; i++) {
    const c = before[i] ?? '';
    if (quote !== '') {
      if (c === quote) quote = '';
      word += c;
    } else if ((c === '"' || c === "'") && word.trim() === '') quote = c;
    else if (c === '#' && /\s/.test(before[i - 1] ?? ' ')) return null;
    else if ((c === '{' || c === '[') && word.trim() === '') {
      const top = stack.at(-1);
      const from = top?.level ?? outer;
      const into = key ?? '';
      const inList = top?.close === ']';
      const child = inList
        ? from.section
        : into === ''
          ? from.section
          : (childSection(from.section, into) ?? from.section);
      const path = inList ? [...from.path, top.count] : into === '' ? from.path : [...from.path, into];
      stack.push({
        level: { section: child, path, column: -1, flow: true },
        close: c === '{' ? '}' : ']',
        key,
        keys: [],
        count: 0,
      });
      word = '';
      key = null;
    } else if ((c === '}' || c === ']') && 0 < stack.length) {
      key = stack.pop()?.key ?? null;
      word = ' ';
    } else if (c === ':' && /\s|$/.test(before[i + 1] ?? '') && key === null) {
      key = word.trim();
      stack.at(-1)?.keys.push(key);
      word = '';
    } else if (c === ',' && 0 < stack.length) {
      const top = stack.at(-1);
      if (top) top.count++;
      word = '';
      key = null;
    } else word += c;
  }
  const top = stack.at(-1);
  if (!top) return null;
  return flowCursor(top, key, word.trimStart(), text, at, start);
}

function flowCursor(
  top: {
    readonly level: Level;
    readonly close: string;
    readonly keys: readonly string[];
    readonly count: number;
  },
  key: string | null,
  typed: string,
  text: string,
  at: number,
  lineFrom: number,
): Cursor {
  const rest = /^[^,}\]\r\n#]*/.exec(text.slice(at))?.[0] ?? '';
  const after = text.slice(at, at + 400).split(/[}\]\r\n]/)[0] ?? '';
  const later = [...after.matchAll(/[,{]\s*([\w.-]+)\s*:/g)].map((m) => m[1] ?? '');
  const list = kindsOf(top.level.section);
  const written = [...top.keys, ...later];
  const kind = written.find((k) => list.includes(k)) ?? kindIn(top.level.section);
  const section =
    kind && !kindIn(top.level.section) ? itemSection(top.level.section, kind) : top.level.section;
  const open = top.level.section === 'stack' || top.level.section === 'beside' || top.level.section === 'add';
  const role =
    key === null
      ? open && kind === null
        ? 'item-kind'
        : top.close === ']'
          ? 'value'
          : 'key'
      : list.includes(key)
        ? 'name'
        : 'value';
  const word = key === null ? (/^[^\s:,}\]]*/.exec(rest)?.[0] ?? '') : rest.trimEnd();
  return {
    section,
    path: top.level.path,
    role,
    key,
    typed,
    replace: { start: Math.max(lineFrom, at - typed.length), end: at + word.length },
    present: written.filter((k) => k !== key),
    ...(kind ? { kind } : {}),
    flow: true,
    dash: false,
    indent: '',
  };
}

/** What can be written as a key here: the section's keys, or the names a section of names takes. */
export function keysAt(cursor: Cursor): readonly string[] {
  const names = namesOf(cursor.section);
  return names.length === 0 ? sectionKeys(cursor.section).map((info) => info.key) : names;
}
