/** Axial clearance of a bearing from its radial clearance. */
export interface AxialClearance {
  /** Whole axial travel from stop to stop, mm; zero where there is no radial clearance. */
  readonly axial: number;
  /** Contact angle at the end of the travel, rad. */
  readonly freeAngle: number;
  /** False where the clearance exceeds twice the groove centre distance: the rings would slide through each other. */
  readonly valid: boolean;
}

/**
 * Ga = √(4·m0·G − G²) and cos α0 = 1 − G/(2·m0) for rings pushed square and without load (source `nsk-e1102e`,
 * clearance; Harris, Rolling Bearing Analysis). `centreDistance` m0 = ri + re − Dw and `radial` (mounted, G) in mm.
 * Valid for G ≤ 2·m0.
 */
export function axialClearance(centreDistance: number, radial: number): AxialClearance {
  const valid = centreDistance > 0 && radial <= 2 * centreDistance;
  if (radial <= 0) return { axial: 0, freeAngle: 0, valid };
  return {
    axial: Math.sqrt(Math.max(0, 4 * centreDistance * radial - radial * radial)),
    freeAngle: Math.acos(Math.max(-1, 1 - radial / (2 * centreDistance))),
    valid,
  };
}
