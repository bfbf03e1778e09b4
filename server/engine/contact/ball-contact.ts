import type { BallGeometry } from './ball-geometry.ts';
import { grooveCurvature } from './curvature.ts';
import { bearingSteel, contactModulus, type Elastic } from './elasticity.ts';
import {
  forceAtStress,
  type PointContact,
  type PressedContact,
  pointContact,
  pressContact,
} from './point-contact.ts';

/** What rings and balls are made of. */
export interface BearingElasticity {
  readonly ring: Elastic;
  readonly ball: Elastic;
}

/** Rings and balls of bearing steel. */
export const allSteel: BearingElasticity = { ring: bearingSteel, ball: bearingSteel };

/** One ball between its two grooves. */
export interface BallContact {
  readonly inner: PointContact;
  readonly outer: PointContact;
  /** Force over total approach of the rings to the power 1.5, both contacts in series, N/mm^1.5. */
  readonly stiffness: number;
}

/**
 * Greatest contact stress that leaves a dent of about a ten-thousandth of the ball diameter, MPa: the definition
 * of the static rating of ball bearings (source `iso-76`).
 */
export const DENT_STRESS = 4200;

/** A ball between inner and outer groove at a contact angle (rad); the curvature is taken at that angle. */
export function ballContact(
  geometry: BallGeometry,
  angle: number,
  elasticity: BearingElasticity = allSteel,
): BallContact {
  const modulus = contactModulus(elasticity.ring, elasticity.ball);
  const inner = pointContact(grooveCurvature(geometry, 'inner', angle), modulus);
  const outer = pointContact(grooveCurvature(geometry, 'outer', angle), modulus);
  const stiffness = (inner.stiffness ** (-2 / 3) + outer.stiffness ** (-2 / 3)) ** -1.5;
  return { inner, outer, stiffness };
}

/** Both contacts of a ball under a force along its contact line, N. */
export interface PressedBall {
  readonly inner: PressedContact;
  readonly outer: PressedContact;
  /** The greater of the two greatest stresses, MPa. */
  readonly maxStress: number;
}

/** Ellipses and stresses of one ball under `force` N. */
export function pressBall(contact: BallContact, force: number): PressedBall {
  const inner = pressContact(contact.inner, force);
  const outer = pressContact(contact.outer, force);
  return { inner, outer, maxStress: Math.max(inner.maxStress, outer.maxStress) };
}

/** The force on one ball that brings its worse contact to `stress` MPa, N; 4200 MPa unless said. */
export function ballForceAtStress(contact: BallContact, stress = DENT_STRESS): number {
  return Math.min(forceAtStress(contact.inner, stress), forceAtStress(contact.outer, stress));
}
