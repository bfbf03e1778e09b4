import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import { micrometres } from '../../engine/base/figures.ts';
import type { Check, Draft } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
import { pageHub } from '../page-hub.ts';
import { celsius, serviceRange } from '../service-range.ts';
import { clearanceData, placeOfClearance, relatedClearance } from './clearance-talk.ts';
import { isTightElsewhere } from './fit-counts.ts';
import { clearanceFixes } from './looser.ts';

const shell: readonly [string, string] = [
  '  between-shoulders',
  '  outside: 40\n  material: aluminium 6061-T6\n  between-shoulders',
];

const looser: readonly [string, string] = ['code: 6803-2RS\n', 'code: 6803-2RS C3\n'];

/** A shell that shrinks onto the ring in the cold and leaves no clearance. */
export const clearanceCold: Check = {
  code: 'clearance-cold',
  group: 'clearance',
  severity: 'warning',
  summary: 'In the cold the shell shrinks onto a bearing and uses up its clearance.',
  page: {
    why: 'Light alloy shrinks twice as much as steel. A seat that is right on the bench grips harder in frost, and the ring it squeezes takes the clearance from the balls: the wheel that ran free in the workshop turns stiffly in winter. A looser class or a larger clearance group leaves room at both ends of the range.',
    bad: `temperature: -10..40 °C\n${pageHub(shell)}`,
    good: `temperature: -10..40 °C\n${pageHub(shell, looser, looser)}`,
    sources: [
      'ISO 5753, radial internal clearance',
      'thermal expansion of the materials as their tables print it',
      'thick cylinders of two materials (Lamé)',
    ],
  },
  run: (analysis) => eachVariant(analysis, (variant) => cold(analysis, variant)),
};

function* cold(analysis: Analysis, variant: VariantAnalysis): Iterable<Draft> {
  const range = serviceRange(analysis, variant);
  if (!range) return;
  const bench = variant.mechanics('built').bearings;
  const { bearings } = variant.mechanics('built', { temperature: range.lo, clampForce: null });
  const seen = new Set<string>();
  for (const [index, bearing] of bearings.entries()) {
    const { mounted, address } = bearing;
    const warm = bench[index];
    if (!mounted || !warm?.mounted || 0 < mounted.mean || warm.mounted.mean <= 0) continue;
    if (isTightElsewhere(analysis, warm)) continue;
    const path = placeOfClearance(variant, bearing);
    const place = JSON.stringify(path);
    if (seen.has(place)) continue;
    seen.add(place);
    const where = ` at ${celsius(range.lo)}`;
    yield {
      path,
      message: `${address} has ${micrometres(mounted.mean)} of radial clearance${where}${range.said}, wanted more than 0 as on the bench, where it has ${micrometres(warm.mounted.mean)}: the cold takes ${micrometres(warm.mounted.mean - mounted.mean)} — a looser seat or a larger clearance group`,
      related: [...relatedClearance(variant, bearing), ...range.related],
      data: { ...clearanceData(bearing), temperature: range.lo, benchUm: warm.mounted.mean * 1000 },
      // With another fit the play is another: the best length is a question for afterwards.
      doubts: [path],
      fixes: clearanceFixes(analysis, variant, bearing, where),
    };
  }
}
