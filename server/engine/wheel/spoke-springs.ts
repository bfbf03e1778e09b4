import type { SpokeDirection } from './spoke-line.ts';

/** The rim as a ring of constant section. */
export interface RimStiffness {
  /** Radius on which the spokes take hold, mm. */
  readonly radius: number;
  /** E·I against bending in its plane, N·mm². */
  readonly radial: number;
  /** E·I against bending sideways, N·mm². */
  readonly lateral: number;
  /** G·J against twisting, N·mm². */
  readonly torsional: number;
  /** E·A, N; null where the section is not known, which makes the rim inextensible. */
  readonly axial: number | null;
}

/** Spokes that run alike, as springs on the rim. */
export interface SpokeSprings {
  readonly count: number;
  /** −1 pulls to the left, 1 to the right. */
  readonly side: -1 | 1;
  readonly direction: SpokeDirection;
  /** Centre to centre, mm. */
  readonly span: number;
  /** EA of a plain wire that stretches as much, N. */
  readonly axial: number;
  /** N */
  readonly tension: number;
}

/** Stiffness of the spokes spread round the rim, N/mm²: of their wire, and of their tension apart. */
export interface SpokeBed {
  readonly lateral: number;
  readonly radial: number;
  readonly tangential: number;
  /** What a sideways move does radially; 0 for a wheel alike on both sides. */
  readonly lateralRadial: number;
  /** The part that the tension adds sideways. */
  readonly lateralOfTension: number;
  /** Pull towards the axle, N per mm of rim. */
  readonly pull: number;
}

/**
 * Spreads the spokes round the rim (source `ford-wheel`): k = 1/(2πR)·Σ [EA/L·n·nᵀ + T/L·(1 − n·nᵀ)], n the
 * direction of a spoke.
 */
export function spokeBed(spokes: readonly SpokeSprings[], radius: number): SpokeBed {
  const bed = { lateral: 0, radial: 0, tangential: 0, lateralRadial: 0, lateralOfTension: 0, pull: 0 };
  for (const { count, side, direction, span, axial, tension } of spokes) {
    const { lateral: c1, radial: c2, tangential: c3 } = direction;
    const share = count / (2 * Math.PI * radius);
    const wire = (share * axial) / span;
    const pulled = (share * tension) / span;
    bed.lateralOfTension += pulled * (1 - c1 * c1);
    bed.lateral += wire * c1 * c1 + pulled * (1 - c1 * c1);
    bed.radial += wire * c2 * c2 + pulled * (1 - c2 * c2);
    bed.tangential += wire * c3 * c3 + pulled * (1 - c3 * c3);
    bed.lateralRadial += side * (wire - pulled) * c1 * c2;
    bed.pull += share * tension * c2;
  }
  return bed;
}
