/** Small pieces of the markdown that editors show. */

/** A table of two columns whose head is its first row. */
export function table(rows: readonly (readonly [string, string])[]): string {
  const [head, ...rest] = rows;
  if (!head) return '';
  return [line(head), '| :-- | :-- |', ...rest.map(line)].join('\n');
}

const line = (row: readonly string[]): string => `| ${row.map(cell).join(' | ')} |`;
const cell = (text: string): string =>
  escaped(text)
    .replaceAll('|', '\\|')
    .replaceAll(/[\r\n]+/g, ' ');

/** A table with a head of any number of columns. */
export function wideTable(head: readonly string[], rows: readonly (readonly string[])[]): string {
  return [line(head), `| ${head.map(() => ':--').join(' | ')} |`, ...rows.map(line)].join('\n');
}

/** Text of a user as text, never as markup. */
export function escaped(text: string): string {
  return text.replace(/[\\`*_{}[\]<>#!~]/g, '\\$&');
}

export function code(text: string): string {
  return `\`${text.replaceAll('`', "'").replaceAll(/[\r\n]+/g, ' ')}\``;
}

/** Paragraphs, with the empty ones left out. */
export function paragraphs(...parts: readonly (string | null | false | undefined)[]): string {
  return parts.filter((part) => typeof part === 'string' && part !== '').join('\n\n');
}

/** `as written` for a deviation: `+12`, `−7`, `0`. */
export function signedWhole(value: number): string {
  const rounded = Math.round(value * 10) / 10;
  if (rounded === 0) return '0';
  return `${rounded < 0 ? '−' : '+'}${Math.abs(rounded)}`;
}
