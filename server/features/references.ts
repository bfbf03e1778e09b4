import type { Location, Position } from 'vscode-languageserver-types';
import type { Snapshot } from '../workspace/workspace.ts';
import type { Neighbours } from './definition.ts';
import { type Occurrence, occurrenceAt, occurrencesIn } from './occurrences.ts';
import { positionsOf } from './positions.ts';

/** Everywhere what stands at a position is spoken of, in this file and in those that name it. */
export function references(
  snapshot: Snapshot,
  position: Position,
  around: Neighbours,
  withDefinition: boolean,
): Location[] {
  return namesakes(snapshot, position, around)
    .filter(({ occurrence }) => withDefinition || occurrence.role === 'use')
    .map(({ occurrence, snapshot: other }) => ({
      uri: around.uriOf(other.file),
      range: positionsOf(other.document).range(occurrence.span),
    }));
}

/** Every occurrence of what stands at a position with the snapshot it is in. */
export function namesakes(
  snapshot: Snapshot,
  position: Position,
  around: Neighbours,
): readonly { readonly occurrence: Occurrence; readonly snapshot: Snapshot }[] {
  const found =
    occurrenceAt(snapshot, positionsOf(snapshot.document).offset(position)) ?? fileAt(snapshot, position);
  if (!found) return [];
  const home = found.id.slice(0, found.id.lastIndexOf('#'));
  const files = new Set([home, snapshot.file, ...around.dependents(home)]);
  return [...files].flatMap((file) => {
    const other = file === snapshot.file ? snapshot : around.snapshot(file);
    return (other ? occurrencesIn(other) : [])
      .filter(({ id }) => id === found.id)
      .map((occurrence) => ({ occurrence, snapshot: other as Snapshot }));
  });
}

/** The name of a hub stands for its file: who builds a wheel on it? */
function fileAt({ document, file }: Snapshot, position: Position): Pick<Occurrence, 'id'> | null {
  const name = document.hub?.values.hub;
  if (!name) return null;
  const offset = positionsOf(document).offset(position);
  const { start, end } = document.span(name.path);
  return start <= offset && offset <= end ? { id: `${file}#file` } : null;
}
