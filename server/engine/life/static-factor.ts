import {
  type BearingElasticity,
  ballContact,
  ballForceAtStress,
  DENT_STRESS,
} from '../contact/ball-contact.ts';
import type { BallGeometry } from '../contact/ball-geometry.ts';

/**
 * Static rating straight from Hertz, N: the radial load whose heaviest ball, Qmax = 5·Fr/(Z·cos α), reaches `stress`
 * (source `iso-76`, note to Table 1: 4200 MPa, E = 207 GPa, ν = 0.3). It serves grooves and materials that the
 * table does not cover, ceramic balls among them. α in rad.
 */
export function staticRatingFromStress(
  geometry: BallGeometry,
  angle: number,
  elasticity: BearingElasticity,
  stress = DENT_STRESS,
): number {
  const ball = ballForceAtStress(ballContact(geometry, angle, elasticity), stress);
  return (ball * geometry.count * Math.cos(angle)) / 5;
}

/** Share of the rating that ceramic balls leave, a pure number: how far they raise stress at the same force. */
export function staticRatingShare(
  geometry: BallGeometry,
  angle: number,
  elasticity: BearingElasticity,
  steel: BearingElasticity,
): number {
  const own = staticRatingFromStress(geometry, angle, elasticity);
  return own / staticRatingFromStress(geometry, angle, steel);
}
