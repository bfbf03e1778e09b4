import type { Conditions } from '../analysis/mechanics/conditions.ts';
import { isCounted, isWorked } from '../analysis/mechanics/pair-mechanics.ts';
import { pairStatistics } from '../analysis/mechanics/pair-statistics.ts';
import { drawBuilds } from '../drawing/draw-builds.ts';
import type { BuildsAnswer } from '../protocol/requests.ts';
import type { Snapshot } from '../workspace/workspace.ts';

/** Pairs that are built: a hub has two or three, and each takes a while. */
const mostPairs = 8;

/** The spread of the clamped play of each pair of one variant; empty where nothing is clamped or can be worked out. */
export function drawnBuilds(
  { analysis }: Snapshot,
  wanted: string | null,
  conditions: Conditions,
): BuildsAnswer {
  const variant = analysis.variants.find(({ name }) => name === wanted) ?? analysis.variants[0];
  const mechanics = variant?.mechanics('built', conditions);
  if (!mechanics?.clamp) return { pairs: [] };
  const mostPlay = analysis.limits.value('play-clamped');
  const pairs = mechanics.pairs.filter(isWorked).filter(isCounted).slice(0, mostPairs);
  return {
    pairs: pairs.map((pair, index) => {
      const what = pair.loop.bearings.join(' and ');
      const statistics = pairStatistics(pair, 'built', mostPlay);
      return { what, ...drawBuilds(what, statistics, mostPlay, `hw-builds-${index}`) };
    }),
  };
}
