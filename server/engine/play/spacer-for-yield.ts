import type { PairBuilds } from './play-statistics.ts';

/** The length to write so that the most builds come out right. */
export interface SpacerAdvice {
  /** What to add to the inner distance as drawn, mm: the middle of the range below, or of the best there is. */
  readonly change: number;
  /** Share of builds with play between the limits at that length, 0 to 1. */
  readonly yield: number;
  /** Changes that give at least the wanted yield, mm; null where no length gives it. */
  readonly range: { readonly lo: number; readonly hi: number } | null;
}

/** What the clamped play is to be. */
export interface WantedPlay {
  /** mm */
  readonly least: number;
  readonly most: number;
  /** Share of builds that are to come out so, 0 to 1. */
  readonly yield: number;
  /**
   * Which way the inner rings may lean when there is more travel than wanted: `short` towards each other, so that
   * shoulders carry the outer rings; `long` apart, on the grip of the seats.
   */
  readonly side: 'short' | 'long';
}

/** Changes of the inner distance are tried in steps of this, mm. */
const STEP = 0.001;
const MOST_STEPS = 50_000;

/**
 * The change of the inner distance that gives the most builds the clamped play wanted. Every build is kept as it
 * was drawn and its δ moved, so the yield is that of these very builds. `shortening` is what the clamp takes from
 * the inner distance, F·Cp, mm.
 */
export function spacerForYield(builds: PairBuilds, shortening: number, wanted: WantedPlay): SpacerAdvice {
  const opens: number[] = [];
  const closes: number[] = [];
  for (let i = 0; i < builds.mismatch.length; i++) {
    const right = rightMismatch(builds, i, wanted);
    if (!right) continue;
    const clamped = (builds.mismatch[i] as number) - shortening;
    opens.push(right[0] - clamped);
    closes.push(right[1] - clamped);
  }
  if (opens.length === 0) return { change: 0, yield: 0, range: null };
  return sweep(Float64Array.from(opens).sort(), Float64Array.from(closes).sort(), builds, wanted.yield);
}

/** The clamped δ between which one build has the wanted play, mm; null where none gives it. */
function rightMismatch(
  builds: PairBuilds,
  i: number,
  { least, most, side }: WantedPlay,
): readonly [number, number] | null {
  const travel = builds.travel[i] as number;
  if (builds.closes === 'neither') return null;
  if (builds.closes === 'inward') return [least - travel, most - travel];
  if (builds.closes === 'outward') return [travel - most, travel - least];
  if ((builds.widest[i] as number) < least) return null;
  // A build that never has too much play is right wherever it has enough.
  if ((builds.widest[i] as number) <= most) return [least - travel, travel - least];
  return side === 'short' ? [least - travel, most - travel] : [travel - most, travel - least];
}

function sweep(opens: Float64Array, closes: Float64Array, builds: PairBuilds, wanted: number): SpacerAdvice {
  const n = builds.mismatch.length;
  const [least, greatest] = [opens[0] as number, closes.at(-1) as number];
  // A tolerance of metres is a slip of the pen: it is looked through coarsely, and what is no number not at all.
  const step = Math.max(STEP, (greatest - least) / MOST_STEPS);
  if (!Number.isFinite(least / step) || !Number.isFinite(greatest / step))
    return { change: 0, yield: 0, range: null };
  const to = Math.ceil(greatest / step);
  let [open, shut] = [0, 0];
  let most = { count: -1, lo: 0, hi: 0 };
  let [first, last] = [Number.NaN, Number.NaN];
  for (let k = Math.floor(least / step); k <= to; k++) {
    const change = k * step;
    while (open < opens.length && (opens[open] as number) <= change) open++;
    while (shut < closes.length && (closes[shut] as number) < change) shut++;
    const count = open - shut;
    if (count > most.count) most = { count, lo: change, hi: change };
    else if (count === most.count) most = { ...most, hi: change };
    if (count < wanted * n) continue;
    if (Number.isNaN(first)) first = change;
    last = change;
  }
  const range = Number.isNaN(first) ? null : { lo: first, hi: last };
  const change = range ? (range.lo + range.hi) / 2 : (most.lo + most.hi) / 2;
  const right = countOf(opens, change, true) - countOf(closes, change, false);
  return { change, yield: right / n, range };
}

/** How many sorted values lie below `value`, itself counted or not. */
function countOf(sorted: Float64Array, value: number, itself: boolean): number {
  let lo = 0;
  let hi = sorted.length;
  while (lo < hi) {
    const middle = (lo + hi) >> 1;
    const x = sorted[middle] as number;
    if (x < value || (itself && x === value)) lo = middle + 1;
    else hi = middle;
  }
  return lo;
}
