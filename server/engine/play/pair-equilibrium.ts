import type { AxialBearing } from '../contact/axial-load.ts';

/** A bearing reduced to what its axial force depends on. */
export interface AxialSpring {
  /** Distance of the groove centres at the first touch, m0, mm. */
  readonly reach: number;
  /** Radial distance of the groove centres as mounted, m0 − G/2, mm. */
  readonly centres: number;
  /** All balls together, N/mm^1.5. */
  readonly stiffness: number;
}

/** The spring of a mounted bearing. */
export function axialSpring(bearing: AxialBearing): AxialSpring {
  return {
    reach: bearing.reach,
    centres: bearing.centres,
    stiffness: bearing.geometry.count * bearing.stiffness,
  };
}

/** A loaded pair. */
export interface PairLoad {
  /** Axial force, the same on both bearings, N. */
  readonly force: number;
  /** Offset of each bearing from its groove centres, mm, zero or more. */
  readonly left: number;
  readonly right: number;
}

/** Offsets are found to this, mm. */
const CLOSE_ENOUGH = 1e-9;

/**
 * Two bearings squeezed against each other: their offsets, measured from the groove centres in the direction of
 * squeezing, and what the parts in series give way (`compliance`, mm/N) add up to `closing`, mm; both carry the
 * same force. Below the sum of the two half-ranges nothing is loaded. One root in one unknown, the left offset:
 * the left force rises and the right force falls with it, so Newton's steps are kept in a bracket that shrinks.
 */
export function loadPair(
  left: AxialSpring,
  right: AxialSpring,
  closing: number,
  compliance: number,
): PairLoad {
  const touchLeft = touch(left);
  const touchRight = touch(right);
  if (closing <= touchLeft + touchRight) return { force: 0, left: touchLeft, right: touchRight };
  let lo = touchLeft;
  let hi = closing - touchRight;
  let s = touchLeft + (closing - touchLeft - touchRight) / 2;
  for (let step = 0; step < 100; step++) {
    const force = springForce(left, s);
    const rest = closing - s - compliance * force;
    const difference = force - springForce(right, rest);
    if (difference > 0) hi = s;
    else lo = s;
    const rise = springRise(left, s);
    const slope = rise + springRise(right, rest) * (1 + compliance * rise);
    const newton = s - difference / slope;
    const next = lo < newton && newton < hi ? newton : (lo + hi) / 2;
    if (Math.abs(next - s) < CLOSE_ENOUGH || hi - lo < CLOSE_ENOUGH) {
      s = next;
      break;
    }
    s = next;
  }
  const force = springForce(left, s);
  return { force, left: s, right: closing - s - compliance * force };
}

/** Offset from the groove centres at which a spring carries `force` N, mm. */
export function offsetOfSpring(spring: AxialSpring, force: number): number {
  const start = touch(spring);
  if (!(force > 0)) return start;
  let lo = start;
  let hi = start + 0.01 * spring.reach;
  for (let step = 0; step < 60 && springForce(spring, hi) < force; step++) {
    lo = hi;
    hi += hi - start;
  }
  for (let step = 0; step < 80 && hi - lo > CLOSE_ENOUGH / 100; step++) {
    const middle = (lo + hi) / 2;
    if (springForce(spring, middle) < force) lo = middle;
    else hi = middle;
  }
  return (lo + hi) / 2;
}

/** Axial force of a spring at an offset from its groove centres, N; zero short of the first touch. */
export function springForce({ reach, centres, stiffness }: AxialSpring, offset: number): number {
  if (offset <= 0) return 0;
  const apart = Math.sqrt(offset * offset + centres * centres);
  const approach = apart - reach;
  return approach > 0 ? (stiffness * approach * Math.sqrt(approach) * offset) / apart : 0;
}

/** Rise of the force with the offset, N/mm. */
function springRise({ reach, centres, stiffness }: AxialSpring, offset: number): number {
  if (offset <= 0) return 0;
  const square = offset * offset + centres * centres;
  const apart = Math.sqrt(square);
  const approach = apart - reach;
  if (approach <= 0) return 0;
  return (
    (stiffness * Math.sqrt(approach) * (1.5 * offset * offset + (approach * centres * centres) / apart)) /
    square
  );
}

/** Travel from the groove centres to the first touch, mm; zero where the fits leave no clearance. */
export function touch({ reach, centres }: AxialSpring): number {
  return centres < reach ? Math.sqrt(reach * reach - centres * centres) : 0;
}
