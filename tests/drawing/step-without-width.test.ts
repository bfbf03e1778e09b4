import { expect, test } from 'vitest';
import type { VariantAnalysis } from '../../server/analysis/analyze.ts';
import { serviceSheet } from '../../server/report/sheet/service-sheet.ts';
import { sheetHtml } from '../../server/report/sheet/sheet-html.ts';
import { lookAt, samples } from '../robustness/samples.ts';

/** Sheet of a sample whose first bearing is written with a width. */
function sheetWith(width: string): string {
  const sample = samples.find(({ name }) => name === 'dunlin-front.hub.yaml');
  const text = sample?.text.replace(/( +)code: 6803-2RS\n/, `$&$1width: ${width}\n`) ?? '';
  expect(text).toContain(`width: ${width}`);
  const snapshot = lookAt('dunlin-front.hub.yaml', text);
  return sheetHtml(serviceSheet(snapshot, snapshot.analysis.variants[0] as VariantAnalysis));
}

const pictures = (sheet: string): number => sheet.split('hw-arrow').length - 1;

test('a bearing without width has no picture of its own step, and no picture has a place that is no number', () => {
  const [whole, none] = [sheetWith('5'), sheetWith('0')];
  expect(none).not.toContain('NaN');
  expect(none).not.toContain('Infinity');
  expect(pictures(none)).toBeLessThan(pictures(whole));
  expect(pictures(none)).toBeGreaterThan(0);
});
