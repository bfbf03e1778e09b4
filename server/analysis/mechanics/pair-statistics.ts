import type { LoopTerm } from '../../assembly/loop.ts';
import { asBuilt } from '../../assembly/settle.ts';
import type { BuildPlan, VaryingFit, VaryingPart, VaryingSide } from '../../engine/play/build-clearance.ts';
import {
  type BuildShares,
  buildShares,
  type PlayHistogram,
  playHistogram,
} from '../../engine/play/build-shares.ts';
import { buildPairs, type PairBuilds, PLAN, type VaryingPair } from '../../engine/play/play-statistics.ts';
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

/** Whether the bearings of a hub stray each on its own, or come from one batch and are alike. */
export type Batch = 'apart' | 'alike';

/** Builds the pair 20 000 times and counts: a few milliseconds, so it is asked for and not kept by itself. */
export function pairStatistics(
  pair: PairMechanics,
  how: 'drawn' | 'built',
  mostPlay: number,
): PairStatistics {
  return countBuilds(varyingPair(pair, how), mostPlay);
}

/** The same of a pair whose numbers are already at hand, or were changed. */
export function countBuilds(pair: VaryingPair, mostPlay: number, plan: BuildPlan = PLAN): PairStatistics {
  const builds = buildPairs(pair, plan);
  return {
    builds,
    shares: buildShares(builds, mostPlay),
    shareLoose: Math.max(builds.looseLeft, builds.looseRight),
    histogram: playHistogram(builds.playClamped, bars),
  };
}

/**
 * A pair with how each of its numbers strays. Bearings that are alike have the same clearance, the same ring widths
 * and the same ring diameters in every hub, as two of one batch may; how narrow a batch is nobody publishes.
 */
export function varyingPair(
  pair: PairMechanics,
  how: 'drawn' | 'built',
  bearings: Batch = 'apart',
): VaryingPair {
  // What is set by the feel of the hand comes out alike in every hub, whatever its parts are.
  if (pair.setting) return setAlike(pair);
  return {
    ...pair.input,
    left: varyingSide(pair.left, pair.input.left, bearings),
    right: varyingSide(pair.right, pair.input.right, bearings),
    lengths: pair.loop.terms.flatMap((item) => varyingLength(item, how, bearings)),
  };
}

function setAlike({ input, left, right }: PairMechanics): VaryingPair {
  const fixed = ({ address, mounted }: MountedBearing, side: VaryingSide['side']): VaryingSide => ({
    side,
    clearance: { id: clearanceOf(address), mean: mounted?.mean ?? 0, sigma: 0 },
    outer: null,
    inner: null,
    thermalLoss: 0,
  });
  return { ...input, left: fixed(left, input.left), right: fixed(right, input.right), lengths: [] };
}

/** A length of the loop; parts that lie in it several times stray each on their own. */
function varyingLength(item: LoopTerm, how: 'drawn' | 'built', bearings: Batch): readonly VaryingPart[] {
  const { nominal, lower, upper } = how === 'built' ? asBuilt(item.settled) : item.settled.drawn;
  const { sigma } = spreadOf(lower, upper);
  const isRing = item.address.startsWith('bearing.');
  const batch = isRing && bearings === 'alike' ? `width ${[nominal, lower, upper].join()}` : undefined;
  const times = batch === undefined ? Math.sqrt(item.count) : item.count;
  return [{ id: item.address, weight: item.sign, sigma: sigma * times, batch }];
}

function varyingSide(mounted: MountedBearing, side: VaryingSide['side'], bearings: Batch): VaryingSide {
  return { side, ...varyingBearing(mounted, bearings) };
}

/** How the clearance of a bearing and its fits stray. */
export function varyingBearing(mounted: MountedBearing, bearings: Batch): Omit<VaryingSide, 'side'> {
  const free = mounted.free ?? { lo: 0, hi: 0 };
  const { mean, sigma } = spreadOf(free.lo, free.hi);
  const code = mounted.stack.bearing?.code;
  const batch = (of: string): string | undefined =>
    bearings === 'alike' && code !== undefined ? `${of} of ${code}` : undefined;
  return {
    clearance: { id: clearanceOf(mounted.address), mean, sigma, batch: batch('clearance') },
    outer: varyingFit(mounted.outerFit, `outside of ${mounted.address}`, batch('outside')),
    inner: varyingFit(mounted.innerFit, `bore of ${mounted.address}`, batch('bore')),
    thermalLoss: mounted.thermalLoss,
  };
}

function varyingFit(fit: RingFit | null, ring: string, batch: string | undefined): VaryingFit | null {
  if (!fit) return null;
  const { interference, diameter, finish, lossFactor } = fit.taker;
  const parts = fit.parts.map((part) => (part.id === ring ? { ...part, batch } : part));
  return { mean: interference.mean, parts, diameter, finish, lossFactor };
}

/** How the clearance of a bearing is called among what varies. */
export const clearanceOf = (address: string): string => `internal clearance of ${address}`;
