import { type FrictionConstants, sealConstants } from '../tables/friction-constants.ts';
import type { BearingLoad } from './equivalent-load.ts';

/** Friction of a deep groove ball bearing over bore and load: 0.0015 unsealed (source `skf-general-ru`). */
export const ROLLING_FRICTION = 0.0015;
/** Sliding friction of a greased ball bearing that starts from rest, from memory. */
export const STARTING_FRICTION = 0.15;

/** Torque of the load by the rough rule M = µ·P·d/2, N·mm; normal speed, P about a tenth of C. Bore in mm. */
export function loadTorque(equivalentLoad: number, bore: number, friction = ROLLING_FRICTION): number {
  return 0.5 * friction * equivalentLoad * bore;
}

/** A deep groove bearing whose friction is asked for. */
export interface RubbingBearing {
  readonly constants: FrictionConstants;
  /** Mean of bore and outside diameter, mm. */
  readonly meanDiameter: number;
  /** C0, N. */
  readonly staticRating: number;
}

/**
 * Torque to start a deep groove bearing turning from rest, without its seals, N·mm: Msl = µ·Gsl (source
 * `skf-general-ru`). What the fingers feel of an axial load; grease and cage are not in it.
 */
export function startingTorque(
  { constants, meanDiameter, staticRating }: RubbingBearing,
  { radial, axial }: BearingLoad,
  friction = STARTING_FRICTION,
): number {
  const { s1, s2 } = constants;
  if (axial <= 0) return friction * s1 * meanDiameter ** -0.26 * radial ** (5 / 3);
  const term = (s2 * meanDiameter ** 1.5 * axial ** 4) / Math.sin(frictionAngle(axial, staticRating));
  return friction * s1 * meanDiameter ** -0.145 * (radial ** 5 + term) ** (1 / 3);
}

/** Rolling torque at a speed (1/min) in a lubricant (mm²/s), Mrr = Grr·(ν·n)^0.6, N·mm (source `skf-general-ru`). */
export function rollingTorque(
  { constants, meanDiameter, staticRating }: RubbingBearing,
  { radial, axial }: BearingLoad,
  speed: number,
  viscosity: number,
): number {
  const extra = axial > 0 ? (constants.r2 * axial) / Math.sin(frictionAngle(axial, staticRating)) : 0;
  const grr = constants.r1 * meanDiameter ** 1.96 * (radial + extra) ** 0.54;
  return grr * (viscosity * speed) ** 0.6;
}

/** How a seal touches its ring. */
export type SealKind = keyof typeof sealConstants;

/**
 * Torque of the lips of one bearing, N·mm: both lips, half of it for one (source `skf-general-ru`). `lip` is the
 * diameter that the lip rubs on, mm. Null above the sizes of the table.
 */
export function sealTorque(kind: SealKind, outside: number, lip: number, lips: 1 | 2 = 2): number | null {
  const row = sealConstants[kind].find(({ upTo }) => outside <= upTo);
  if (!row) return null;
  const both = row.factor === 0 ? 0 : row.factor * lip ** row.power + row.constant;
  return (both * lips) / 2;
}

/** Least radial load so that balls roll and do not skid, N: kr·(ν·n/1000)^⅔·(dm/100)²·1000 (source `skf-2017`). */
export function leastRadialLoad(kr: number, viscosity: number, speed: number, meanDiameter: number): number {
  return 1000 * kr * ((viscosity * speed) / 1000) ** (2 / 3) * (meanDiameter / 100) ** 2;
}

/** Angle at which an axial load works in the friction model, 24.6°·(Fa/C0)^0.24, rad. */
function frictionAngle(axial: number, staticRating: number): number {
  return ((24.6 * Math.PI) / 180) * (axial / staticRating) ** 0.24;
}
