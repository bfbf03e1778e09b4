import type { Range, SnippetTextEdit, TextEdit } from 'vscode-languageserver-types';
import type { Fix, TextChange } from '../spec/problem.ts';
import type { Positions } from './positions.ts';

/** The changes of a fix as edits; the one with the cursor's stop as a snippet where the client takes those. */
export function textEdits(
  fix: Fix,
  text: string,
  positions: Positions,
  snippets: boolean,
): (TextEdit | SnippetTextEdit)[] {
  return fix.changes.map((change) => {
    const range = positions.range(change.span);
    const snippet = fix.snippet && snippets && hasStop(change.text) ? snippetOf(change, text) : null;
    if (snippet !== null) return { range, snippet: { kind: 'snippet', value: snippet } };
    return plainEdit(range, fix.snippet ? withoutStops(change.text) : change.text);
  });
}

const plainEdit = (range: Range, newText: string): TextEdit => ({ range, newText });

/** The text a snippet leaves behind when nobody types into its stops. */
export function withoutStops(snippet: string): string {
  return snippet
    .replace(
      /(?<!\\)\$(?:\d+|\{\d+(?::((?:\\.|[^}\\])*))?\}|\{\d+\|((?:\\.|[^,|\\])*)[^}]*\})/g,
      (_, held, first) => held ?? first ?? '',
    )
    .replace(/\\([\\$}])/g, '$1');
}

const hasStop = (text: string): boolean => /(?<!\\)\$(\d|\{)/.test(text);

/**
 * Editors indent the further lines of an inserted snippet like the line it is inserted in; that much is taken
 * off here, so that the text lands as written. Null where a line stands further left and cannot be said so.
 */
function snippetOf(change: TextChange, text: string): string | null {
  const lineStart =
    Math.max(text.lastIndexOf('\n', change.span.start - 1), text.lastIndexOf('\r', change.span.start - 1)) +
    1;
  const indent = /^[ \t]*/.exec(text.slice(lineStart, change.span.start))?.[0] ?? '';
  const [first = '', ...rest] = change.text.split(/\r\n|\r|\n/);
  if (indent === '' || rest.length === 0) return change.text;
  if (rest.some((line) => line.trim() !== '' && !line.startsWith(indent))) return null;
  return [first, ...rest.map((line) => line.slice(Math.min(indent.length, line.length)))].join('\n');
}
