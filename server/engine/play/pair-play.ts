/** One located bearing of a housing. */
export interface LocatedRange {
  /**
   * Inner-ring position less outer-ring position with the housing at x = 0, at the groove centres, mm; the axle
   * points to the right.
   */
  readonly offset: number;
  /** Travel of the housing to the right before this bearing stops it, from offset 0, mm; Infinity where it never does. */
  readonly toRight: number;
  /** The same to the left, mm. */
  readonly toLeft: number;
}

/** Play of a housing on its bearings. */
export interface PairPlay {
  /** Free travel, mm; negative is the travel that is missing, Infinity where nothing stops the housing. */
  readonly play: number;
  /** How far the housing can move right and left of x = 0, mm; their difference is the play. */
  readonly right: number;
  readonly left: number;
  /** Index of the bearing that stops it to the right and to the left; −1 where none does. */
  readonly stopsRight: number;
  readonly stopsLeft: number;
}

/**
 * Play of any number of bearings in one housing: min(e + a⁺) − max(e − a⁻). Two equal bearings with half-range a
 * and mismatch δ have 2a − |δ|. An angular-contact bearing stops the housing one way only. The shape is geometry:
 * no force, rings square, no tilt.
 */
export function pairPlay(bearings: readonly LocatedRange[]): PairPlay {
  let right = Number.POSITIVE_INFINITY;
  let left = Number.NEGATIVE_INFINITY;
  let stopsRight = -1;
  let stopsLeft = -1;
  bearings.forEach(({ offset, toRight, toLeft }, i) => {
    if (offset + toRight < right) {
      right = offset + toRight;
      stopsRight = i;
    }
    if (offset - toLeft > left) {
      left = offset - toLeft;
      stopsLeft = i;
    }
  });
  return { play: right - left, right, left, stopsRight, stopsLeft };
}
