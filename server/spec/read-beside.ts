import { type BesidePart, type BesideValues, besideKinds } from './beside-model.ts';
import type { SpecPath } from './place.ts';
import { itemHead, itemMap } from './read-part.ts';
import { entriesOf, type Reader, readEntries } from './section-reader.ts';

/** A part outside the clamped line, or null where the item says too little to be one. */
export function readBeside(reader: Reader, node: unknown, path: SpecPath): BesidePart | null {
  const map = itemMap(reader, node, besideKinds, 'seal');
  if (!map) return null;
  const entries = entriesOf(reader, map, path);
  const head = itemHead(reader, entries, besideKinds, 'beside:seal', 'seal', path);
  if (!head) return null;
  const rest = entries.filter((entry) => entry !== head.entry);
  const values = readEntries<BesideValues>(reader, rest, map, path, `beside:${head.kind}`, {
    head: head.entry.keySpan,
    lenient: head.guessed,
  });
  return { kind: head.kind, name: head.name, address: `${head.kind}.${head.name}`, path, values };
}
