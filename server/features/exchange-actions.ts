import { type CodeAction, CodeActionKind, type Range } from 'vscode-languageserver-types';
import { exchangedWords, exchangeNames } from '../analysis/exchange/exchange-words.ts';
import { codeChange, exchanged, placesOf } from '../analysis/exchange/exchanged.ts';
import { alternatives } from '../engine/bearings/interchange.ts';
import type { Snapshot } from '../workspace/workspace.ts';
import { positionsOf } from './positions.ts';
import { textEdits } from './text-edits.ts';

/** What fits instead of the bearing whose code a range stands on, with what it does here; all of its kind together. */
export function exchangeActions(
  snapshot: Snapshot,
  range: Range,
  { uri, version }: { readonly uri: string; readonly version: number | null },
): CodeAction[] {
  const { document, analysis } = snapshot;
  const positions = positionsOf(document);
  const at = document.pathAt(positions.offset(range.start));
  if (at?.path.at(-1) !== 'code' || at.path[0] !== 'stack') return [];
  const place = JSON.stringify(at.path);
  const found = analysis.variants[0]?.assembly.bearings.find(
    ({ part }) => JSON.stringify(part.values.code?.path) === place,
  );
  if (!found?.bearing) return [];
  const places = placesOf(analysis, found.bearing);
  return alternatives(found.bearing).flatMap(({ code, exchange }): readonly CodeAction[] => {
    // Another kind of bearing wants more than its code: which way it is turned, and a spacer to match.
    if (exchange === 'other kind') return [];
    const changes = places.flatMap((address) => codeChange(analysis, address, code) ?? []);
    const [first] = exchanged(analysis, places, code);
    if (changes.length === 0 || !first) return [];
    const many = places.length === 1 ? '' : ` in ${places.length} places`;
    return [
      {
        title: `Use ${code}${many}, ${exchangeNames[exchange]}: ${exchangedWords(first)}`,
        kind: CodeActionKind.RefactorRewrite,
        edit: {
          documentChanges: [
            {
              textDocument: { uri, version },
              edits: textEdits({ title: '', changes }, document.text, positions, false),
            },
          ],
        },
      },
    ];
  });
}
