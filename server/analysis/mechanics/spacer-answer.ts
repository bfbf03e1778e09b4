import type { LoopTerm } from '../../assembly/loop.ts';
import { type Limits, meanOf } from '../../assembly/settle.ts';
import type { WantedShare } from '../../engine/play/best-yield.ts';
import type { BuildPlan } from '../../engine/play/build-clearance.ts';
import type { BuildShares } from '../../engine/play/build-shares.ts';
import { movedShares } from '../../engine/play/moved-shares.ts';
import { buildPairs, type VaryingPair } from '../../engine/play/play-statistics.ts';
import { spacerForYield } from '../../engine/play/spacer-for-yield.ts';
import { movedBy } from '../../engine/play/vary.ts';
import { widestSpacer } from '../../engine/play/widest-spacer.ts';
import type { VariantAnalysis } from '../analyze.ts';
import type { ResolvedLimits } from '../limits.ts';
import { type DrawingAllocation, drawingAllocation } from './drawing-allocation.ts';
import { isWorked, type PairMechanics } from './pair-mechanics.ts';
import { countBuilds, varyingPair } from './pair-statistics.ts';
import { spacerOf } from './spacer-of.ts';
import { type YieldOption, yieldOptions } from './yield-options.ts';

/** What becomes of many builds, shares from 0 to 1. */
export type Shares = Pick<BuildShares, 'yield' | 'loaded' | 'playHigh'>;

/** The spacer of one pair that gives the wanted yield. Lengths in mm, shares from 0 to 1. */
export interface SpacerAnswer extends Shares {
  readonly bearings: readonly [string, string];
  readonly spacer: string;
  /** How many such parts stand between the rings; `to` and the tolerances are those of one. */
  readonly count: number;
  /** The length as drawn, with its deviations. */
  readonly from: Limits;
  /** The length to write, to a hundredth; to a thousandth only where no hundredth gives the wanted yield. */
  readonly to: number;
  /** Shares of the length as it stands. */
  readonly now: Shares;
  /** Shares at `to` where the bearings of a hub come from one batch and are alike. */
  readonly alike: Shares;
  /** Share of builds with a loose outer ring, in the worse of the two seats; no length changes it. */
  readonly loose: number;
  /** Share of builds whose fits leave no clearance: no length puts them right. */
  readonly usedUp: number;
  /** Mean clamped play at `to`, mm. */
  readonly playClamped: number;
  /** Nominal lengths that give at least the wanted yield; null where none does. */
  readonly range: { readonly lo: number; readonly hi: number } | null;
  /** Widest ± tolerance of the spacer with which some length still gives the wanted yield; null where none does. */
  readonly widest: number | null;
  /** What brings most of the straying of the play, greatest first. */
  readonly contributions: readonly { readonly address: string; readonly share: number }[];
  /** How wide the tolerances of the drawing may be; null where parts are measured and no longer a question. */
  readonly allocation: DrawingAllocation | null;
  /** What else would bring the wanted yield, or nearer to it; empty where the length alone does. */
  readonly options: readonly YieldOption[];
  readonly assumed: readonly string[];
}

/** A pair for which no spacer can be told. */
export interface NoSpacer {
  readonly bearings: readonly [string, string];
  readonly missing: string;
}

/** What is wanted of the clamped play. */
export interface WantedYield {
  readonly limits: ResolvedLimits;
  readonly share: number;
}

/** The spacers to write for the pairs of one variant, as drawn or with what is measured. */
export function spacerAnswers(
  variant: VariantAnalysis,
  how: 'drawn' | 'built',
  wanted: WantedYield,
): readonly (SpacerAnswer | NoSpacer)[] {
  const mechanics = variant.mechanics(how);
  return mechanics.pairs.map((pair, index) => {
    const bearings = (variant.pairs[index] as (typeof variant.pairs)[number]).loop.bearings;
    if (!isWorked(pair)) return { bearings, missing: pair.missing };
    if (!mechanics.clamp) return { bearings, missing: 'clamp: a force or a torque' };
    const item = spacerOf(variant, pair);
    if (!item) return { bearings, missing: 'a spacer between the bearings' };
    return solvePair(pair, item, how, {
      mostPlay: wanted.limits.value('play-clamped'),
      share: wanted.share,
    });
  });
}

function solvePair(
  pair: PairMechanics,
  item: LoopTerm,
  how: 'drawn' | 'built',
  wanted: WantedShare,
): SpacerAnswer | NoSpacer {
  const anew = withNewSpacer(pair, item, how);
  const varying = varyingPair(anew, how);
  const statistics = countBuilds(varying, wanted.mostPlay);
  const best = bestLength(varying, item, wanted);
  // A tolerance wider than the part is long leaves no length to write.
  if (best.to <= 0)
    return {
      bearings: pair.loop.bearings,
      missing: `a tolerance of ${item.address} that a length can carry`,
    };
  const { contributions } = statistics.builds;
  const moved = (one: VaryingPair): VaryingPair =>
    movedBy(one, (best.to - item.settled.drawn.nominal) * item.count);
  const sharesThen = (built: VaryingPair) => countBuilds(moved(built), wanted.mostPlay).shares;
  return {
    bearings: pair.loop.bearings,
    spacer: item.address,
    count: item.count,
    from: item.settled.drawn,
    to: best.to,
    ...sharesOf(best.shares),
    now: sharesOf(statistics.shares),
    alike: sharesOf(sharesThen(varyingPair(anew, how, 'alike'))),
    loose: statistics.shareLoose,
    usedUp: shareBelow(statistics.builds.widest, 0),
    playClamped: sharesThen(varying).median,
    range: best.range,
    widest: widestSpacer(varying, item.address, wanted, item.count),
    contributions: contributions.slice(0, 4).map(({ id, share }) => ({ address: id, share })),
    allocation: how === 'drawn' ? drawingAllocation(anew, varying, wanted) : null,
    options: best.range ? [] : yieldOptions(anew, varying, item, wanted),
    assumed: pair.assumed,
  };
}

function shareBelow(values: Float64Array, limit: number): number {
  return values.filter((value) => value < limit).length / values.length;
}

/** The best length that a drawing can carry, with what it gives. */
export function bestLength(varying: VaryingPair, item: LoopTerm, wanted: WantedShare, plan?: BuildPlan) {
  const { nominal } = item.settled.drawn;
  const builds = buildPairs(varying, plan);
  const shortening = varying.clampForce * varying.spacerCompliance;
  const advice = spacerForYield(builds, shortening, {
    least: 0,
    most: wanted.mostPlay,
    yield: wanted.share,
    side: 'short',
  });
  const lengthFor = (change: number): number => nominal + change / item.count;
  const sharesAt = (to: number): Shares =>
    movedShares(builds, shortening, (to - nominal) * item.count, wanted.mostPlay);
  const tried = writable(lengthFor(advice.change)).map((to) => ({ to, shares: sharesAt(to) }));
  const enough = tried.find(({ shares }) => wanted.share <= shares.yield);
  const { range } = advice;
  return {
    ...(enough ?? best(tried)),
    now: sharesAt(nominal),
    sharesAt,
    contributions: builds.contributions,
    range: range && { lo: lengthFor(range.lo), hi: lengthFor(range.hi) },
  };
}

/** Lengths a drawing can carry near a wanted one, mm: the nearer hundredth, the other one, the thousandth. */
function writable(length: number): readonly number[] {
  const [down, up] = [Math.floor(length * 100) / 100, Math.ceil(length * 100) / 100];
  const hundredths = length - down < up - length ? [down, up] : [up, down];
  return [...hundredths, Number(length.toFixed(3))].map((to) => Number(to.toFixed(3)));
}

/** The hundredth with more builds right: a thousandth is only worth writing where it gives enough. */
function best<T extends { readonly shares: Shares }>(tried: readonly T[]): T {
  const [one, other] = tried as readonly [T, T];
  return one.shares.yield < other.shares.yield ? other : one;
}

function sharesOf({ yield: right, loaded, playHigh }: Shares): Shares {
  return { yield: right, loaded, playHigh };
}

/** A spacer that is to be written anew strays as drawn, even where the old one was measured. */
export function withNewSpacer(pair: PairMechanics, item: LoopTerm, how: 'drawn' | 'built'): PairMechanics {
  const { built, drawn } = item.settled;
  if (how === 'drawn' || !built) return pair;
  const fresh: LoopTerm = { ...item, settled: { ...item.settled, built: null } };
  const terms = pair.loop.terms.map((other) => (other.path === item.path ? fresh : other));
  const mismatch = pair.input.mismatch + item.count * (meanOf(drawn) - meanOf(built));
  return { ...pair, input: { ...pair.input, mismatch }, loop: { ...pair.loop, terms } };
}
