import type { VariantAnalysis } from '../../analysis/analyze.ts';
import type { ResolvedLimits } from '../../analysis/limits.ts';
import { isWorked, type PairMechanics } from '../../analysis/mechanics/pair-mechanics.ts';
import { pairStatistics } from '../../analysis/mechanics/pair-statistics.ts';
import { force, micrometres, share } from '../../engine/base/figures.ts';
import { textTable } from '../text-table.ts';

/** Play and load of the pairs of a variant, one row each; what was assumed stands in `mount`. Empty without pairs. */
export function playLines(variant: VariantAnalysis, limits: ResolvedLimits): readonly string[] {
  if (variant.pairs.length === 0) return [];
  const rows = (how: 'drawn' | 'built') =>
    variant.pairs.map((_, index) => row(variant, index, how, limits.value('play-clamped')));
  const measured = variant.pairs.some(({ built }) => built !== null);
  const head = ['play of', 'unclamped', 'clamped', 'on the balls', 'clamp takes', 'loaded', 'too much play'];
  const lines = [...rows('drawn'), ...(measured ? rows('built') : [])];
  return ['', ...textTable([head, ...lines], { indent: 2, right: [1, 2, 3, 4, 5, 6] })];
}

function row(
  variant: VariantAnalysis,
  index: number,
  how: 'drawn' | 'built',
  mostPlay: number,
): readonly string[] {
  const { clamp, pairs } = variant.mechanics(how);
  const pair = pairs[index];
  const bearings = variant.pairs[index]?.loop.bearings ?? [];
  const what = `${bearings.join(' and ')}${how === 'built' ? ', as measured' : ''}`;
  if (!pair || !isWorked(pair)) return [`${what}: missing ${pair?.missing ?? 'bearings'}`];
  const { playUnclamped, playClamped, ballLoad, clampShortening } = pair.result;
  if (!clamp) return [what, sayPlay(playUnclamped), 'needs clamp'];
  return [
    what,
    sayPlay(playUnclamped),
    ballLoad > 0 ? 'none' : sayPlay(playClamped),
    force(ballLoad),
    micrometres(clampShortening),
    ...sharesOf(pair, how, mostPlay),
  ];
}

function sharesOf(pair: PairMechanics, how: 'drawn' | 'built', mostPlay: number): readonly string[] {
  const { loaded, playHigh } = pairStatistics(pair, how, mostPlay).shares;
  return [share(loaded), share(playHigh)];
}

function sayPlay(play: number): string {
  if (!Number.isFinite(play)) return 'not closed';
  return play < -0.0005 ? `none, ${micrometres(-play)} missing` : micrometres(play);
}
