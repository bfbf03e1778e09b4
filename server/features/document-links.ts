import type { DocumentLink } from 'vscode-languageserver-types';
import type { Snapshot } from '../workspace/workspace.ts';
import { positionsOf } from './positions.ts';

/** Links to the files a file names, where they are there. */
export function documentLinks(snapshot: Snapshot, uriOf: (file: string) => string): DocumentLink[] {
  const { document, analysis } = snapshot;
  const { range } = positionsOf(document);
  return analysis.surroundings.references.flatMap(({ path, state }) =>
    state.kind === 'found' ? [{ range: range(document.span(path)), target: uriOf(state.file) }] : [],
  );
}
