import type { SpecPath } from './place.ts';
import { type Entry, entriesOf, type Reader, sectionMap } from './section-reader.ts';

/** Each entry of a section of names, read; what cannot be read is left out. */
export function readNames<T>(
  reader: Reader,
  entry: Entry | null,
  path: SpecPath,
  wanted: string,
  read: (item: Entry, path: SpecPath) => T | null,
): Readonly<Record<string, T>> {
  if (!entry) return {};
  const { map } = sectionMap(reader, entry, path, wanted);
  const names: Record<string, T> = {};
  for (const item of map ? entriesOf(reader, map, path) : []) {
    const value = read(item, [...path, item.key]);
    if (value !== null && item.key !== '__proto__') names[item.key] = value;
  }
  return names;
}
