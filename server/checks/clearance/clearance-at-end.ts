import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import { micrometres } from '../../engine/base/figures.ts';
import type { Draft } from '../check.ts';
import { restsOnCoarseReading } from '../seat/coarse-readings.ts';
import { celsius, serviceRange } from '../service-range.ts';
import { clearanceData, placeOfClearance, relatedClearance } from './clearance-talk.ts';
import { isTightElsewhere } from './fit-counts.ts';
import { clearanceFixes } from './looser.ts';

/** Bearings that have clearance on the bench and none at one end of the service temperatures. */
export function* clearanceAtEnd(
  analysis: Analysis,
  variant: VariantAnalysis,
  end: 'lo' | 'hi',
): Iterable<Draft> {
  const range = serviceRange(analysis, variant);
  if (!range) return;
  const temperature = range[end];
  const bench = variant.mechanics('built').bearings;
  const { bearings } = variant.mechanics('built', { temperature, clampForce: null });
  const seen = new Set<string>();
  for (const [index, bearing] of bearings.entries()) {
    const { mounted, address } = bearing;
    const before = bench[index];
    if (!mounted || !before?.mounted || 0 < mounted.mean || before.mounted.mean <= 0) continue;
    if (isTightElsewhere(analysis, before) || restsOnCoarseReading(analysis, variant, before)) continue;
    const path = placeOfClearance(variant, bearing);
    const place = JSON.stringify(path);
    if (seen.has(place)) continue;
    seen.add(place);
    const where = ` at ${celsius(temperature)}`;
    const taker = end === 'lo' ? 'the cold' : 'the warmth';
    yield {
      path,
      message: `${address} has ${micrometres(mounted.mean)} of radial clearance${where}${range.said}, wanted more than 0 as on the bench, where it has ${micrometres(before.mounted.mean)}: ${taker} takes ${micrometres(before.mounted.mean - mounted.mean)} — a looser ${looserPart(bearing, before)} or a larger clearance group`,
      related: [...relatedClearance(variant, bearing), ...range.related],
      data: { ...clearanceData(bearing), temperature, benchUm: before.mounted.mean * 1000 },
      // With another fit the play is another: the best length is a question for afterwards.
      doubts: [path],
      fixes: clearanceFixes(analysis, variant, bearing, where),
    };
  }
}

type Mounted = ReturnType<VariantAnalysis['mechanics']>['bearings'][number];

/** The fit whose loss grew most on the way from the bench. */
function looserPart(then: Mounted, bench: Mounted): 'seat' | 'journal' {
  const grown = (fit: 'outerFit' | 'innerFit'): number =>
    (then[fit]?.fit.clearanceLoss ?? 0) - (bench[fit]?.fit.clearanceLoss ?? 0);
  return grown('outerFit') < grown('innerFit') ? 'journal' : 'seat';
}
