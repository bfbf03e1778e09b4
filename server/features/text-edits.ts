import type { SnippetTextEdit, TextEdit } from 'vscode-languageserver-types';
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
    const snippet = fix.snippet && snippets && hasStop(change.text) ? snippetOf(change, text) : null;
    if (snippet) {
      return { range: positions.range(snippet.span), snippet: { kind: 'snippet', value: snippet.text } };
    }
    const newText = fix.snippet ? withoutStops(change.text) : change.text;
    return { range: positions.range(change.span), newText };
  });
}

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
 * Editors indent the further lines of an inserted snippet like the line it is inserted in. Whole lines are
 * therefore inserted at the start of the next line, where there is nothing to indent by; otherwise that much is
 * taken off here. Null where neither gives the text as written.
 */
function snippetOf(change: TextChange, text: string): TextChange | null {
  const { start, end } = change.span;
  const [first = '', ...rest] = change.text.split(/\r\n|\r|\n/);
  const lineStart = Math.max(text.lastIndexOf('\n', start - 1), text.lastIndexOf('\r', start - 1)) + 1;
  const indent = /^[ \t]*/.exec(text.slice(lineStart, start))?.[0] ?? '';
  if (indent === '' || rest.length === 0) return change;
  const lineBreak = /^(?:\r\n|\r|\n)/.exec(text.slice(end, end + 2))?.[0];
  if (start === end && first === '' && lineBreak) {
    const next = end + lineBreak.length;
    return { span: { start: next, end: next }, text: `${rest.join(lineBreak)}${lineBreak}` };
  }
  if (rest.some((line) => line.trim() !== '' && !line.startsWith(indent))) return null;
  const lines = rest.map((line) => line.slice(Math.min(indent.length, line.length)));
  return { ...change, text: [first, ...lines].join('\n') };
}
