import type { BuildSheet, SheetTable } from './build-sheet.ts';

/** The build sheet as Markdown: the same words without the pictures. */
export function buildSheetMarkdown(sheet: BuildSheet): string {
  const grid = sheet.readings.flatMap(({ side, count, read }) =>
    table(`Readings ${side}, N, from the valve on`, {
      titles: Array.from({ length: count }, (_, at) => String(at + 1)),
      rows: [Array.from({ length: count }, (_, at) => String(read[at] ?? ''))],
    }),
  );
  const lines = [
    `# ${plain(sheet.title)}`,
    '',
    ...sheet.facts.map(([name, value]) => `- ${name}: ${plain(value)}`),
    ...block('Before you begin', sheet.cautions, '-'),
    ...table('Parts', sheet.parts),
    ...table('Lengths', sheet.lengths),
    ...block('Findings that stand', sheet.findings, '-'),
    ...block('Lacing; rim holes count from the valve, clockwise as seen from the right', sheet.lacing, '1.'),
    ...block('Tension wanted', sheet.tension, '-'),
    ...table('True within', sheet.truing),
    ...grid,
    ...block('Order of work', sheet.work, '1.'),
    ...block('Not known: measure', sheet.measure, '-'),
    ...block('Assumed', sheet.assumed, '-'),
    '',
    'Computed figures are for comparison. No finding means that nothing was found, not that the wheel is safe.',
  ];
  return `${lines.join('\n')}\n`;
}

/** Signs that Markdown would take for its own. */
const plain = (text: string): string => text.replace(/[\\`*_[\]<>|#]/g, '\\$&');

function block(title: string, lines: readonly string[], mark: string): readonly string[] {
  return lines.length === 0
    ? []
    : ['', `## ${plain(title)}`, '', ...lines.map((line) => `${mark} ${plain(line)}`)];
}

function table(title: string, { titles, rows }: SheetTable): readonly string[] {
  const row = (cells: readonly string[]): string => `| ${cells.map(plain).join(' | ')} |`;
  const rule = `|${titles.map(() => ' --- |').join('')}`;
  return rows.length === 0 ? [] : ['', `## ${plain(title)}`, '', row(titles), rule, ...rows.map(row)];
}
