import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import { settle } from '../../assembly/settle.ts';
import { micrometres, plain } from '../../engine/base/figures.ts';
import { setValue } from '../../spec/edit.ts';
import type { Check, Draft } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
import { interference, sayInterference } from '../fit-of.ts';
import { journalOf, pushesOn } from '../journal-of.ts';
import { pageHub } from '../page-hub.ts';
import { isDecided, isFitted } from '../seat/fitted.ts';

/** The inner ring is pressed onto the axle, or has far too much room on it. */
export const journalFitOff: Check = {
  code: 'journal-fit-off',
  group: 'journal',
  severity: 'warning',
  summary: 'The inner ring does not slide on its axle as it should.',
  page: {
    why: 'The inner ring of a wheel stands still under the load and may slide: that is how the stack closes when it is clamped, and how the axle comes out again. Pressed on, it is expanded and takes clearance from the bearing; far too loose, the axle knocks and wears. h6 and g6 are usual.',
    bad: pageHub(['diameter: 17 h6', 'diameter: 17 m6']),
    good: pageHub(),
    sources: [
      'ISO 286, limits of the axle',
      'ISO 492, deviation of the bore',
      'makers’ fit tables for a standing inner ring',
    ],
  },
  run: (analysis) => eachVariant(analysis, (variant) => fitOff(analysis, variant)),
};

function* fitOff(analysis: Analysis, variant: VariantAnalysis): Iterable<Draft> {
  const seen = new Set<unknown>();
  for (const bearing of variant.assembly.bearings) {
    const journal = journalOf(variant, bearing);
    const decoded = bearing.bearing;
    if (!journal || !decoded || !bearing.bore || !isFitted(journal.placed.value)) continue;
    const settled = settle(journal.placed, variant.assembly.rules);
    if (seen.has(settled.path) || 0.2 < Math.abs(settled.drawn.nominal - decoded.bore)) continue;
    const fit = interference(bearing.bore, settled);
    const most = analysis.limits.value('journal-clearance');
    if (!isDecided(settled, fit, -most, pushesOn)) continue;
    if (-most <= fit.mean && fit.mean <= pushesOn) continue;
    seen.add(settled.path);
    const tight = 0 < fit.mean;
    yield {
      path: journal.placed.path,
      message: `${journal.placed.value.written} under ${bearing.address}: ${sayInterference(fit)}, wanted ${tight ? 'a sliding fit' : `${micrometres(most)} of clearance at most`} — ${plain(decoded.bore)} h6 or g6 is usual`,
      related: [
        {
          path: bearing.from,
          message: `bore ${plain(decoded.bore)} +0/−${(-bearing.bore.drawn.lower * 1000).toFixed(0)} µm`,
        },
      ],
      data: { leastUm: fit.least * 1000, meanUm: fit.mean * 1000, mostUm: fit.most * 1000 },
      fixes: journal.placed.value.measured
        ? []
        : ['h6', 'g6'].map((name, index) => ({
            title: `Change the ${journal.name} to ${plain(decoded.bore)} ${name}, usual under a standing inner ring`,
            changes: setValue(analysis.spec, journal.placed.path, `${plain(decoded.bore)} ${name}`),
            preferred: index === 0,
          })),
    };
  }
}
