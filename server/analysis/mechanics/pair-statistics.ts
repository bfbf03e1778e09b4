import type { LoopTerm } from '../../assembly/loop.ts';
import { asBuilt } from '../../assembly/settle.ts';
import type { VaryingFit, VaryingPart, VaryingSide } from '../../engine/play/build-clearance.ts';
import {
  type BuildShares,
  buildShares,
  type PlayHistogram,
  playHistogram,
} from '../../engine/play/build-shares.ts';
import { buildPairs, type PairBuilds } from '../../engine/play/play-statistics.ts';
import { type SpacerAdvice, spacerForYield } from '../../engine/play/spacer-for-yield.ts';
import { spreadOf } from '../../engine/seats/interference-spread.ts';
import type { MountedBearing, RingFit } from './mounted-bearing.ts';
import type { PairMechanics } from './pair-mechanics.ts';

/** What many builds of one pair come to. */
export interface PairStatistics {
  readonly builds: PairBuilds;
  readonly shares: BuildShares;
  /** Share of builds with a loose outer ring, in the worse of the two seats. */
  readonly shareLoose: number;
  /** Signed clamped play of all builds, for a small picture. */
  readonly histogram: PlayHistogram;
}

/** Bars of the small picture. */
const bars = 40;

/** Builds the pair 20 000 times and counts: a few milliseconds, so it is asked for and not kept by itself. */
export function pairStatistics(
  pair: PairMechanics,
  how: 'drawn' | 'built',
  mostPlay: number,
): PairStatistics {
  const builds = buildPairs({
    ...pair.input,
    left: varyingSide(pair.left, pair.input.left),
    right: varyingSide(pair.right, pair.input.right),
    lengths: pair.loop.terms.flatMap((item) => varyingLength(item, how)),
  });
  return {
    builds,
    shares: buildShares(builds, mostPlay),
    shareLoose: Math.max(builds.looseLeft, builds.looseRight),
    histogram: playHistogram(builds.playClamped, bars),
  };
}

/**
 * What to add to the spacer so that the wanted share of builds has clamped play between 0 and `mostPlay`, the outer
 * rings carried by their shoulders; mm.
 */
export function spacerAdvice(
  pair: PairMechanics,
  statistics: PairStatistics,
  mostPlay: number,
  wantedYield: number,
): SpacerAdvice {
  const shortening = pair.input.clampForce * pair.input.spacerCompliance;
  return spacerForYield(statistics.builds, shortening, {
    least: 0,
    most: mostPlay,
    yield: wantedYield,
    side: 'short',
  });
}

/** A length of the loop; parts that lie in it several times stray each on their own. */
function varyingLength(item: LoopTerm, how: 'drawn' | 'built'): readonly VaryingPart[] {
  const { lower, upper } = how === 'built' ? asBuilt(item.settled) : item.settled.drawn;
  const { sigma } = spreadOf(lower, upper);
  return [{ id: item.address, weight: item.sign, sigma: sigma * Math.sqrt(item.count) }];
}

function varyingSide(mounted: MountedBearing, side: VaryingSide['side']): VaryingSide {
  const free = mounted.free ?? { lo: 0, hi: 0 };
  const { mean, sigma } = spreadOf(free.lo, free.hi);
  return {
    side,
    clearance: { id: `internal clearance of ${mounted.address}`, mean, sigma },
    outer: varyingFit(mounted.outerFit),
    inner: varyingFit(mounted.innerFit),
    thermalLoss: 0,
  };
}

function varyingFit(fit: RingFit | null): VaryingFit | null {
  if (!fit) return null;
  const { interference, diameter, finish, lossFactor } = fit.taker;
  return { mean: interference.mean, parts: fit.parts, diameter, finish, lossFactor };
}
