// How long the builds of one pair take by themselves, apart from any server: play and clearance of 20 000 hubs.
import { performance } from 'node:perf_hooks';
import { analyze } from '../../server/analysis/analyze.ts';
import { isWorked } from '../../server/analysis/mechanics/pair-mechanics.ts';
import { pairStatistics } from '../../server/analysis/mechanics/pair-statistics.ts';
import { readSpec } from '../../server/spec/read-spec.ts';

/** Times in ms of `count` benches of builds, the first of a process apart: it draws the numbers that the others keep. */
export function buildTimes(
  text: string,
  count: number,
): { readonly first: number; readonly times: number[] } {
  const { variants, limits } = analyze(readSpec(text, 'hub'), { workshops: [], references: [] });
  const pair = variants[0]?.mechanics('drawn').pairs[0];
  if (!pair || !isWorked(pair)) throw new Error('no pair of this hub could be worked out');
  const once = (): number => {
    const start = performance.now();
    const { builds } = pairStatistics(pair, 'drawn', limits.value('play-clamped'));
    if (builds.playClamped.length < 20_000) throw new Error('fewer than 20 000 hubs were built');
    return performance.now() - start;
  };
  const first = once();
  return { first, times: Array.from({ length: count }, once) };
}
