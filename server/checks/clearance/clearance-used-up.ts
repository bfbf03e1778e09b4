import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import { micrometres } from '../../engine/base/figures.ts';
import type { Check, Draft } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
import { pageHub } from '../page-hub.ts';
import { restsOnCoarseReading } from '../seat/coarse-readings.ts';
import { clearanceData, placeOfClearance, relatedClearance } from './clearance-talk.ts';
import { isTightElsewhere } from './fit-counts.ts';
import { clearanceFixes } from './looser.ts';

const shell: readonly [string, string] = [
  '  between-shoulders',
  '  outside: 40\n  material: aluminium 6061-T6\n  between-shoulders',
];

/** The fits leave a bearing no internal clearance. */
export const clearanceUsedUp: Check = {
  code: 'clearance-used-up',
  group: 'clearance',
  severity: 'error',
  summary: 'The press fit uses up the internal clearance of a bearing.',
  page: {
    why: 'A ring pressed into its seat shrinks, and its raceway with it. The clearance between the rings and the balls goes by about half of the interference in a light alloy shell, by more in a stiff one. Below nothing the balls are squeezed all round: the bearing turns hard, warms and wears, whatever the spacer does.',
    bad: pageHub(shell, ['left: { bore: 26 N7', 'left: { bore: 26 P7']),
    good: pageHub(shell),
    sources: [
      'ISO 5753, radial internal clearance',
      'ISO 286 and ISO 492, interference of seat and ring',
      'thick cylinders of two materials (Lamé)',
    ],
  },
  run: (analysis) => eachVariant(analysis, (variant) => usedUp(analysis, variant)),
};

function* usedUp(analysis: Analysis, variant: VariantAnalysis): Iterable<Draft> {
  const seen = new Set<string>();
  for (const bearing of variant.mechanics('built').bearings) {
    const { mounted, free, address } = bearing;
    if (!mounted || !free || 0 < mounted.mean || isTightElsewhere(analysis, bearing)) continue;
    // A reading that cannot tell one fit from the next says no more of the clearance.
    if (restsOnCoarseReading(analysis, variant, bearing)) continue;
    const path = placeOfClearance(variant, bearing);
    const place = JSON.stringify(path);
    if (seen.has(place)) continue;
    seen.add(place);
    const before = (free.lo + free.hi) / 2;
    const fixes = clearanceFixes(analysis, variant, bearing, '');
    yield {
      path,
      message: `${address} has ${micrometres(mounted.mean)} of radial clearance mounted, wanted more than 0: the fits take ${micrometres(before - mounted.mean)} of ${micrometres(before)} — a looser seat or a larger clearance group`,
      related: relatedClearance(variant, bearing),
      data: clearanceData(bearing),
      fixes,
    };
  }
}
