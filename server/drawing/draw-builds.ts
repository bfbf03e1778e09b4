import type { PairStatistics } from '../analysis/mechanics/pair-statistics.ts';
import { force, micrometres, share } from '../engine/base/figures.ts';
import { group, line, type Shape } from './scene.ts';
import { svg } from './svg.ts';
import { writing } from './text-width.ts';

/** The spread of the clamped play of many builds as a picture, and the same in words. */
export interface BuildsDrawing {
  readonly svg: string;
  readonly words: string;
}

/** Sheet of the picture, mm: the bars stand on `base`. */
const sheet = { width: 120, height: 40, left: 6, right: 114, base: 29, top: 7 };

/**
 * Draws how many builds have how much play once clamped, with lines at none and at the most wanted, mm. Play
 * under none is travel that is missing: those builds are loaded.
 */
export function drawBuilds(
  what: string,
  statistics: PairStatistics,
  mostPlay: number,
  id: string,
): BuildsDrawing {
  const { from, step, counts } = statistics.histogram;
  const end = from + step * counts.length;
  const [lo, hi] = [Math.min(from, 0), Math.max(end, mostPlay)];
  const x = (play: number): number =>
    sheet.left + ((play - lo) / Math.max(hi - lo, 1e-9)) * (sheet.right - sheet.left);
  const tallest = Math.max(1, ...counts);
  const bars = counts.flatMap((count, bin): readonly Shape[] => {
    if (count === 0) return [];
    const [left, right] = [x(from + bin * step), x(from + (bin + 1) * step)];
    const top = sheet.base - (count / tallest) * (sheet.base - sheet.top);
    const corners = [left, right].map((at) => [
      { x: at, y: sheet.base },
      { x: at, y: top },
    ]);
    const [one = [], other = []] = corners;
    return [{ kind: 'solid', area: [...one, ...other.toReversed()] }];
  });
  const words = buildsWords(what, statistics, mostPlay);
  const axis = line('outline', [
    { x: sheet.left, y: sheet.base },
    { x: sheet.right, y: sheet.base },
  ]);
  const marks = limitMarks(x(0), x(mostPlay), mostPlay);
  const scene = {
    view: [0, 0, sheet.width, sheet.height] as const,
    groups: [group('note', [...bars, axis, ...marks])],
  };
  const title = `Play of ${what} once clamped`;
  return { svg: svg(scene, { title, description: words, printed: false, style: null, id }), words };
}

/** Lines at the two limits with what they are; the words stand outwards so that they never meet. */
function limitMarks(none: number, most: number, mostPlay: number): readonly Shape[] {
  const upright = (at: number): Shape =>
    line('dimension', [
      { x: at, y: sheet.top - 4 },
      { x: at, y: sheet.base + 2 },
    ]);
  const apart = 42;
  const close = most - none < apart;
  const y = sheet.base + 5.5;
  return [
    upright(none),
    upright(most),
    writing('no play', { x: Math.max(none, 16), y }, { anchor: close ? 'end' : 'middle' }),
    writing(
      `${micrometres(mostPlay)}, the most wanted`,
      {
        x: close ? Math.min(most, sheet.right - 34) : Math.min(most, sheet.right - 18),
        y: close ? y + 4.4 : y,
      },
      { anchor: close ? 'start' : 'middle' },
    ),
  ];
}

function buildsWords(what: string, { builds, shares, shareLoose }: PairStatistics, mostPlay: number): string {
  const number = builds.playClamped.length.toLocaleString('en').replaceAll(',', ' ');
  const sentences = [
    `Of ${number} builds of ${what}, once clamped: loaded ${share(shares.loaded)}, more play than ${micrometres(mostPlay)} ${share(shares.playHigh)}, right ${share(shares.yield)}.`,
    `Half of them have ${shares.median < 0 ? `${micrometres(-shares.median)} too little travel or less` : `${micrometres(shares.median)} of play or more`}.`,
    ...(shares.loaded > 0 ? [`Of all builds 99 % carry ${force(shares.load99)} or less.`] : []),
    ...builds.contributions
      .slice(0, 1)
      .map(({ id, share: part }) => `The play strays most by ${id}, ${share(part)}.`),
    ...(shareLoose > 0 ? [`An outer ring is loose in its seat in ${share(shareLoose)}.`] : []),
  ];
  return sentences.join(' ');
}
