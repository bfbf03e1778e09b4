import type { VariantAnalysis } from '../../analysis/analyze.ts';
import type { ResolvedLimits } from '../../analysis/limits.ts';
import { isWorked, type PairMechanics } from '../../analysis/mechanics/pair-mechanics.ts';
import { pairStatistics, spacerAdvice } from '../../analysis/mechanics/pair-statistics.ts';
import type { LoopTerm } from '../../assembly/loop.ts';
import type { Limits } from '../../assembly/settle.ts';
import type { StackPart } from '../../spec/model.ts';
import { widestTolerance } from './widest-tolerance.ts';

/** The spacer of one pair that gives the wanted yield. Lengths in mm, shares from 0 to 1. */
export interface SpacerAnswer {
  readonly bearings: readonly [string, string];
  readonly spacer: string;
  /** The length as drawn, with its deviations. */
  readonly from: Limits;
  /** The length to write, to a hundredth; to a thousandth only where no hundredth gives the wanted yield. */
  readonly to: number;
  /** What `to` gives: play right, bearings loaded, too much play. */
  readonly yield: number;
  readonly loaded: number;
  readonly playHigh: number;
  /** The same of the length as it stands. */
  readonly now: { readonly yield: number; readonly loaded: number; readonly playHigh: number };
  /** Mean clamped play at `to`, mm. */
  readonly playClamped: number;
  /** Nominal lengths that give at least the wanted yield; null where none does. */
  readonly range: { readonly lo: number; readonly hi: number } | null;
  /** Widest ± tolerance of the spacer with which some length still gives the wanted yield; null where none does. */
  readonly widest: number | null;
  /** What brings most of the straying of the play, greatest first. */
  readonly contributions: readonly { readonly address: string; readonly share: number }[];
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
    return item ? solvePair(pair, item, how, wanted) : { bearings, missing: 'a spacer between the bearings' };
  });
}

const preference: Partial<Record<StackPart['kind'], number>> = { spacer: 0, collar: 1, shim: 2, washer: 3 };

/** The part between the inner rings that is written anew: a spacer before a collar, both before shims. */
function spacerOf(variant: VariantAnalysis, pair: PairMechanics): LoopTerm | null {
  const rank = (item: LoopTerm): number => {
    const part = variant.assembly.line.find(({ address }) => address === item.address)?.part;
    return (part && item.key === 'length' && item.sign === 1 ? preference[part.kind] : undefined) ?? 9;
  };
  const [best] = [...pair.loop.inner].sort((a, b) => rank(a) - rank(b));
  return best && rank(best) < 9 ? best : null;
}

function solvePair(
  pair: PairMechanics,
  item: LoopTerm,
  how: 'drawn' | 'built',
  { limits, share }: WantedYield,
): SpacerAnswer {
  // A spacer that is to be written anew strays as drawn, even where the old one was measured.
  const anew = asDrawn(pair, item, how);
  const mostPlay = limits.value('play-clamped');
  const statistics = pairStatistics(anew, how, mostPlay);
  const advice = spacerAdvice(anew, statistics, mostPlay, share);
  const { drawn } = item.settled;
  const lengthFor = (change: number): number => drawn.nominal + change / item.count;
  const tried = writable(lengthFor(advice.change)).map((to) => {
    const { shares } = pairStatistics(moved(anew, (to - drawn.nominal) * item.count), how, mostPlay);
    return { to, shares };
  });
  const enough = tried.find(({ shares }) => share <= shares.yield);
  const { to, shares } = enough ?? best(tried);
  return {
    bearings: pair.loop.bearings,
    spacer: item.address,
    from: drawn,
    to,
    ...sharesOf(shares),
    now: sharesOf(statistics.shares),
    playClamped: shares.median,
    range: advice.range && { lo: lengthFor(advice.range.lo), hi: lengthFor(advice.range.hi) },
    widest: widestTolerance(anew, item, how, { mostPlay, share }),
    contributions: statistics.builds.contributions
      .slice(0, 4)
      .map(({ id, share: part }) => ({ address: String(id), share: part })),
    assumed: pair.assumed,
  };
}

/** Lengths a drawing can carry near a wanted one, mm: the nearer hundredth, the other one, the thousandth. */
function writable(length: number): readonly number[] {
  const [down, up] = [Math.floor(length * 100) / 100, Math.ceil(length * 100) / 100];
  const hundredths = length - down < up - length ? [down, up] : [up, down];
  return [...hundredths, Number(length.toFixed(3))].map((to) => Number(to.toFixed(3)));
}

/** The hundredth with more builds right: a thousandth is only worth writing where it gives enough. */
function best<T extends { readonly shares: { readonly yield: number } }>(tried: readonly T[]): T {
  const [one, other] = tried as readonly [T, T];
  return one.shares.yield < other.shares.yield ? other : one;
}

function sharesOf({ yield: right, loaded, playHigh }: SpacerAnswer['now']): SpacerAnswer['now'] {
  return { yield: right, loaded, playHigh };
}

/** The pair with δ moved: what a longer spacer does. */
function moved(pair: PairMechanics, by: number): PairMechanics {
  return { ...pair, input: { ...pair.input, mismatch: pair.input.mismatch + by } };
}

function asDrawn(pair: PairMechanics, item: LoopTerm, how: 'drawn' | 'built'): PairMechanics {
  const { built, drawn } = item.settled;
  if (how === 'drawn' || !built) return pair;
  const middle = (limits: Limits): number => limits.nominal + (limits.lower + limits.upper) / 2;
  const fresh: LoopTerm = { ...item, settled: { ...item.settled, built: null } };
  const terms = pair.loop.terms.map((other) => (other.path === item.path ? fresh : other));
  const back = moved(pair, item.count * (middle(drawn) - middle(built)));
  return { ...back, loop: { ...pair.loop, terms } };
}
