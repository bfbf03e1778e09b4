import type { Location, Position } from 'vscode-languageserver-types';
import type { Snapshot } from '../workspace/workspace.ts';
import { occurrenceAt, occurrencesIn } from './occurrences.ts';
import { positionsOf } from './positions.ts';

/** What the features that go from file to file are given beside a snapshot. */
export interface Neighbours {
  readonly snapshot: (file: string) => Snapshot | null;
  /** Files whose findings may change with this one. */
  readonly dependents: (file: string) => readonly string[];
  readonly uriOf: (file: string) => string;
}

/** Where what stands at a position is given its name: a part, a seat, a variant, a hub file, a code of the house. */
export function definition(snapshot: Snapshot, position: Position, around: Neighbours): Location[] {
  const found = occurrenceAt(snapshot, positionsOf(snapshot.document).offset(position));
  if (!found) return [];
  const file = found.id.slice(0, found.id.lastIndexOf('#'));
  const other = file === snapshot.file ? snapshot : around.snapshot(file);
  if (!other) return [];
  if (found.id === `${file}#file`) return [top(other, around)];
  const { range } = positionsOf(other.document);
  return occurrencesIn(other)
    .filter(({ id, role }) => id === found.id && role === 'definition')
    .map(({ span }) => ({ uri: around.uriOf(other.file), range: range(span) }));
}

/** A file as a whole: its name where it has one, else its first line. */
function top({ document, file }: Snapshot, { uriOf }: Neighbours): Location {
  const name = document.hub?.values.hub ?? document.wheel?.values.wheel;
  const span = name ? document.span(name.path) : { start: 0, end: 0 };
  return { uri: uriOf(file), range: positionsOf(document).range(span) };
}
