import { isSeq } from 'yaml';
import { makeProblem } from './make-problem.ts';
import type { Placed, SpecPath } from './place.ts';
import { readNames } from './read-names.ts';
import {
  type Entry,
  entriesOf,
  type Reader,
  readEntries,
  sectionMap,
  valueProblem,
} from './section-reader.ts';
import { readCount, readNumber } from './small-values.ts';
import type { Workshop } from './workshop-model.ts';
import { asScalar, isEmpty, nodeSpan, writtenOf } from './yaml-text.ts';

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

/** A list of numbers, or one alone; one that is no number is reported and left out. mm */
function readNumbers(
  reader: Reader,
  entry: Entry,
  path: SpecPath,
  example: string,
): Placed<readonly number[]> | null {
  const items = isSeq(entry.value) ? entry.value.items : [entry.value];
  if (isEmpty(entry.value)) return null;
  const numbers: number[] = [];
  for (const [i, node] of items.entries()) {
    const scalar = asScalar(node);
    const span = nodeSpan(reader.yaml, node) ?? entry.keySpan;
    if (!scalar) {
      const message = `${entry.key} is a list of numbers, such as ${example}`;
      reader.problems.push(
        makeProblem('value-not-understood', message, entry.keySpan, { data: { key: entry.key, path } }),
      );
      return null;
    }
    const written = writtenOf(reader.yaml, scalar).replace(/\s*mm\s*$/, '');
    const reading = readNumber(written, 'a number', 0, 1e4, example);
    if ('value' in reading) numbers.push(reading.value);
    else {
      const { code, message } = reading.problem;
      reader.problems.push(
        makeProblem(code, `${entry.key}: ${message}`, span, { data: { key: entry.key, path: [...path, i] } }),
      );
    }
  }
  return { value: numbers, path };
}
