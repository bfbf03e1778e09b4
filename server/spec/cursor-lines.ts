import { besideKinds } from './beside-model.ts';
import type { SpecKind } from './document.ts';
import { stackKinds } from './model.ts';
import type { SpecPath } from './place.ts';
import { childSection } from './schema/child-section.ts';
import type { SectionId } from './schema/key-info.ts';
import type { TextLine } from './text-lines.ts';

/** A section that is open at the cursor. */
export interface Level {
  readonly section: SectionId;
  readonly path: SpecPath;
  /** Column of its keys; -1 until one is seen. */
  readonly column: number;
  readonly flow: boolean;
}

export interface Place {
  readonly level: Level;
  /** The innermost parent opens a list. */
  readonly list: boolean;
}

/** The lines above that are less far in, outermost first: the keys and items the line belongs to. */
export function parentLines(lines: readonly TextLine[], index: number, line: TextLine, at: number): number[] {
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
export function descend(kind: SpecKind, lines: readonly TextLine[], parents: readonly number[]): Place {
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

export const isList = (section: SectionId): boolean =>
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

export function itemSection(list: SectionId, kind: string | null): SectionId {
  if (list === 'beside') return kind ? (`beside:${kind}` as SectionId) : 'beside';
  if (list === 'stack' || list === 'add') return kind ? (`part:${kind}` as SectionId) : list;
  return list === 'workshop:drivers' ? 'workshop:driver' : list;
}

export function kindsOf(list: SectionId): readonly string[] {
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

export function itemLevel(
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

/** The list an item stands in. */
export function listOf(level: Level): SectionId {
  if (level.section.startsWith('beside:')) return 'beside';
  return level.path.at(-2) === 'add' ? 'add' : 'stack';
}

export function kindIn(section: SectionId): string | null {
  return /^(?:part|beside):(.*)$/.exec(section)?.[1] ?? null;
}

/** The keys of the block the line is in. */
const contentColumn = (line: TextLine): number =>
  line.indent + (/^(?:-(?:[ \t]+|$))*/.exec(line.text.slice(line.indent))?.[0].length ?? 0);

export function keysBeside(
  lines: readonly TextLine[],
  index: number,
  column: number,
  first: boolean,
): string[] {
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
