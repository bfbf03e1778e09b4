import { SIGMAS_TO_LIMIT } from '../seats/interference-spread.ts';
import { bestYield, type WantedShare } from './best-yield.ts';
import type { VaryingPart } from './build-clearance.ts';
import { buildShares } from './build-shares.ts';
import { buildPairs, PLAN, type VaryingPair } from './play-statistics.ts';
import { movedBy, straying, varyingParts } from './vary.ts';

/** How wide each tolerance may be, half of it, mm. */
export interface AllottedTolerance {
  readonly id: string;
  /** As it stands. */
  readonly from: number;
  /** As it may be, rounded down to a micrometre. */
  readonly to: number;
  /** Share of the variance of the play that it brings as it stands, 0 to 1. */
  readonly share: number;
}

/** A proposal for the tolerances that can be chosen. */
export interface YieldAllocation {
  /**
   * `proportional`: every tolerance by one factor, so that each keeps its share of what may be chosen. `equal`: every
   * dimension may move the play by as much as any other.
   */
  readonly method: 'proportional' | 'equal';
  readonly tolerances: readonly AllottedTolerance[];
  /** What to add to the inner distance, mm. */
  readonly change: number;
  /** Share of builds that then come right, counted over other builds than those it was found with. */
  readonly yield: number;
}

/** What can be had of the tolerances that can be chosen. */
export interface AllocatedYield {
  /** Yield at the best length with every tolerance that can be chosen at zero: what bought parts leave. */
  readonly ceiling: number;
  /** Empty where even that is less than wanted. */
  readonly proposals: readonly YieldAllocation[];
}

/** Builds that judge a proposal have a seed of their own: a choice always looks best over the builds it was made with. */
const JUDGE = { ...PLAN, seed: 2 };
const SEARCH = { ...PLAN, builds: 4000 };
/** A dimension that brings less of the variance than this does not matter to the play and is left alone. */
const LEAST_SHARE = 0.01;
/** No tolerance is proposed more than this many times as wide as it stands. */
const WIDEST = 4;
const ROUNDS = 9;
/** What tolerances are made closer by while other builds do not confirm them. */
const CLOSER = 0.97;
const STEP = 0.001;

/**
 * How wide the tolerances that `isFree` names may be so that some length of the spacer gives the wanted share of right
 * builds. Each proposal is found by halving, the pair built anew each time: the play is not linear in the clearances,
 * so no rule for sums holds. Source of both ways to share out: `chase-allocation`.
 */
export function allocateYield(
  pair: VaryingPair,
  isFree: (id: string) => boolean,
  wanted: WantedShare,
  methods: readonly YieldAllocation['method'][] = ['proportional', 'equal'],
): AllocatedYield {
  const { contributions, playClamped } = buildPairs(pair);
  const shareOf = (id: string): number => contributions.find((item) => item.id === id)?.share ?? 0;
  const free = varyingParts(pair).filter(({ id }) => isFree(id) && LEAST_SHARE <= shareOf(id));
  const exact = bestYield(
    withSigmas(pair, free, () => 0),
    wanted,
  );
  if (free.length === 0 || exact.range === null) return { ceiling: exact.yield, proposals: [] };
  const spread = deviationOf(playClamped);
  const lengths = new Set(pair.lengths.map(({ id }) => id));
  const chosen = free.filter(({ id }) => lengths.has(id));
  const ofAll =
    Math.sqrt(chosen.reduce((sum, { id }) => sum + shareOf(id), 0)) /
    Math.hypot(...chosen.map(({ sigma }) => sigma));
  // A free dimension moves the play by `effect` for each millimetre of its own; every length moves δ one to one.
  const effect = ({ id, sigma }: VaryingPart): number =>
    spread * (lengths.has(id) ? ofAll : Math.sqrt(shareOf(id)) / sigma);
  const largest = Math.max(...free.map((part) => part.sigma * effect(part)));
  const sigmaBy: Record<YieldAllocation['method'], (part: VaryingPart) => number> = {
    proportional: ({ sigma }) => sigma,
    equal: (part) => largest / effect(part),
  };
  const proposals = methods.flatMap((method): readonly YieldAllocation[] => {
    const sigmaOf = sigmaBy[method];
    // A fit has its tolerance for reasons of its own: it may become closer here, never wider.
    const made = (part: VaryingPart, factor: number): number => {
      const sigma = factor * sigmaOf(part);
      return roundedSigma(lengths.has(part.id) ? sigma : Math.min(sigma, part.sigma));
    };
    const found = widest((factor) => withSigmas(pair, free, (part) => made(part, factor)), wanted);
    const tolerances = free.map((part) => ({
      id: part.id,
      from: SIGMAS_TO_LIMIT * part.sigma,
      to: Number((SIGMAS_TO_LIMIT * made(part, found.factor)).toFixed(6)),
      share: shareOf(part.id),
    }));
    // What asks for a tolerance under a micrometre is no proposal.
    if (tolerances.some(({ to }) => to < STEP / 2)) return [];
    return [{ method, tolerances, change: found.change, yield: found.yield }];
  });
  return { ceiling: exact.yield, proposals };
}

function withSigmas(
  pair: VaryingPair,
  free: readonly VaryingPart[],
  sigmaOf: (part: VaryingPart) => number,
): VaryingPair {
  const names = new Set(free.map(({ id }) => id));
  return straying(pair, (part) => (names.has(part.id) ? sigmaOf(part) : part.sigma));
}

/** The widest tolerances with which some length still gives the wanted share, over the builds of both seeds. */
function widest(allotted: (factor: number) => VaryingPair, wanted: WantedShare) {
  // Few builds find about where it is, all of them confirm.
  const reaches = (factor: number): boolean => bestYield(allotted(factor), wanted, SEARCH).range !== null;
  let [known, failed] = [0, WIDEST];
  if (reaches(WIDEST)) known = WIDEST;
  for (let round = 0; round < ROUNDS && known < WIDEST; round++) {
    const middle = (known + failed) / 2;
    if (reaches(middle)) known = middle;
    else failed = middle;
  }
  const judged = (factor: number) => {
    const pair = allotted(factor);
    const { change } = bestYield(pair, wanted);
    const { yield: right } = buildShares(buildPairs(movedBy(pair, change), JUDGE), wanted.mostPlay);
    return { factor, change, yield: right };
  };
  let found = judged(known);
  for (let round = 0; round < ROUNDS && found.yield < wanted.share; round++)
    found = judged(found.factor * CLOSER);
  return found;
}

/** The half tolerance rounded down to a step, as a standard deviation, mm. */
function roundedSigma(sigma: number): number {
  const steps = Math.floor((SIGMAS_TO_LIMIT * sigma) / STEP + 1e-9);
  return Number((steps * STEP).toFixed(6)) / SIGMAS_TO_LIMIT;
}

function deviationOf(values: Float64Array): number {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  return Math.sqrt(values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / values.length);
}
