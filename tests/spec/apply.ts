import type { Fix, TextChange } from '../../server/spec/problem.ts';

/** The text after changes whose spans are all of the text before. */
export function apply(text: string, changes: readonly TextChange[]): string {
  return changes
    .toSorted((a, b) => b.span.start - a.span.start || b.span.end - a.span.end)
    .reduce((done, { span, text: put }) => done.slice(0, span.start) + put + done.slice(span.end), text);
}

/** The text after a fix; a cursor stop becomes `stop`. */
export function applyFix(text: string, fix: Fix, stop = ''): string {
  const done = apply(text, fix.changes);
  return fix.snippet ? done.replace('$0', stop).replaceAll('\\$', '$') : done;
}
