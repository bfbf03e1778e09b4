import { type CodeAction, CodeActionKind, type Range } from 'vscode-languageserver-types';
import { spacerRewrites } from '../checks/play/spacer-rewrites.ts';
import type { Snapshot } from '../workspace/workspace.ts';
import { positionsOf } from './positions.ts';
import { bringsNothingNew } from './sound-fixes.ts';
import { textEdits } from './text-edits.ts';

/** "What should I write?": other lengths and tolerances for the spacer that a range stands on, each checked beforehand. */
export function spacerActions(
  snapshot: Snapshot,
  range: Range,
  { uri, version }: { readonly uri: string; readonly version: number | null },
): CodeAction[] {
  const { document, analysis, findings } = snapshot;
  const positions = positionsOf(document);
  const at = document.pathAt(positions.offset(range.start));
  if (!at?.path.includes('length')) return [];
  const place = JSON.stringify(at.path);
  // What a finding at this place already offers is not offered twice.
  const offered = findings.findings
    .filter(({ path }) => JSON.stringify(path) === place)
    .flatMap(({ fixes }) => fixes.map(({ changes }) => JSON.stringify(changes)));
  return spacerRewrites(analysis, at.path)
    .filter((fix) => !offered.includes(JSON.stringify(fix.changes)) && bringsNothingNew(snapshot, fix))
    .map((fix) => ({
      title: fix.title,
      kind: CodeActionKind.RefactorRewrite,
      edit: {
        documentChanges: [
          { textDocument: { uri, version }, edits: textEdits(fix, document.text, positions, false) },
        ],
      },
    }));
}
