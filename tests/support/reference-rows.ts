import { readFileSync } from 'node:fs';
import { join } from 'node:path';

/** A row of a reference table by column name. */
export type ReferenceRow = Readonly<Record<string, string>>;

/** The rows of a CSV file under `tests/reference`, first line as names; quoted cells may hold commas. */
export function rowsOf(file: string): readonly ReferenceRow[] {
  const text = readFileSync(join(import.meta.dirname, '..', 'reference', file), 'utf8');
  const [names = [], ...lines] = text.trimEnd().split('\n').map(cells);
  return lines.map((line) => Object.fromEntries(names.map((name, i) => [name, line[i] ?? ''])));
}

/** The records of a JSON file under `tests/reference`. */
export function recordsOf<T>(file: string): readonly T[] {
  return JSON.parse(readFileSync(join(import.meta.dirname, '..', 'reference', file), 'utf8')) as T[];
}

function cells(line: string): string[] {
  const found: string[] = [];
  // A comma before the first cell makes every cell begin alike; an empty first cell would be skipped otherwise.
  for (const match of `,${line}`.matchAll(/,(?:"((?:[^"]|"")*)"|([^",]*))/g)) {
    found.push((match[1] ?? match[2] ?? '').replaceAll('""', '"'));
  }
  return found;
}
