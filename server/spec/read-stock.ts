import { readNames } from './read-names.ts';
import { readNumbers } from './read-numbers.ts';
import {
  type Entry,
  entriesOf,
  type Reader,
  readEntries,
  sectionMap,
  valueProblem,
} from './section-reader.ts';
import { readCount } from './small-values.ts';
import type { Workshop } from './workshop-model.ts';

/** What is on the shelf. */
export function readStock(reader: Reader, entry: Entry | null): Workshop['stock'] {
  const path = ['stock'];
  const map = entry
    ? sectionMap(reader, entry, path, 'keys of its own, such as bearings and shims').map
    : null;
  const entries = map ? entriesOf(reader, map, path) : [];
  readEntries(reader, entries, map, path, 'workshop:stock');
  const at = (key: string): Entry | null => entries.find((e) => e.key === key) ?? null;
  const shims = at('shims');
  return {
    bearings: readNames(
      reader,
      at('bearings'),
      [...path, 'bearings'],
      'codes with counts, such as 6803-2RS: 12',
      (item, where) => {
        const reading = readCount(item.written ?? '', 'how many there are', 0, 1e6, '12');
        if ('value' in reading) return { value: reading.value, path: where };
        reader.problems.push(valueProblem(reader, item, reading.problem, { path: where }));
        return null;
      },
    ),
    spokes: readNames(
      reader,
      at('spokes'),
      [...path, 'spokes'],
      'profiles with lengths, such as 2.0/1.8/2.0: [289, 291]',
      (item, where) => readNumbers(reader, item, where, '[289, 291]'),
    ),
    shims: shims ? readNumbers(reader, shims, [...path, 'shims'], '[0.1, 0.2]') : null,
  };
}
