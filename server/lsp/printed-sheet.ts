import type { SheetAnswer } from '../protocol/requests.ts';
import { serviceSheet } from '../report/sheet/service-sheet.ts';
import { sheetHtml } from '../report/sheet/sheet-html.ts';
import { sheetMarkdown } from '../report/sheet/sheet-markdown.ts';
import type { Snapshot } from '../workspace/workspace.ts';

/** The service sheet of one variant, an unknown name being the hub as written; null for a file that is no hub. */
export function printedSheet(snapshot: Snapshot, wanted: string | null): SheetAnswer | null {
  const { variants } = snapshot.analysis;
  const variant = variants.find(({ name }) => name === wanted) ?? variants[0];
  if (!variant) return null;
  const sheet = serviceSheet(snapshot, variant);
  return {
    title: sheet.title,
    variants: variants.map(({ name }) => name),
    html: sheetHtml(sheet),
    markdown: sheetMarkdown(sheet),
  };
}
