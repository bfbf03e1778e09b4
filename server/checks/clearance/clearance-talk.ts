import type { VariantAnalysis } from '../../analysis/analyze.ts';
import type { MountedBearing, RingFit } from '../../analysis/mechanics/mounted-bearing.ts';
import { length, micrometres } from '../../engine/base/figures.ts';
import type { Related } from '../check.ts';
import { journalOf } from '../journal-of.ts';
import { findSeat } from '../seat-of.ts';

/** What takes the clearance of a bearing: its group, its seat and its journal, each with what it takes. */
export function relatedClearance(variant: VariantAnalysis, mounted: MountedBearing): readonly Related[] {
  const { stack, free, outerFit, innerFit, assumed } = mounted;
  const address = stack.part.values.seat?.value;
  const bore = address === undefined ? undefined : findSeat(variant, address)?.seat.values.bore;
  const journal = journalOf(variant, stack);
  const group = stack.bearing?.clearance.group;
  const taken = assumed.length > 0 ? `; ${assumed.join('; ')}` : '';
  return [
    {
      path: stack.from,
      message: `group ${group}: ${length((free?.lo ?? 0) * 1000, 0)} to ${micrometres(free?.hi ?? 0)} before mounting${taken}`,
    },
    ...(bore && outerFit ? [{ path: bore.path, message: `${address}: ${sayFit(outerFit)}` }] : []),
    ...(journal && innerFit && 0 < innerFit.fit.clearanceLoss
      ? [{ path: journal.placed.path, message: `${journal.name}: ${sayFit(innerFit)}` }]
      : []),
  ];
}

const sayFit = ({ interference, fit }: RingFit): string =>
  `${micrometres(interference.mean)} of interference after smoothing takes ${micrometres(fit.clearanceLoss)}`;

/** The numbers of a mounted bearing for `data`: µm and MPa. */
export function clearanceData({
  free,
  mounted,
  outerFit,
  innerFit,
}: MountedBearing): Record<string, unknown> {
  return {
    freeUm: free ? [free.lo * 1000, free.hi * 1000] : null,
    mountedUm: mounted ? [mounted.least * 1000, mounted.mean * 1000, mounted.most * 1000] : null,
    seatInterferenceUm: outerFit ? outerFit.interference.mean * 1000 : null,
    seatPressure: outerFit ? outerFit.fit.pressure : null,
    lossUm: ((outerFit?.fit.clearanceLoss ?? 0) + (innerFit?.fit.clearanceLoss ?? 0)) * 1000,
  };
}

/** Where it is said: the bore of the seat that takes the clearance, else the code of the bearing. */
export function placeOfClearance(
  variant: VariantAnalysis,
  { stack, outerFit }: MountedBearing,
): Related['path'] {
  const address = stack.part.values.seat?.value;
  const bore = address === undefined ? undefined : findSeat(variant, address)?.seat.values.bore;
  return bore && outerFit ? bore.path : stack.from;
}
