import type { VariantAnalysis } from '../analysis/analyze.ts';
import type { StackBearing } from '../assembly/bearings.ts';
import type { Dimension } from '../spec/model.ts';
import type { Placed } from '../spec/place.ts';

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
    return Math.abs(axle.value.nominal - bearing.bore) <= sameSize;
  });
}
