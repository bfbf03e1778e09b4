import type { Position, Range, TextDocumentEdit, WorkspaceEdit } from 'vscode-languageserver-types';
import type { Snapshot } from '../workspace/workspace.ts';
import type { Neighbours } from './definition.ts';
import { occurrenceAt, occurrencesIn } from './occurrences.ts';
import { positionsOf } from './positions.ts';
import { namesakes } from './references.ts';

/** The name that would be changed; null where there is none, or where a file would have to be renamed. */
export function renameRange(snapshot: Snapshot, position: Position): Range | null {
  const { offset, range } = positionsOf(snapshot.document);
  const found = occurrenceAt(snapshot, offset(position));
  return found && !found.id.endsWith('#file') ? range(found.span) : null;
}

/** Why a name cannot be given. */
export interface Refused {
  readonly refused: string;
}

/**
 * Another name for a part, a seat, a variant or a house code, everywhere at once: in the hub, in the wheels built on
 * it, in the hubs below the workshop file. Refused where the name is taken or would not be read as one word.
 */
export function rename(
  snapshot: Snapshot,
  position: Position,
  name: string,
  around: Neighbours & { readonly versionOf: (file: string) => number | null },
): WorkspaceEdit | Refused | null {
  if (!renameRange(snapshot, position)) return null;
  if (!/^[\p{L}\p{N}][\p{L}\p{N}_-]*$/u.test(name))
    return { refused: `${name === '' ? 'nothing' : name} is no name: letters, digits, - and _ are wanted` };
  const places = namesakes(snapshot, position, around);
  const [first] = places;
  if (!first) return null;
  const taken = `${first.occurrence.id.replace(/[^:.#]+$/, '')}${name}`;
  const home = around.snapshot(first.occurrence.id.slice(0, first.occurrence.id.lastIndexOf('#')));
  const clash = [home, snapshot].some(
    (one) => one && occurrencesIn(one).some(({ id, role }) => id === taken && role === 'definition'),
  );
  if (clash && taken !== first.occurrence.id) return { refused: `${name} is taken already` };
  const byFile = new Map<string, TextDocumentEdit>();
  for (const { occurrence, snapshot: other } of places) {
    const known = byFile.get(other.file) ?? {
      textDocument: { uri: around.uriOf(other.file), version: around.versionOf(other.file) },
      edits: [],
    };
    known.edits.push({ range: positionsOf(other.document).range(occurrence.span), newText: name });
    byFile.set(other.file, known);
  }
  return { documentChanges: [...byFile.values()] };
}
