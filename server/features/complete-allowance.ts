import { checks } from '../checks/registry.ts';
import type { Span } from '../spec/place.ts';
import type { Snapshot } from '../workspace/workspace.ts';
import type { Suggestion } from './completion-item.ts';

/** In a comment: `# allow CODE because …`, the codes found below it first. Null outside of a comment. */
export function allowSuggestions(
  { document, findings }: Snapshot,
  offset: number,
): { readonly suggestions: readonly Suggestion[]; readonly replace: Span } | null {
  const lineStart =
    Math.max(document.text.lastIndexOf('\n', offset - 1), document.text.lastIndexOf('\r', offset - 1)) + 1;
  const before = document.text.slice(lineStart, offset);
  const hash = /(?:^|[ \t])#/.exec(before);
  if (!hash || inQuotes(before.slice(0, hash.index))) return null;
  const wanted = /#[ \t]*(?:(a(?:l(?:lo?)?)?|allow[ \t]+([a-z-]*)|allow)?)$/.exec(before);
  const none = { suggestions: [], replace: { start: offset, end: offset } };
  if (!wanted) return none;
  const start = lineStart + before.lastIndexOf('#');
  const end = offset + (/^[a-z-]*/.exec(document.text.slice(offset))?.[0].length ?? 0);
  const found = findings.findings.filter(({ span }) => offset <= span.start).map(({ code }) => code);
  const allowable = checks.filter(({ group }) => group !== 'text' && group !== 'reference');
  const rank = (code: string): number => found.indexOf(code) + 1 || Number.MAX_SAFE_INTEGER;
  const sorted = allowable.toSorted((a, b) => rank(a.code) - rank(b.code) || (a.code < b.code ? -1 : 1));
  return {
    suggestions: sorted.map(({ code, summary }) => ({
      label: `allow ${code}`,
      text: `# allow ${code} because \${1:reason}`,
      kind: 'name',
      detail: summary,
      filter: `# allow ${code}`,
      usual: found[0] === code,
    })),
    replace: { start, end },
  };
}

const inQuotes = (text: string): boolean => (text.match(/"/g)?.length ?? 0) % 2 === 1;
