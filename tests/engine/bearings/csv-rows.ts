import { readFileSync } from 'node:fs';

/** Rows of a table under tests/reference/standards, by column name; quoted fields may hold commas and quotes. */
export function csvRows(name: string): readonly Readonly<Record<string, string>>[] {
  const file = new URL(`../../reference/standards/${name}.csv`, import.meta.url);
  const [head, ...rows] = readFileSync(file, 'utf8').trim().split(/\r?\n/).map(splitLine);
  return rows.map((cells) => Object.fromEntries((head ?? []).map((column, i) => [column, cells[i] ?? ''])));
}

function splitLine(line: string): readonly string[] {
  const cells: string[] = [];
  for (const match of line.matchAll(/(?:^|,)(?:"((?:[^"]|"")*)"|([^,]*))/g)) {
    cells.push(match[1] === undefined ? (match[2] ?? '') : match[1].replace(/""/g, '"'));
  }
  return cells;
}
