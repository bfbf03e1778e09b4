import type { Position, Range } from 'vscode-languageserver-types';
import type { SpecDocument } from '../spec/document.ts';
import { lineCharacter, lineStarts } from '../spec/line-starts.ts';
import type { Span } from '../spec/place.ts';

/** Offsets of one text as the lines and characters of the protocol, and back. */
export interface Positions {
  position(offset: number): Position;
  range(span: Span): Range;
  /** The nearest offset for a position beyond the text. */
  offset(position: Position): number;
}

const known = new WeakMap<SpecDocument, Positions>();

/** The positions of a document's text, worked out once. */
export function positionsOf(document: SpecDocument): Positions {
  const made = known.get(document) ?? positionsIn(document.text);
  known.set(document, made);
  return made;
}

/** Lines end at `\n`, `\r\n` and a lone `\r`, as in the protocol. */
export function positionsIn(text: string): Positions {
  const starts = lineStarts(text);
  const position = (offset: number): Position => lineCharacter(starts, text.length, offset);
  return {
    position,
    range: ({ start, end }) => ({ start: position(start), end: position(Math.max(start, end)) }),
    offset: ({ line, character }) => {
      if (line < 0) return 0;
      const start = starts[line];
      if (start === undefined) return text.length;
      const next = starts[line + 1] ?? text.length;
      const end =
        next === text.length && line === starts.length - 1 ? text.length : lineEnd(text, start, next);
      return Math.min(start + Math.max(character, 0), end);
    },
  };
}

function lineEnd(text: string, start: number, next: number): number {
  let end = next;
  while (start < end && /[\r\n]/.test(text[end - 1] ?? '')) end--;
  return end;
}
