/** A stretch of a text that can be parsed alone. */
export interface TextPart {
  readonly start: number;
  readonly end: number;
}

const key = /[A-Za-z_][\w.-]*:(?=[ \r\n]|$)/y;

/**
 * The sections of a text that begins each at the first column with a plain key, comments and blank lines with the one
 * before. Null for a text that holds anything else there: it has to be parsed whole.
 */
export function sectionsOf(text: string): readonly TextPart[] | null {
  const starts: number[] = [];
  for (let at = text.charCodeAt(0) === 0xfeff ? 1 : 0; at < text.length; at = nextLine(text, at)) {
    const c = text[at];
    if (
      c === ' ' &&
      starts.length === 0 &&
      !/^[ ]*(?:#|\r?$)/.test(text.slice(at, nextLine(text, at)).trimEnd())
    )
      return null;
    if (c === ' ' || c === '\n' || c === '\r' || c === '#') continue;
    // A list may stand at the column of its key.
    if (c === '-' && text[at + 1] === ' ' && 0 < starts.length) continue;
    if (!keyAt(text, at)) return null;
    starts.push(at);
  }
  return starts.length === 0 ? null : between(starts, text.length);
}

/** The entries or items a section holds; null where it holds anything but a block of them. */
export function entriesWithin(text: string, { start, end }: TextPart): readonly TextPart[] | null {
  const first = nextLine(text, start);
  if (!/^[\w.-]+:[ ]*(?:#.*)?$/.test(text.slice(start, first).trimEnd())) return null;
  const starts: number[] = [];
  let column = -1;
  let list = false;
  for (let at = first; at < end; at = nextLine(text, at)) {
    let word = at;
    while (text[word] === ' ') word++;
    const c = text[word];
    if (c === '\n' || c === '\r' || c === '#' || end <= word) continue;
    const indent = word - at;
    if (column < 0) {
      column = indent;
      list = c === '-';
    }
    if (column < indent && c !== '\t') continue;
    const begins = list ? c === '-' && /[ \r\n]/.test(text[word + 1] ?? '') : keyAt(text, word);
    if (indent !== column || column === 0 || !begins) return null;
    starts.push(at);
  }
  return starts.length < 2 ? null : between(starts, end);
}

function between(starts: readonly number[], end: number): readonly TextPart[] {
  return starts.map((start, at) => ({ start, end: starts[at + 1] ?? end }));
}

function keyAt(text: string, at: number): boolean {
  key.lastIndex = at;
  return key.test(text);
}

function nextLine(text: string, at: number): number {
  const next = text.indexOf('\n', at);
  return next < 0 ? text.length : next + 1;
}
