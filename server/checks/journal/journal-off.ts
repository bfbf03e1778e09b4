import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import { length, plain } from '../../engine/base/figures.ts';
import type { Check, Draft } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
import { isOtherSize, journalOf } from '../journal-of.ts';
import { pageHub } from '../page-hub.ts';
import { rewriteFix } from '../rewrite.ts';

/** Axle and bearing bore are of two different sizes. */
export const journalOff: Check = {
  code: 'journal-off',
  group: 'journal',
  severity: 'error',
  summary: 'The axle and the bore of a bearing have different diameters.',
  page: {
    why: 'The bearing does not go onto the axle, or rattles on it. Either the code or the axle was misread.',
    bad: pageHub(['axle: { diameter: 17 h6', 'axle: { diameter: 15 h6']),
    good: pageHub(),
    sources: ['ISO 15, boundary dimensions'],
  },
  run: (analysis) => eachVariant(analysis, (variant) => wrongSize(analysis, variant)),
};

function* wrongSize(analysis: Analysis, variant: VariantAnalysis): Iterable<Draft> {
  const seen = new Set<unknown>();
  for (const bearing of variant.assembly.bearings) {
    const journal = journalOf(variant, bearing);
    const decoded = bearing.bearing;
    if (!journal || !decoded || seen.has(journal.placed.path)) continue;
    const off = journal.placed.value.nominal - decoded.bore;
    if (!isOtherSize(journal.placed.value, decoded.bore)) continue;
    seen.add(journal.placed.path);
    yield {
      path: journal.placed.path,
      message: `${journal.name} is ${plain(journal.placed.value.nominal)}, the bore of ${bearing.address} ${plain(decoded.bore)}: ${length(Math.abs(off))} mm ${off < 0 ? 'too small' : 'too large'} — check which of the two was misread`,
      related: [
        {
          path: bearing.from,
          message: `${plain(decoded.bore)} × ${plain(decoded.outside)} × ${plain(decoded.width)}`,
        },
      ],
      data: { journal: journal.placed.value.nominal, bore: decoded.bore, off },
      fixes: journal.placed.value.measured
        ? []
        : [
            rewriteFix(analysis, journal.placed, decoded.bore, {
              name: journal.name,
              result: `it carries ${bearing.address}`,
              preferred: false,
            }),
          ],
    };
  }
}
