import type { LoopTerm } from '../../assembly/loop.ts';
import { bestYield, type WantedShare } from '../../engine/play/best-yield.ts';
import { buildPairs, type VaryingPair } from '../../engine/play/play-statistics.ts';
import { spacerForYield } from '../../engine/play/spacer-for-yield.ts';
import { straying } from '../../engine/play/vary.ts';
import { withTolerance } from '../../engine/play/widest-spacer.ts';
import { otherGroups } from './other-groups.ts';
import type { PairMechanics } from './pair-mechanics.ts';

/** One thing that could be changed, with what it gives at the best length that goes with it. */
export interface YieldOption {
  readonly kind:
    | 'spacer-tolerance'
    | 'length-tolerances'
    | 'clearance-group'
    | 'group-and-lengths'
    | 'play-limit';
  /** Clearance group of both bearings, or null where it stays. */
  readonly group: string | null;
  /** Half tolerance of the spacer, mm; null where it stays. */
  readonly tolerance: number | null;
  /** Most play allowed, mm. */
  readonly mostPlay: number;
  /** Nominal length of the spacer that goes with it, mm. */
  readonly to: number;
  /** Share of builds right, 0 to 1. */
  readonly yield: number;
  /** Whether that is the yield wanted. */
  readonly reaches: boolean;
}

/** A spacer ground to a few micrometres: the narrowest tolerance worth proposing, mm. */
const GROUND = 0.005;
/** A change that gains less than this share of the builds is not worth telling. */
const LEAST_GAIN = 0.002;
/** Play limits are tried up to this, mm. */
const MOST_PLAY = 0.3;

/**
 * What would bring more right builds than the best length alone, each built anew: a spacer made closer, all lengths
 * made twice as close, bearings of another clearance group, both, and the play limit that the pair as it is would keep.
 */
export function yieldOptions(
  pair: PairMechanics,
  varying: VaryingPair,
  item: LoopTerm,
  wanted: WantedShare,
): readonly YieldOption[] {
  const { nominal } = item.settled.drawn;
  const least = bestYield(varying, wanted).yield + LEAST_GAIN;
  const tried = (
    changed: VaryingPair,
    what: Pick<YieldOption, 'kind'> & Partial<YieldOption>,
  ): YieldOption => {
    const { change, yield: right, range } = bestYield(changed, wanted);
    const to = Number((nominal + change / item.count).toFixed(3));
    const unchanged = { group: null, tolerance: null, mostPlay: wanted.mostPlay };
    return { ...unchanged, ...what, to, yield: right, reaches: range !== null };
  };
  const closer = (one: VaryingPair): VaryingPair =>
    straying(one, ({ id, sigma }) =>
      one.lengths.some((part) => part.id === id) && !id.startsWith('bearing.') ? sigma / 2 : sigma,
    );
  const half = (item.settled.drawn.upper - item.settled.drawn.lower) / 2;
  const ground = withTolerance(varying, item.address, GROUND, item.count);
  const groups = otherGroups(pair, varying)
    .map(({ group, varying: changed }) => ({
      changed,
      option: tried(changed, { kind: 'clearance-group', group }),
    }))
    .filter(({ option }) => least <= option.yield);
  const enough = groups.find(({ option }) => option.reaches);
  const best = enough ?? groups.toSorted((a, b) => b.option.yield - a.option.yield)[0];
  const options = [
    ...(GROUND < half ? [tried(ground, { kind: 'spacer-tolerance', tolerance: GROUND })] : []),
    tried(closer(varying), { kind: 'length-tolerances' }),
    // The nearest group that is enough, and no wider one.
    ...groups.slice(0, enough ? groups.indexOf(enough) + 1 : undefined).map(({ option }) => option),
    ...(best && !enough
      ? [tried(closer(best.changed), { kind: 'group-and-lengths', group: best.option.group })]
      : []),
  ].filter((option) => least <= option.yield);
  return [...options, ...widerPlay(varying, item, wanted)];
}

/** The least play limit, in steps of 5 µm, that the pair as it is keeps in the wanted share of builds. */
function widerPlay(varying: VaryingPair, item: LoopTerm, wanted: WantedShare): readonly YieldOption[] {
  const builds = buildPairs(varying);
  const shortening = varying.clampForce * varying.spacerCompliance;
  for (let steps = Math.floor(wanted.mostPlay / 0.005) + 1; steps * 0.005 <= MOST_PLAY; steps++) {
    const mostPlay = steps / 200;
    const limits = { least: 0, most: mostPlay, yield: wanted.share, side: 'short' } as const;
    const { change, yield: right, range } = spacerForYield(builds, shortening, limits);
    if (!range) continue;
    const to = Number((item.settled.drawn.nominal + change / item.count).toFixed(3));
    return [{ kind: 'play-limit', group: null, tolerance: null, mostPlay, to, yield: right, reaches: true }];
  }
  return [];
}
