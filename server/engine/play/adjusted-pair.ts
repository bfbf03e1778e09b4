import { axialSpring, offsetOfSpring } from './pair-equilibrium.ts';
import { type PairSide, travel } from './pair-side.ts';

/**
 * Mismatch δ at which an adjuster that squeezes the inner rings together leaves `play` (mm, unclamped), mm. Clamp
 * and temperature then act on it as on a spacer of that length.
 */
export function mismatchForPlay(left: PairSide, right: PairSide, play: number): number {
  return play - travel(left, 'inward') - travel(right, 'inward');
}

/**
 * Mismatch δ at which an adjuster presses both bearings with `preload` N before anything else is clamped, mm. The
 * shell between the stops gives way by `housingCompliance`, mm/N.
 */
export function mismatchForPreload(
  left: PairSide,
  right: PairSide,
  preload: number,
  housingCompliance: number,
): number {
  const squeezed = offsetOfSpring(axialSpring(left.bearing), preload) - left.flush;
  const other = offsetOfSpring(axialSpring(right.bearing), preload) - right.flush;
  return -(squeezed + other + preload * housingCompliance);
}

/** A wave washer behind a ring that can slide. */
export interface WaveWasher {
  /** Free height and height as assembled, mm. */
  readonly free: number;
  readonly assembled: number;
  /** N/mm */
  readonly rate: number;
}

/** Preload that a wave washer gives a pair, N; zero where it is not reached. Play is then taken up, axially soft. */
export function waveWasherPreload({ free, assembled, rate }: WaveWasher): number {
  return Math.max(0, free - assembled) * rate;
}

/**
 * Preload of a wave washer after the gap it fills changes by `change` (mm, positive opens it), N: clamping and
 * temperature move it by their travel times its rate, little against a stiff pair.
 */
export function waveWasherPreloadAfter(washer: WaveWasher, change: number): number {
  return waveWasherPreload({ ...washer, assembled: washer.assembled + change });
}
