import type { ServiceSheet, SheetStep } from './service-sheet.ts';

/** The sheet as Markdown: the same words without the pictures. */
export function sheetMarkdown(sheet: ServiceSheet): string {
  const lines = [
    `# ${plain(sheet.title)}`,
    '',
    ...sheet.facts.map(([name, value]) => `- ${name}: ${plain(value)}`),
    ...block('Before you begin', sheet.cautions),
    ...table(
      'Parts, left to right',
      ['Part', 'Code or material', 'Size, mm', 'Note'],
      sheet.parts.map(({ part, what, size, note }) => [part, what, size, note]),
    ),
    ...table(
      'Read and write down',
      ['What', 'Wanted', 'Read'],
      sheet.readings.map(({ what, wanted }) => [what, wanted, '']),
    ),
    ...block('Findings that stand', sheet.findings),
    ...(sheet.locked === null ? [] : ['', `**${plain(sheet.locked)}**`]),
    ...steps('Apart', sheet.apart),
    ...steps('Together', sheet.together),
    ...sheet.care.flatMap(({ title, lines: said }) => block(title, said)),
    ...block('Before it is ridden', sheet.checks),
    ...block('Not known: measure', sheet.measure),
    ...block('Assumed', sheet.assumed),
    '',
    'Computed figures are for comparison. No finding means that nothing was found, not that the hub is safe.',
  ];
  return `${lines.join('\n')}\n`;
}

/** Signs that Markdown would take for its own. */
const plain = (text: string): string => text.replace(/[\\`*_[\]<>|#]/g, '\\$&');

function block(title: string, lines: readonly string[]): readonly string[] {
  return lines.length === 0 ? [] : ['', `## ${plain(title)}`, '', ...lines.map((line) => `- ${plain(line)}`)];
}

function table(
  title: string,
  head: readonly string[],
  rows: readonly (readonly string[])[],
): readonly string[] {
  const row = (cells: readonly string[]): string => `| ${cells.map(plain).join(' | ')} |`;
  return ['', `## ${title}`, '', row(head), `|${head.map(() => ' --- |').join('')}`, ...rows.map(row)];
}

function steps(title: string, list: readonly SheetStep[]): readonly string[] {
  if (list.length === 0) return [];
  return [
    '',
    `## ${title}`,
    '',
    ...list.flatMap(({ number, head, details }) => [
      `${number}. **${plain(head)}**`,
      ...details.map((text) => `   - ${plain(text)}`),
    ]),
  ];
}
