import type { BallGeometry } from './ball-geometry.ts';

/** Which ring a ball touches. */
export type RingSide = 'inner' | 'outer';

/** Principal curvatures of two touching bodies, as Hertz needs them. */
export interface Curvature {
  /** Sum of the four principal curvatures, 1/mm. */
  readonly sum: number;
  /** Relative difference of the curvatures in the two planes, 0 (round contact) to 1 (line contact). */
  readonly difference: number;
}

/**
 * Curvature of a ball against its groove (Harris, Rolling Bearing Analysis, ball bearing geometry;
 * γ = Dw·cos α / Dpw). Holds for grooves wider than the ball, conformity above 0.5: at 0.5 the difference is 1
 * and the contact has no finite length. Contact angle `angle` in rad.
 */
export function grooveCurvature(geometry: BallGeometry, side: RingSide, angle: number): Curvature {
  const gamma = (geometry.diameter * Math.cos(angle)) / geometry.pitch;
  const across = 1 / (side === 'inner' ? geometry.innerConformity : geometry.outerConformity);
  const along = side === 'inner' ? (2 * gamma) / (1 - gamma) : (-2 * gamma) / (1 + gamma);
  const total = 4 - across + along;
  return { sum: total / geometry.diameter, difference: (across + along) / total };
}
