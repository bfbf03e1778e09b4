/** A tolerance that takes part in an allocation: bought parts keep theirs, made parts are scaled. */
export interface Allotment {
  readonly id: string;
  /** Half tolerance as it stands, mm. */
  readonly halfTolerance: number;
  /** Whether the part comes as it is (a bearing, a retaining ring). */
  readonly fixed: boolean;
}

export interface Allocation {
  /** What every half tolerance that is not fixed is multiplied by. */
  readonly factor: number;
  /** The half tolerances after scaling, in the order given, mm. */
  readonly halfTolerances: readonly { readonly id: string; readonly halfTolerance: number }[];
}

/**
 * Scales the free tolerances by one factor so that the loop's half tolerance is `wanted` (mm), by worst case
 * or by root-sum-square. Null when the fixed parts alone use up what is wanted, or when nothing is free.
 * Source `chase-allocation`, proportional scaling.
 */
export function allocate(
  allotments: readonly Allotment[],
  wanted: number,
  method: 'worst' | 'rss',
): Allocation | null {
  const power = method === 'worst' ? 1 : 2;
  const fixed = sumOfPowers(allotments, power, true);
  const free = sumOfPowers(allotments, power, false);
  const left = wanted ** power - fixed;
  if (free <= 0 || left <= 0) return null;
  const factor = (left / free) ** (1 / power);
  return {
    factor,
    halfTolerances: allotments.map(({ id, halfTolerance, fixed: kept }) => ({
      id,
      halfTolerance: kept ? halfTolerance : halfTolerance * factor,
    })),
  };
}

function sumOfPowers(allotments: readonly Allotment[], power: number, fixed: boolean): number {
  let sum = 0;
  for (const allotment of allotments) {
    if (allotment.fixed === fixed) sum += allotment.halfTolerance ** power;
  }
  return sum;
}
