import type { SpecDocument, SpecKind } from './document.ts';
import { readHub } from './read-hub.ts';
import { readWheel } from './read-wheel.ts';
import { readWorkshop } from './read-workshop.ts';

/** Reads a file of a kind: as much of the model as could be read, and the problems. Never throws. */
export function readSpec(text: string, kind: SpecKind): SpecDocument {
  if (kind === 'hub') return readHub(text);
  return kind === 'wheel' ? readWheel(text) : readWorkshop(text);
}

/** The kind a file's name says: `NAME.hub.yaml`, `NAME.wheel.yaml`, `NAME.workshop.yaml` (or `.yml`); null for any other. */
export function specKindOf(fileName: string): SpecKind | null {
  const match = /\.(hub|wheel|workshop)\.ya?ml$/i.exec(fileName);
  return match?.[1] ? (match[1].toLowerCase() as SpecKind) : null;
}
