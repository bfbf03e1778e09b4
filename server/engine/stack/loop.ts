/**
 * One dimension of a loop: the loop's length is the sum of sign · dimension over all terms.
 *
 * `count` parts of one kind (shims) are `count` parts made apart: nominal, centre and worst case grow with
 * the count, and so does the variance; the standard deviation of the sum grows with its square root.
 * A count of zero takes the term out of the loop.
 */
export interface Term {
  readonly id: string;
  readonly sign: 1 | -1;
  /** How many such parts enter the loop, a whole number from zero. */
  readonly count: number;
  /** Length as written, mm. */
  readonly nominal: number;
  /** Lower deviation from the nominal, mm. */
  readonly lower: number;
  /** Upper deviation from the nominal, mm. */
  readonly upper: number;
}

/** What one term adds to the spread of the loop. */
export interface Contribution {
  readonly id: string;
  /** Share of the variance, 0 to 1. */
  readonly share: number;
  /** Half of the tolerance that the term as a whole brings, all its parts at a limit together, mm. */
  readonly halfTolerance: number;
}

export interface LoopResult {
  /** Sum of the lengths as written, mm. */
  readonly nominal: number;
  /** Sum of the centres of the tolerances: one-sided tolerances move it off the nominal, mm. */
  readonly mean: number;
  /** Every dimension at its limit at once: least and greatest, mm. */
  readonly worst: readonly [number, number];
  /** Mean less and plus the root-sum-square of the half tolerances, mm. */
  readonly rss: readonly [number, number];
  /** In the order of the terms; the shares sum to 1, or are all 0 where nothing varies. */
  readonly contributions: readonly Contribution[];
  /** Standard deviation, with each half tolerance as three of its own, mm. */
  readonly sigma: number;
}

/** How many standard deviations a half tolerance stands for: the usual reading of a capable process. */
export const SIGMAS_PER_HALF_TOLERANCE = 3;

/** Closes a loop by worst case and by root-sum-square; the statistics assume independent parts. */
export function closeLoop(terms: readonly Term[]): LoopResult {
  let nominal = 0;
  let mean = 0;
  let corner = 0;
  let squares = 0;
  for (const term of terms) {
    const half = halfTolerance(term);
    nominal += term.sign * term.count * term.nominal;
    mean += term.sign * term.count * centre(term);
    corner += term.count * half;
    squares += term.count * half * half;
  }
  const band = Math.sqrt(squares);
  return {
    nominal,
    mean,
    worst: [mean - corner, mean + corner],
    rss: [mean - band, mean + band],
    contributions: terms.map((term) => {
      const half = halfTolerance(term);
      const share = squares > 0 ? (term.count * half * half) / squares : 0;
      return { id: term.id, share, halfTolerance: term.count * half };
    }),
    sigma: band / SIGMAS_PER_HALF_TOLERANCE,
  };
}

/** The middle of a part's limits, mm. */
export function centre(term: Term): number {
  return term.nominal + (term.lower + term.upper) / 2;
}

/** Half the tolerance of one part, mm. */
export function halfTolerance(term: Term): number {
  return Math.abs(term.upper - term.lower) / 2;
}
