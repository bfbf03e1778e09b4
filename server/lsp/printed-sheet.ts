import type { SheetAnswer } from '../protocol/requests.ts';
import { buildSheet } from '../report/sheet/build-sheet.ts';
import { buildSheetHtml } from '../report/sheet/build-sheet-html.ts';
import { buildSheetMarkdown } from '../report/sheet/build-sheet-markdown.ts';
import { serviceSheet } from '../report/sheet/service-sheet.ts';
import { sheetHtml } from '../report/sheet/sheet-html.ts';
import { sheetMarkdown } from '../report/sheet/sheet-markdown.ts';
import type { Snapshot } from '../workspace/workspace.ts';

/**
 * The service sheet of one variant, an unknown name being the hub as written, or the build sheet of a wheel; null for a file
 * that is neither.
 */
export function printedSheet(snapshot: Snapshot, wanted: string | null): SheetAnswer | null {
  const wheel = buildSheet(snapshot);
  if (wheel) {
    const { title } = wheel;
    return { title, variants: [null], html: buildSheetHtml(wheel), markdown: buildSheetMarkdown(wheel) };
  }
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
