/** Deviations of a hole or a shaft from the nominal size that both share, mm. */
export interface Deviations {
  readonly lower: number;
  readonly upper: number;
}

export type FitKind = 'clearance' | 'transition' | 'interference';

export interface Fit {
  /** Smallest hole on the largest shaft; negative is interference, mm. */
  readonly minClearance: number;
  /** Largest hole on the smallest shaft; negative is interference, mm. */
  readonly maxClearance: number;
  readonly kind: FitKind;
}

/**
 * The fit of a hole and a shaft of one nominal size (ISO 286-1, terms of a fit). A fit whose least clearance
 * is zero counts as clearance, one whose greatest is zero or less as interference.
 */
export function fit(hole: Deviations, shaft: Deviations): Fit {
  const minClearance = hole.lower - shaft.upper;
  const maxClearance = hole.upper - shaft.lower;
  return { minClearance, maxClearance, kind: fitKind(minClearance, maxClearance) };
}

function fitKind(minClearance: number, maxClearance: number): FitKind {
  if (minClearance >= 0) return 'clearance';
  return maxClearance <= 0 ? 'interference' : 'transition';
}
