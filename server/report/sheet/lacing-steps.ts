import type { WheelAnalysis } from '../../analysis/wheel/analyze-wheel.ts';
import { type LacedSpoke, lacedSpokes } from '../../analysis/wheel/laced-spokes.ts';
import { spokeCrossings } from '../../analysis/wheel/spoke-crossings.ts';
import { plain } from '../../engine/base/figures.ts';

type Side = LacedSpoke['side'];

/** Spokes that go in together: same side, heads and lean. */
interface LacingStep {
  readonly side: Side;
  readonly spokes: readonly LacedSpoke[];
}

/**
 * The lacing in words, a step for each side and run of spokes: through which hole of the flange from which side, to which hole
 * of the rim, over or under which others. Holes of the rim count from the valve, clockwise as seen from the right.
 */
export function lacingSteps(
  wheel: WheelAnalysis,
  interlaced: Readonly<Record<Side, boolean>>,
): readonly string[] {
  const laced = lacedSpokes(wheel);
  if (!laced) return [];
  const order = ['head-out', 'straight-pull', 'head-in'].flatMap((head) =>
    (['right', 'left'] as const).flatMap((side) =>
      (['trailing', 'leading', 'radial'] as const).map(
        (direction): LacingStep => ({
          side,
          spokes: laced.spokes.filter(
            (spoke) => spoke.side === side && spoke.head === head && spoke.direction === direction,
          ),
        }),
      ),
    ),
  );
  const steps = order.filter(({ spokes }) => spokes.length > 0);
  const first = steps[0]?.spokes[0];
  return first ? steps.map((step) => words(step, first, laced.spokes, interlaced[step.side])) : [];
}

function words(
  { side, spokes }: LacingStep,
  start: LacedSpoke,
  all: readonly LacedSpoke[],
  interlaced: boolean,
): string {
  const [one] = spokes;
  if (!one) return '';
  const lean = one.direction === 'radial' ? 'radial' : one.direction;
  const length = one.group.fit ? ` of ${plain(one.group.fit.length.chosen)} mm` : '';
  const rim = spokes.map(({ rimHole }) => rimHole);
  return [
    `${side}, ${spokes.length} ${lean} spokes${length}: ${through(one)}`,
    `the first ${hubPlace(one, start, all)}, to rim hole ${rim[0]}; the rest to rim holes ${rim.slice(1).join(', ')}`,
    ...crossing(one, all, interlaced),
  ].join('; ');
}

function through({ head, side }: LacedSpoke): string {
  if (head === 'straight-pull') return `into their seats in the ${side} flange`;
  return head === 'head-in'
    ? 'through the flange from inside, so that the heads look inwards and the spokes run outside it'
    : 'through the flange from outside, so that the heads look outwards and the spokes run inside it';
}

/** Where the hub hole lies from the one the lacing began with. */
function hubPlace(spoke: LacedSpoke, start: LacedSpoke, all: readonly LacedSpoke[]): string {
  if (spoke === start) return `through any hole that takes them (call it A)`;
  const turn = 2 * Math.PI;
  const away = (((spoke.hubTurn - start.hubTurn) % turn) + turn) % turn;
  const pitch = turn / all.filter(({ side }) => side === spoke.side).length;
  const holes = away / pitch;
  if (
    spoke.side === start.side &&
    spoke.head !== 'straight-pull' &&
    Math.abs(holes - Math.round(holes)) < 0.05
  ) {
    const count = Math.round(holes);
    return count === 0
      ? 'through hole A'
      : `through the hole ${count} ${count === 1 ? 'place' : 'places'} clockwise of A`;
  }
  const degrees = Math.round((away * 180) / Math.PI) % 360;
  const way = 180 < degrees ? `${360 - degrees}° anticlockwise of A` : `${degrees}° clockwise of A`;
  return degrees === 0 ? 'across from A' : `through the hole ${way}, seen from the right`;
}

/** Only the spokes that go in last meet others that are there. */
function crossing(spoke: LacedSpoke, all: readonly LacedSpoke[], interlaced: boolean): readonly string[] {
  const own = all.filter(({ side }) => side === spoke.side);
  const met = spokeCrossings(own, interlaced).filter(({ outer }) => outer === spoke);
  if (met.length === 0) return [];
  const over = met.filter(({ under }) => !under).length;
  const last = met.length - over;
  const crosses = (count: number): string => (count === 1 ? 'one crossing' : `${count} crossings`);
  if (last === 0) return [`each over all its ${crosses(met.length)}`];
  return [
    over === 0
      ? 'each under at its one crossing'
      : `each over at ${crosses(over)}, then under at the last, next to the rim`,
  ];
}
