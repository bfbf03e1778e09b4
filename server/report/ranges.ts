import type { Span } from '../spec/place.ts';

/** A place as editors count it: lines and UTF-16 characters from zero. */
export interface ReportRange {
  readonly start: { readonly line: number; readonly character: number };
  readonly end: { readonly line: number; readonly character: number };
}

/** Turns offsets of one text into ranges. A line ends at `\n`, `\r\n` or a lone `\r`. */
export function rangesIn(text: string): (span: Span) => ReportRange {
  const starts = [0];
  for (const match of text.matchAll(/\r\n|\r|\n/g)) starts.push(match.index + match[0].length);
  const place = (offset: number): ReportRange['start'] => {
    const at = Math.min(Math.max(offset, 0), text.length);
    let [low, high] = [0, starts.length - 1];
    while (low < high) {
      const middle = Math.ceil((low + high) / 2);
      if ((starts[middle] ?? 0) <= at) low = middle;
      else high = middle - 1;
    }
    return { line: low, character: at - (starts[low] ?? 0) };
  };
  return ({ start, end }) => ({ start: place(start), end: place(Math.max(start, end)) });
}
