import { type SourceKind, sources } from '../engine/base/sources.ts';

/** What a source is called on screen: standards by their number, catalogues without the maker's name. */
export function sourceWords(text: string): string {
  const named = entries.reduce((said, { title, shown }) => said.replaceAll(title, shown), text);
  return named.replace(/\s*\([^)]*CAT\.[^)]*\)/g, '');
}

interface Named {
  readonly title: string;
  readonly kind: SourceKind;
}

/** Longer titles first: one may begin another. */
const entries = Object.values(sources)
  .map((source: Named) => ({ title: source.title, shown: shownAs(source) }))
  .toSorted((a, b) => b.title.length - a.title.length);

function shownAs({ title, kind }: Named): string {
  if (kind === 'catalogue') return "a maker's printed tables";
  return title.replace(/, read as .*$/, '');
}
