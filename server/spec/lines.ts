import type { Span } from './place.ts';

/** The line an offset is on, without its line break. A lone carriage return ends a line too. */
export function lineOf(text: string, offset: number): Span {
  let start = offset;
  while (0 < start && !isBreak(text.charCodeAt(start - 1))) start--;
  let end = offset;
  while (end < text.length && !isBreak(text.charCodeAt(end))) end++;
  return { start, end };
}

/** The offset after the line break that follows; the end of the text where there is none. */
export function nextLine(text: string, offset: number): number {
  const { end } = lineOf(text, offset);
  if (text.charCodeAt(end) === 13 && text.charCodeAt(end + 1) === 10) return end + 2;
  return Math.min(end + 1, text.length);
}

/** The line break the text uses. */
export function newlineOf(text: string): '\n' | '\r\n' | '\r' {
  const at = text.search(/[\r\n]/);
  if (at < 0 || text[at] === '\n') return '\n';
  return text[at + 1] === '\n' ? '\r\n' : '\r';
}

const isBreak = (code: number): boolean => code === 10 || code === 13;
