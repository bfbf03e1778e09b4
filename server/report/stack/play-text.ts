import type { VariantAnalysis } from '../../analysis/analyze.ts';
import type { ResolvedLimits } from '../../analysis/limits.ts';
import { type BuildsInBrief, buildsInBrief } from '../../analysis/mechanics/builds-in-brief.ts';
import { isClosed, isCounted, isWorked } from '../../analysis/mechanics/pair-mechanics.ts';
import { force, micrometres, share } from '../../engine/base/figures.ts';
import { coneLines } from '../mount/cone-lines.ts';
import { lineLines } from '../mount/line-text.ts';
import { textTable } from '../text-table.ts';

/** Play and load of the pairs of a variant, one row each; what was assumed stands in `mount`. Empty without pairs. */
export function playLines(variant: VariantAnalysis, limits: ResolvedLimits): readonly string[] {
  const { cups, clamp } = variant.mechanics('built');
  const cones = coneLines(cups, clamp, limits.value('play-clamped'));
  if (variant.pairs.length === 0) return cones;
  const rows = (how: 'drawn' | 'built') =>
    variant.pairs.map((_, index) => row(variant, index, how, limits.value('play-clamped')));
  const measured = variant.pairs.some(({ built }) => built !== null);
  const head = ['play of', 'unclamped', 'clamped', 'on the balls', 'clamp takes', 'loaded', 'too much play'];
  const hows = measured ? (['drawn', 'built'] as const) : (['drawn'] as const);
  const found = hows.flatMap(rows);
  return [
    '',
    ...textTable([head, ...found.map(({ cells }) => cells)], { indent: 2, right: [1, 2, 3, 4, 5, 6] }),
    ...found.flatMap(({ builds, cells: [what = ''] }) =>
      builds ? buildLines(builds).map((text) => `  ${what}: ${text}`) : [],
    ),
    ...hows.flatMap((how) => {
      const { lines, clamp } = variant.mechanics(how);
      return lines.flatMap((line) => ['', ...lineLines(line, clamp !== null)]);
    }),
    ...cones,
  ];
}

function row(
  variant: VariantAnalysis,
  index: number,
  how: 'drawn' | 'built',
  mostPlay: number,
): { readonly cells: readonly string[]; readonly builds: BuildsInBrief | null } {
  const { clamp, pairs } = variant.mechanics(how);
  const pair = pairs[index];
  const bearings = variant.pairs[index]?.loop.bearings ?? [];
  const what = `${bearings.join(' and ')}${how === 'built' ? ', as measured' : ''}`;
  if (!pair || !isWorked(pair))
    return { cells: [`${what}: missing ${pair?.missing ?? 'bearings'}`], builds: null };
  const { playUnclamped, playClamped, ballLoad, clampShortening } = pair.result;
  if (pair.setting?.kind === 'spring' && isClosed(pair))
    return { cells: [what, 'taken up', 'taken up', force(ballLoad)], builds: null };
  if (!clamp) return { cells: [what, sayPlay(playUnclamped), 'needs clamp'], builds: null };
  if (!isClosed(pair)) return { cells: [what, sayPlay(playUnclamped)], builds: null };
  const builds = isCounted(pair) ? buildsInBrief(pair, how, mostPlay) : null;
  const cells = [
    what,
    sayPlay(playUnclamped),
    ballLoad > 0 ? 'none' : sayPlay(playClamped),
    force(ballLoad),
    micrometres(clampShortening),
    ...(builds ? [share(builds.loaded), share(builds.playHigh)] : []),
  ];
  return { cells, builds };
}

/** What a table has no room for: what strays most, seats that let go, and bearings of one batch. */
export function buildLines({ contributions, alike, loose }: BuildsInBrief): readonly string[] {
  const most = contributions.slice(0, 2).map(({ address, share: part }) => `${address} ${share(part)}`);
  return [
    ...(most.length > 0 ? [`strays most by ${most.join(', ')}`] : []),
    ...(loose > 0 ? [`an outer ring loose in ${share(loose)} of builds`] : []),
    `were both bearings alike, as two of one batch may be, ${share(alike.loaded)} loaded and ${share(alike.playHigh)} with too much play`,
  ];
}

function sayPlay(play: number): string {
  if (!Number.isFinite(play)) return 'not closed';
  return play < -0.0005 ? `none, ${micrometres(-play)} missing` : micrometres(play);
}
