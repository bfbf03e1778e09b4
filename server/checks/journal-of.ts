import type { VariantAnalysis } from '../analysis/analyze.ts';
import type { StackBearing } from '../assembly/bearings.ts';
import type { Dimension } from '../spec/model.ts';

import type { Placed } from '../spec/place.ts';
import { isFitted, plainlyApart } from './seat/fitted.ts';

/** The diameter a bearing stands on: its own `journal`, else the axle's diameter. */
export function journalOf(
  variant: VariantAnalysis,
  bearing: StackBearing,
): { readonly placed: Placed<Dimension>; readonly name: string } | null {
  const own = bearing.part.values.journal;
  if (own) return { placed: own, name: `journal of ${bearing.address}` };
  const axle = variant.assembly.hub.axle?.values.diameter;
  return axle ? { placed: axle, name: 'diameter of the axle' } : null;
}

/** Nominals further apart than this, mm, are two sizes and not a fit. */
export const sameSize = 0.2;

/** Whether the axle has the diameter of every bearing that stands on it without a journal of its own. */
export function axleSuitsBearings(variant: VariantAnalysis): boolean {
  const axle = variant.assembly.hub.axle?.values.diameter;
  return variant.assembly.bearings.every(({ part, bearing }) => {
    if (!axle || !bearing || part.values.journal) return true;
    return !isOtherSize(axle.value, bearing.bore);
  });
}

/**
 * Whether a journal is of another size than a bore, mm. Without a tolerance it may be drawn under the bore by its
 * clearance, never over it.
 */
export function isOtherSize(journal: Dimension, bore: number): boolean {
  const off = journal.nominal - bore;
  return (0 < off && !isFitted(journal) ? plainlyApart : sameSize) < Math.abs(off);
}

/** Mean interference, mm, that a hand still pushes on: above it the ring is pressed. */
export const pushesOn = 0.005;
