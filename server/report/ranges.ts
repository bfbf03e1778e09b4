import { type LineCharacter, lineCharacter, lineStarts } from '../spec/line-starts.ts';
import type { Span } from '../spec/place.ts';

/** A stretch of text as editors count it. */
export interface ReportRange {
  readonly start: LineCharacter;
  readonly end: LineCharacter;
}

/** Turns offsets of one text into ranges. */
export function rangesIn(text: string): (span: Span) => ReportRange {
  const starts = lineStarts(text);
  const place = (offset: number): LineCharacter => lineCharacter(starts, text.length, offset);
  return ({ start, end }) => ({ start: place(start), end: place(Math.max(start, end)) });
}
