import { type AxialBearing, axialHalfRange } from '../contact/axial-load.ts';
import type { LocatedRange } from './pair-play.ts';

/**
 * One bearing of a pair. *Inward* is the inner ring pushed towards the other bearing of the pair, as a short
 * spacer lets the clamp do; *outward* is the inner ring pushed away from it, as a long spacer does.
 */
export interface PairSide {
  readonly bearing: AxialBearing;
  /** Deep groove bearings carry both ways; an angular-contact bearing carries one. */
  readonly carries: 'both' | 'inward' | 'outward';
  /**
   * Offset between the groove centres when the ring faces are flush, mm, in the direction carried: 0 for deep
   * groove, m0·sin α of the nominal angle for angular contact.
   */
  readonly flush: number;
  /** Force that the outer ring's stop or grip holds against being pushed inward and outward, N; Infinity at a shoulder. */
  readonly holdInward: number;
  readonly holdOutward: number;
}

/** A deep groove bearing against its shoulder, held outward by a grip (N). */
export function deepGrooveSide(bearing: AxialBearing, holdOutward: number, holdInward = Infinity): PairSide {
  return { bearing, carries: 'both', flush: 0, holdInward, holdOutward };
}

/** An angular-contact bearing with its nominal angle (rad): faces flush where an unmounted one just touches. */
export function angularSide(
  bearing: AxialBearing,
  nominalAngle: number,
  carries: 'inward' | 'outward',
  holdOutward: number,
  holdInward = Infinity,
): PairSide {
  return { bearing, carries, flush: bearing.reach * Math.sin(nominalAngle), holdInward, holdOutward };
}

/**
 * Travel from flush faces to the first touch inward or outward, mm; Infinity where the bearing does not carry that
 * way, negative where the fits have used up more than there was.
 */
export function travel(side: PairSide, direction: 'inward' | 'outward'): number {
  if (side.carries !== 'both' && side.carries !== direction) return Number.POSITIVE_INFINITY;
  return axialHalfRange(side.bearing) - side.flush;
}

/**
 * The pair as ranges for `pairPlay`, the left bearing at offset 0 and the right at `mismatch` δ, mm. The housing
 * moved to the right leaves the left inner ring outward and the right inner ring inward.
 */
export function pairRanges(left: PairSide, right: PairSide, mismatch: number): LocatedRange[] {
  return [
    { offset: 0, toRight: travel(left, 'outward'), toLeft: travel(left, 'inward') },
    { offset: mismatch, toRight: travel(right, 'inward'), toLeft: travel(right, 'outward') },
  ];
}
