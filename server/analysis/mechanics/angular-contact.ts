import type { StackBearing } from '../../assembly/bearings.ts';
import { type BallGeometry, grooveCentreDistance } from '../../engine/contact/ball-geometry.ts';
import type { Side } from '../../spec/model.ts';

/** How an angular-contact bearing stands. */
export interface AngularContact {
  /** Nominal contact angle, rad; null where neither the code nor the file gives one. */
  readonly angle: number | null;
  /** The side its wide outer-ring face is on; null where nothing is written. */
  readonly back: Side | null;
}

/** The angular contact of a bearing: by its code, or because the file says how it stands. Null for all others. */
export function angularContact({ bearing, part }: StackBearing): AngularContact | null {
  const written = part.values['contact-angle']?.value ?? null;
  const back = part.values['back-face']?.value ?? null;
  if (bearing?.kind !== 'angular-contact' && written === null) return null;
  const degrees = written ?? bearing?.contactAngle ?? null;
  return { angle: degrees === null ? null : (degrees * Math.PI) / 180, back };
}

/**
 * The radial clearance that gives a deep groove bearing this contact angle, 2·m0·(1 − cos α), mm: what the fits
 * take of it lowers the angle, cos α' = 1 − G/(2·m0) (source `nsk-e1102e`, clearance).
 */
export function clearanceAtAngle(geometry: BallGeometry, angle: number): number {
  return 2 * grooveCentreDistance(geometry) * (1 - Math.cos(angle));
}

/** The contact angle that `clearance` mm, mounted, leaves, rad; 0 where the fits have used it up. */
export function angleAtClearance(geometry: BallGeometry, clearance: number): number {
  const share = clearance / (2 * grooveCentreDistance(geometry));
  return share <= 0 ? 0 : Math.acos(Math.max(-1, 1 - share));
}

/** An angle in rad as people read it: `39.4°`. */
export function degreesOf(angle: number): string {
  return `${Number(((angle * 180) / Math.PI).toFixed(1))}°`;
}

/** `39.4° mounted, 40° as made`. */
export function anglesInBrief({ nominal, mounted }: { nominal: number; mounted: number }): string {
  return `${degreesOf(mounted)} mounted, ${degreesOf(nominal)} as made`;
}
