import type { FollowedReference } from '../analysis/analyze.ts';
import type { SpecDocument } from '../spec/document.ts';
import { nearestOf } from '../spec/nearest.ts';
import type { Placed } from '../spec/place.ts';
import { isInside, nameOf, relativeTo, resolveReference } from './location.ts';

/** What following a reference needs to know of the files around. */
export interface FileView {
  /** The file as read, or null where there is none. */
  readonly read: (file: string) => SpecDocument | null;
  readonly files: () => Iterable<string>;
  /** Folders of the workspace; empty when the file stands alone. */
  readonly roots: readonly string[];
}

/** Follows the references a file writes: a wheel names its hub. */
export function followReferences(
  file: string,
  document: SpecDocument,
  view: FileView,
): readonly FollowedReference[] {
  const hub = document.wheel?.values.hub;
  return hub ? [follow(file, hub, view)] : [];
}

function follow(file: string, reference: Placed<string>, view: FileView): FollowedReference {
  const base = { path: reference.path, written: reference.value };
  const target = resolveReference(file, reference.value);
  const root = view.roots.find((folder) => isInside(folder, file));
  if (target === null || (root !== undefined && !isInside(root, target))) {
    return { ...base, state: { kind: 'outside-workspace' } };
  }
  const through = chainFrom(file, target, view);
  if (through) return { ...base, state: { kind: 'circular', through: through.map(nameOf) } };
  const found = view.read(target);
  if (!found) return { ...base, state: { kind: 'not-found', near: nearFiles(file, target, view) } };
  if (found.kind !== 'hub') return { ...base, state: { kind: 'wrong-kind', wanted: 'hub' } };
  return { ...base, state: { kind: 'found', file: target, document: found } };
}

/** The files from a target back to the file that names it, when the references run in a circle. */
function chainFrom(file: string, target: string, view: FileView): readonly string[] | null {
  const chain = [target];
  const seen = new Set<string>();
  let current = target;
  while (!seen.has(current)) {
    if (current === file) return chain;
    seen.add(current);
    const written = view.read(current)?.wheel?.values.hub?.value;
    const next = written === undefined ? null : resolveReference(current, written);
    if (next === null) return null;
    chain.push(next);
    current = next;
  }
  return null;
}

/** Hub files with a name like the one written, as they would be written from here. */
function nearFiles(file: string, target: string, view: FileView): readonly string[] {
  const folder = file.slice(0, file.lastIndexOf('/'));
  const hubs = [...view.files()].filter((other) => other.endsWith('.hub.yaml') && isInside(folder, other));
  const names = hubs.map((other) => relativeTo(folder, other));
  const near = nearestOf(relativeTo(folder, target), names, 4);
  return near === null ? [] : [`./${near}`];
}
