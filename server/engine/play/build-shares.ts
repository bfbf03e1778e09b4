import type { PairBuilds } from './play-statistics.ts';

/** What a bench of builds comes to. */
export interface BuildShares {
  /** Share of builds whose bearings are loaded when clamped, 0 to 1. */
  readonly loaded: number;
  /** Share of builds with more clamped play than the limit. */
  readonly playHigh: number;
  /** Share of builds with neither. */
  readonly yield: number;
  /** Mean and standard deviation of the clamped play, signed, mm. */
  readonly mean: number;
  readonly sigma: number;
  /** Clamped play that 0.135 %, 50 % and 99.865 % of builds stay under, signed, mm. */
  readonly low: number;
  readonly median: number;
  readonly high: number;
  /** Axial load on the balls that 99 % of all builds stay under, N. */
  readonly load99: number;
}

/** Shares of a bench of builds against the most play wanted after clamping, mm. */
export function buildShares(builds: PairBuilds, mostPlay: number): BuildShares {
  const { playClamped, ballLoad } = builds;
  const n = playClamped.length;
  let loaded = 0;
  let high = 0;
  let sum = 0;
  let squares = 0;
  for (let i = 0; i < n; i++) {
    const play = playClamped[i] as number;
    if ((ballLoad[i] as number) > 0) loaded++;
    else if (play > mostPlay) high++;
    sum += play;
    squares += play * play;
  }
  const sorted = playClamped.slice().sort();
  const loads = ballLoad.slice().sort();
  const mean = sum / n;
  return {
    loaded: loaded / n,
    playHigh: high / n,
    yield: 1 - (loaded + high) / n,
    mean,
    sigma: Math.sqrt(Math.max(0, squares / n - mean * mean)),
    low: quantile(sorted, 0.00135),
    median: quantile(sorted, 0.5),
    high: quantile(sorted, 0.99865),
    load99: quantile(loads, 0.99),
  };
}

/** Builds counted into equal bins from the least to the greatest value, for a small picture. */
export interface PlayHistogram {
  /** Left edge of the first bin and width of each, mm. */
  readonly from: number;
  readonly step: number;
  readonly counts: readonly number[];
}

/** The distribution of a column of builds (mm) in `bins` bins; builds that nothing closes are left out. */
export function playHistogram(values: Float64Array, bins: number): PlayHistogram {
  let lo = Number.POSITIVE_INFINITY;
  let hi = Number.NEGATIVE_INFINITY;
  for (const value of values) {
    if (!Number.isFinite(value)) continue;
    if (value < lo) lo = value;
    if (value > hi) hi = value;
  }
  const counts = new Array<number>(bins).fill(0);
  if (hi < lo) return { from: 0, step: 0, counts };
  const step = (hi - lo) / bins;
  for (const value of values) {
    if (!Number.isFinite(value)) continue;
    const bin = step > 0 ? Math.min(bins - 1, Math.floor((value - lo) / step)) : 0;
    counts[bin] = (counts[bin] ?? 0) + 1;
  }
  return { from: lo, step, counts };
}

function quantile(sorted: Float64Array, share: number): number {
  const at = share * (sorted.length - 1);
  const below = Math.floor(at);
  const lower = sorted[below] ?? Number.NaN;
  const upper = sorted[Math.min(sorted.length - 1, below + 1)] ?? lower;
  return lower + (upper === lower ? 0 : (at - below) * (upper - lower));
}
