import { besideKinds } from '../spec/beside-model.ts';
import type { Cursor } from '../spec/cursor.ts';
import { type StackKind, type StackPart, stackKinds } from '../spec/model.ts';
import type { Snapshot } from '../workspace/workspace.ts';
import type { Suggestion } from './completion-item.ts';
import { kindWords } from './kind-words.ts';

/** The kinds an item of a list may be, with a name that is free, the one that usually comes next first. */
export function kindSuggestions({ document }: Snapshot, cursor: Cursor): readonly Suggestion[] {
  const stack = document.hub?.stack ?? [];
  const listed = cursor.section === 'beside' || cursor.section.startsWith('beside:');
  if (listed) {
    const taken = new Set(document.hub?.beside.map(({ address }) => address));
    return besideKinds.map((kind) => item(cursor, kind, freeName(kind, taken), 'at'));
  }
  const before = partsBefore(stack, document, cursor);
  const next = usualNext(before);
  // The item being written may be read already, as a part without a name.
  const taken = new Set(stack.filter(({ name }) => name !== '').map(({ address }) => address));
  const kinds = [next, ...stackKinds.filter((kind) => kind !== next)];
  return kinds.map((kind) => {
    const suggestion = item(cursor, kind, freeName(kind, taken), kind === 'bearing' ? 'code' : 'length');
    return kind === next ? { ...suggestion, usual: true } : suggestion;
  });
}

function item(cursor: Cursor, kind: keyof typeof kindWords, name: string, key: string): Suggestion {
  const base = {
    label: kind,
    kind: 'part',
    detail: `${kind}: ${name}`,
    documentation: kindWords[kind],
    more: true,
  } as const;
  if (cursor.flow) return { ...base, text: `${kind}: ${name}, ${key}: $0` };
  const dash = cursor.dash ? '' : '- ';
  const indent = cursor.indent + ' '.repeat(dash.length);
  return { ...base, text: `${dash}${kind}: ${name}\n${indent}${key}: $0` };
}

/**
 * On an empty line inside a part: the part that comes next, in place of the line's indentation, which the editor
 * has given it as one more key of the part before.
 */
export function nextPartSuggestions(snapshot: Snapshot, cursor: Cursor): readonly Suggestion[] {
  const { text } = snapshot.document;
  const { start, end } = cursor.replace;
  const lineStart = Math.max(text.lastIndexOf('\n', start - 1), text.lastIndexOf('\r', start - 1)) + 1;
  const inPart = cursor.path[0] === 'stack' && cursor.path.length === 2 && !cursor.flow;
  const dash = [...text.slice(0, lineStart).matchAll(/^([ ]*)-[ ]/gm)].at(-1)?.[1];
  if (!inPart || dash === undefined || text.slice(lineStart, start).trim() !== '') return [];
  const asItem = { ...cursor, section: 'stack', path: ['stack'], dash: false, indent: dash } as const;
  return kindSuggestions(snapshot, asItem).map(({ usual: _, ...suggestion }) => ({
    ...suggestion,
    label: `- ${suggestion.label}`,
    text: `${dash}${suggestion.text}`,
    filter: `${suggestion.label} - ${suggestion.label}`,
    replace: { start: lineStart, end },
  }));
}

/** The parts that stand above the cursor. */
function partsBefore(
  stack: readonly StackPart[],
  document: Snapshot['document'],
  { replace, path }: Cursor,
): readonly StackPart[] {
  if (path[0] !== 'stack') return stack;
  return stack.filter((part) => part.name !== '' && document.span(part.path, 'key').end < replace.start);
}

/** End cap, bearing, spacer, bearing, end cap, or locknut, cone, cone, locknut: what a plain hub has next. */
function usualNext(before: readonly StackPart[]): StackKind {
  const last = before.at(-1)?.kind;
  // A locknut outside, then its cone; the right side the other way round.
  const cones = before.filter(({ kind }) => kind === 'cone').length;
  if (last === 'locknut' || cones > 0) return cones < 2 ? 'cone' : 'locknut';
  const bearings = before.filter(({ kind }) => kind === 'bearing').length;
  if (last === undefined) return 'end-cap';
  if (last === 'bearing') return bearings % 2 === 1 ? 'spacer' : 'end-cap';
  return bearings === 0 || bearings % 2 === 1 ? 'bearing' : 'end-cap';
}

const names = ['left', 'right'] as const;

/** A name no part of the kind has: left, then right; a spacer is in the centre. */
function freeName(kind: string, taken: ReadonlySet<string>): string {
  const wanted = kind === 'spacer' || kind === 'collar' ? ['centre', ...names] : names;
  const free = wanted.find((name) => !taken.has(`${kind}.${name}`));
  if (free) return free;
  for (let count = 2; ; count++) {
    if (!taken.has(`${kind}.${wanted[0]}-${count}`)) return `${wanted[0]}-${count}`;
  }
}

/** Names for a part of a kind. */
export function nameSuggestions({ document }: Snapshot, cursor: Cursor): readonly Suggestion[] {
  const { hub } = document;
  const kind = cursor.kind ?? cursor.key ?? '';
  const other = [...(hub?.stack ?? []), ...(hub?.beside ?? [])].filter(
    (part) => part.path.join('/') !== cursor.path.join('/'),
  );
  const taken = new Set<string>(other.map(({ address }) => address));
  const usual =
    kind === 'spacer' || kind === 'collar' ? ['centre', 'left', 'right'] : ['left', 'right', 'centre'];
  return usual
    .filter((name) => !taken.has(`${kind}.${name}`))
    .map((name) => ({ label: name, text: name, kind: 'name', detail: `${kind}.${name}` }));
}
