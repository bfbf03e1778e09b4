/** The balls of one row and the grooves they run in. */
export interface BallGeometry {
  readonly count: number;
  /** Ball diameter, mm. */
  readonly diameter: number;
  /** Pitch diameter of the ball circle, mm. */
  readonly pitch: number;
  /** Radius of the inner groove over the ball diameter; above 0.5. */
  readonly innerConformity: number;
  /** Radius of the outer groove over the ball diameter; above 0.5. */
  readonly outerConformity: number;
}

/**
 * Distance between the centres of the two groove radii when a ball just touches both, m0 = ri + re − Dw, mm.
 * It turns radial clearance into axial clearance and sets the contact angle.
 */
export function grooveCentreDistance(geometry: BallGeometry): number {
  return (geometry.innerConformity + geometry.outerConformity - 1) * geometry.diameter;
}
