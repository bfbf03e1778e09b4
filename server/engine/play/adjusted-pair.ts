import { axialSpring, offsetOfSpring } from './pair-equilibrium.ts';
import { type PairSide, travel } from './pair-side.ts';

/**
 * Mismatch δ at which an adjuster leaves `play` (mm, unclamped), mm: near the end of the travel where the inner
 * rings come together, or where they go apart. Clamp and temperature then act on it as on a spacer of that length.
 */
export function mismatchForPlay(
  left: PairSide,
  right: PairSide,
  play: number,
  way: 'inward' | 'outward' = 'inward',
): number {
  const missing = play - travel(left, way) - travel(right, way);
  return way === 'inward' ? missing : -missing;
}

/**
 * Mismatch δ at which an adjuster presses both bearings with `preload` N before anything else is clamped, mm: inner
 * rings together or apart. The
 * shell between the stops gives way by `housingCompliance`, mm/N.
 */
export function mismatchForPreload(
  left: PairSide,
  right: PairSide,
  preload: number,
  housingCompliance: number,
  way: 'inward' | 'outward' = 'inward',
): number {
  const squeezed = offsetOfSpring(axialSpring(left.bearing), preload) - left.flush;
  const other = offsetOfSpring(axialSpring(right.bearing), preload) - right.flush;
  const pressed = squeezed + other + preload * housingCompliance;
  return way === 'inward' ? -pressed : pressed;
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
