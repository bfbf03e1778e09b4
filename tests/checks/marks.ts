import type { Finding } from '../../server/checks/check.ts';

/** A finding as a fixture states it; line and columns from 1, the end not included, always within one line. */
export interface Mark {
  readonly line: number;
  readonly from: number;
  readonly to: number;
  readonly code: string;
  /** How the message begins. */
  readonly message: string;
}

const markLine = /^[ \t]*#( *)(\^+) ([a-z0-9-]+): (.*)$/;

/**
 * Takes the marks out of a text. A mark is a comment line whose carets stand under what the finding covers; carets
 * directly after the `#` begin at the `#` itself, so that the first column can be marked too.
 */
export function readMarks(text: string): { readonly text: string; readonly marks: readonly Mark[] } {
  const kept: string[] = [];
  const marks: Mark[] = [];
  for (const line of text.split('\n')) {
    const match = markLine.exec(line);
    if (!match) {
      kept.push(line);
      continue;
    }
    const [, gap = '', carets = '', code = '', message = ''] = match;
    const hash = line.indexOf('#') + 1;
    const from = gap === '' ? hash : line.indexOf('^') + 1;
    marks.push({ line: kept.length, from, to: line.indexOf('^') + carets.length + 1, code, message });
  }
  return { text: kept.join('\n'), marks };
}

/** The marks of a side file: `3:1-8 code: how the message begins`. */
export function readExpected(text: string): readonly Mark[] {
  return [...text.matchAll(/^(\d+):(\d+)-(\d+) ([a-z0-9-]+): (.*)$/gm)].map(
    ([, line, from, to, code = '', message = '']) => ({
      line: Number(line),
      from: Number(from),
      to: Number(to),
      code,
      message,
    }),
  );
}

/** A finding as a mark, its message whole. Offsets count a byte order mark; columns do not. */
export function markOf(finding: Finding, text: string): Mark {
  const before = text.slice(0, finding.span.start).replace(/^\ufeff/, '');
  const lines = before.split(/\r\n|\r|\n/);
  const from = (lines.at(-1) ?? '').length + 1;
  const length = finding.span.end - finding.span.start;
  return { line: lines.length, from, to: from + length, code: finding.code, message: finding.message };
}

/** Found and stated marks as lines that compare: a message that begins as stated is cut to what was stated. */
export function compare(
  found: readonly Mark[],
  stated: readonly Mark[],
): { found: string[]; stated: string[] } {
  const print = ({ line, from, to, code, message }: Mark): string =>
    `${line}:${from}-${to} ${code}: ${message}`;
  const cut = found.map((mark) => {
    const same = stated.find(
      (other) =>
        other.line === mark.line &&
        other.code === mark.code &&
        other.from === mark.from &&
        mark.message.startsWith(other.message),
    );
    return same ? { ...mark, message: same.message } : mark;
  });
  return { found: cut.map(print).sort(), stated: stated.map(print).sort() };
}
