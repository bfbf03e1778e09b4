import type { Cursor } from './cursor.ts';
import { itemSection, kindIn, kindsOf, type Level } from './cursor-lines.ts';
import { childSection } from './schema/child-section.ts';

const deepest = 64;

/** The braces the cursor is in, read from the start of the value; null outside of any. */
export function flowAt(outer: Level, before: string, text: string, at: number): Cursor | null {
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
      // Nested as deep as this a file is not read at all.
      if (stack.length === deepest) return null;
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
