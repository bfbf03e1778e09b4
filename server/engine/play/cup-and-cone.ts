/** Loose balls in a cup. */
export interface BallRing {
  readonly count: number;
  /** Ball diameter and diameter of the circle of ball centres, mm. */
  readonly diameter: number;
  readonly circle: number;
}

/** Gap that is left between loose balls, all of them pushed together: along the chord circle, mm; negative does not fit. */
export function gapBetweenBalls({ count, diameter, circle }: BallRing): number {
  const chordAngle = 2 * Math.asin(Math.min(1, diameter / circle));
  return ((2 * Math.PI - count * chordAngle) * circle) / 2;
}

/** The most balls that lie on a circle side by side, π / asin(Dw / Dpw) rounded down. */
export function mostBalls(diameter: number, circle: number): number {
  if (!(0 < diameter && diameter < circle)) return 0;
  // The last digit of the arcsine must not cost a ball that touches its neighbours exactly.
  return Math.floor(Math.PI / Math.asin(diameter / circle) + 1e-9);
}

/**
 * Play to leave on the bench so that the clamp takes it up and no more, mm: the shortening of the axle between
 * the cones, Σ L/(E·A) in mm/N times the clamp force. The cones ride on the axle's thread, so the stretch runs
 * from the middle of one cone's thread to the middle of the other's.
 */
export function benchPlay(axleCompliance: number, clampForce: number): number {
  return axleCompliance * clampForce;
}

/** Balls a row usually has: one fewer than lie on the circle, so that they never press each other (common practice). */
export function usualBalls(diameter: number, circle: number): number {
  return Math.max(0, mostBalls(diameter, circle) - 1);
}

/** How far a cone on a thread of `pitch` mm turns for an axial travel, mm; rad. */
export function turnOfCone(travel: number, pitch: number): number {
  return (2 * Math.PI * travel) / pitch;
}

/**
 * Diameter of a solid bar that is as stiff as a threaded one, mm: the mean of pitch and minor diameter,
 * d − 0.9382·P, the diameter of the stress area of ISO 898-1.
 */
export function threadStressDiameter(diameter: number, pitch: number): number {
  return diameter - 0.9382 * pitch;
}
