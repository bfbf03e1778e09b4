/** A line of a text as the mending sees it. */
export interface TextLine {
  readonly start: number;
  /** Without the line break. */
  readonly end: number;
  readonly text: string;
  /** Blanks before the first word. */
  readonly indent: number;
  /** Nothing but blanks or a comment. */
  readonly idle: boolean;
  /** Inside a text that runs over several lines (`notes: |`). */
  readonly block: boolean;
}

/** The lines of a text; a lone carriage return ends a line too. */
export function textLines(text: string): TextLine[] {
  const lines: TextLine[] = [];
  let block = -1;
  const pattern = /([^\r\n]*)(\r\n|\r|\n|$)/g;
  for (;;) {
    const start = pattern.lastIndex;
    const match = pattern.exec(text);
    if (!match) break;
    const line = match[1] ?? '';
    const indent = /^[ \t\ufeff]*/.exec(line)?.[0].length ?? 0;
    const blank = indent === line.length;
    if (0 <= block && !blank && indent <= block) block = -1;
    const inside = 0 <= block;
    lines.push({
      start,
      end: start + line.length,
      text: line,
      indent,
      idle: blank || line[indent] === '#',
      block: inside,
    });
    if (!inside && /(?::|-|^)[ \t]+[|>][+-]?\d?[+-]?[ \t]*(?:#.*)?$/.test(line)) block = indent;
    if (match[2] === '') break;
  }
  return lines;
}

/** Where a quote begins in a line that is not closed there, or -1; and where a comment begins. */
export function openQuote(line: string): number {
  let quote = '';
  let at = -1;
  for (let i = 0; i < line.length; i++) {
    const c = line[i] ?? '';
    if (quote === '') {
      if (c === '#' && (i === 0 || /\s/.test(line[i - 1] ?? ''))) return -1;
      if (
        (c === '"' || c === "'") &&
        /(?:^|[:,{[\-?][ \t]+|[{[,])$/.test(line.slice(0, i).replace(/^[ \t]+$/, ''))
      ) {
        quote = c;
        at = i;
      }
    } else if (c === '\\' && quote === '"') i++;
    else if (c === quote) {
      if (quote === "'" && line[i + 1] === "'") i++;
      else quote = '';
    }
  }
  return quote === '' ? -1 : at;
}

/**
 * The columns a line may stand at, given the lines before it: of the sections and items that are open. A dash lines up
 * with dashes or opens a list; a key never stands under a dash.
 */
export function openColumns(before: readonly TextLine[], item: boolean): number[] {
  const columns: { readonly at: number; readonly dash: boolean }[] = [];
  const push = (at: number, dash: boolean): void => {
    if (!columns.some((c) => c.at === at && c.dash === dash)) columns.push({ at, dash });
  };
  for (const line of before) {
    if (line.idle || line.block) continue;
    while (line.indent < (columns.at(-1)?.at ?? 0)) columns.pop();
    const dashes = /^(?:-(?:[ \t]+|$))+/.exec(line.text.slice(line.indent))?.[0].length ?? 0;
    push(line.indent, 0 < dashes);
    if (0 < dashes) push(line.indent + dashes, false);
  }
  return columns.filter((c) => item || !c.dash).map((c) => c.at);
}
