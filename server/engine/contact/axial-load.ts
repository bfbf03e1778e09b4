import { allSteel, type BallContact, type BearingElasticity, ballContact } from './ball-contact.ts';
import { type BallGeometry, grooveCentreDistance } from './ball-geometry.ts';

/**
 * A bearing as mounted, ready to be pushed along its axle. Offsets are inner ring less outer ring, measured from
 * where the groove centres stand opposite each other, mm; rings stay round and square.
 */
export interface AxialBearing {
  readonly geometry: BallGeometry;
  readonly elasticity: BearingElasticity;
  /** Distance of the groove centres at which balls just touch, m0, mm. */
  readonly reach: number;
  /** Radial distance of the groove centres as mounted, m0 − G/2, mm; above `reach` the balls are squeezed radially. */
  readonly centres: number;
  /** One ball through both contacts, N/mm^1.5, at the free contact angle. */
  readonly stiffness: number;
  readonly contact: BallContact;
  /** False where the clearance is so great that the rings can slide through each other, or a groove is closer than the ball. */
  readonly valid: boolean;
}

/** A bearing pushed to one offset. */
export interface AxialState {
  /** Inner ring less outer ring from the groove centres, mm. */
  readonly offset: number;
  /** Axial force on the bearing, with the sign of the offset, N. */
  readonly force: number;
  /** Force on each ball along its contact line, N. */
  readonly ballForce: number;
  /** Contact angle as loaded, rad. */
  readonly angle: number;
  /** Approach of the two rings along the contact line, mm. */
  readonly approach: number;
}

/**
 * A bearing with mounted radial clearance `clearance` (mm, diametral; zero or negative where the fits use it up).
 * One expression serves both signs: the groove centres stand m0 − G/2 apart. Source Harris, Rolling Bearing
 * Analysis, ball bearings under thrust load (Jones); the stiffness is held at the free contact angle, which
 * moves it by under 1 % over the angles of a deep groove.
 */
export function axialBearing(
  geometry: BallGeometry,
  clearance: number,
  elasticity: BearingElasticity = allSteel,
): AxialBearing {
  const reach = grooveCentreDistance(geometry);
  const centres = reach - clearance / 2;
  const free = Math.acos(Math.min(1, Math.max(-1, centres / reach)));
  const contact = ballContact(geometry, free, elasticity);
  const valid = reach > 0 && centres > 0 && contact.inner.valid && contact.outer.valid;
  return { geometry, elasticity, reach, centres, stiffness: contact.stiffness, contact, valid };
}

/** An angular-contact bearing from its nominal contact angle (rad), less the clearance that its fits take (mm, diametral). */
export function angularBearing(
  geometry: BallGeometry,
  nominalAngle: number,
  clearanceLoss = 0,
  elasticity: BearingElasticity = allSteel,
): AxialBearing {
  const atAngle = 2 * grooveCentreDistance(geometry) * (1 - Math.cos(nominalAngle));
  return axialBearing(geometry, atAngle - clearanceLoss, elasticity);
}

/** Axial travel from the groove centres to the first touch, mm; zero where the fits leave no clearance. */
export function axialHalfRange({ reach, centres }: AxialBearing): number {
  return centres < reach ? Math.sqrt(reach * reach - centres * centres) : 0;
}

/** Force, ball force and contact angle at an axial offset, mm. */
export function axialState(bearing: AxialBearing, offset: number): AxialState {
  const { reach, centres, stiffness, geometry } = bearing;
  const apart = Math.hypot(offset, centres);
  const approach = Math.max(0, apart - reach);
  const ballForce = stiffness * approach * Math.sqrt(approach);
  const angle = Math.atan2(Math.abs(offset), centres);
  const force = geometry.count * ballForce * (offset / apart);
  return { offset, force, ballForce, angle, approach };
}

/** The offset, from the groove centres, at which a bearing carries an axial `force` of at least zero, mm. */
export function offsetAtForce(bearing: AxialBearing, force: number): number {
  const touch = axialHalfRange(bearing);
  if (!(force > 0)) return touch;
  let lo = touch;
  let hi = touch + 0.01 * bearing.reach;
  for (let step = 0; step < 60 && axialState(bearing, hi).force < force; step++) hi += hi - touch;
  for (let step = 0; step < 80; step++) {
    const middle = (lo + hi) / 2;
    if (axialState(bearing, middle).force < force) lo = middle;
    else hi = middle;
    if (hi - lo < 1e-13) break;
  }
  return (lo + hi) / 2;
}

/** Rise of axial force with axial offset at an offset, N/mm. */
export function axialRigidity(bearing: AxialBearing, offset: number): number {
  const { reach, centres, stiffness, geometry } = bearing;
  const apart = Math.hypot(offset, centres);
  const approach = apart - reach;
  if (approach <= 0) return 0;
  const sine = offset / apart;
  const root = Math.sqrt(approach);
  const along = 1.5 * root * sine * sine;
  const across = (approach * root * centres * centres) / (apart * apart * apart);
  return geometry.count * stiffness * (along + across);
}
