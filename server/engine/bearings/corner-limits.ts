import { sources } from '../base/sources.ts';
import { chamferLimits, chamferLimitsSource } from '../tables/chamfer-limits.ts';

/** What a ring's corner allows the parts beside it, mm. */
export interface CornerLimits {
  /** Largest chamfer, along the radius and along the axle. */
  readonly radialMost: number;
  readonly axialMost: number;
  /** Largest fillet radius at the foot of a shoulder that the corner still clears. */
  readonly filletMost: number;
  /** Smallest height of a shoulder that carries the ring; null where the table has none for the kind. */
  readonly shoulderLeast: number | null;
  readonly source: string;
}

/**
 * Chamfer limits, fillet and shoulder height for a smallest chamfer and a bore (mm), or null when the table does not
 * hold that chamfer. `angular` asks for the shoulder of an angular contact bearing.
 */
export function cornerLimits(chamferMin: number, bore: number, angular = false): CornerLimits | null {
  const row = chamferLimits.find(
    ([r, over, upTo]) =>
      r === chamferMin && (over === null || over < bore) && (upTo === null || bore <= upTo),
  );
  if (!row) return null;
  const [, , , radialMost, axialMost, filletMost, shoulder, angularShoulder] = row;
  return {
    radialMost,
    axialMost,
    filletMost,
    shoulderLeast: angular ? angularShoulder : shoulder,
    source: sources[chamferLimitsSource].title,
  };
}
