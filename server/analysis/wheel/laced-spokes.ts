import type { Side } from '../../spec/model.ts';
import type { WheelAnalysis, WheelGroup } from './analyze-wheel.ts';
import { type RimHole, rimOrders } from './rim-order.ts';

/** One spoke from its hole in the hub to its hole in the rim. Turns in rad from the valve, clockwise as seen from the right. */
export interface LacedSpoke {
  readonly side: Side;
  /** From the valve on, among those of its side, from 1. */
  readonly number: number;
  /** Hole of the rim from the valve on, from 1. */
  readonly rimHole: number;
  readonly rimTurn: number;
  readonly hubTurn: number;
  readonly hubRadius: number;
  readonly rimRadius: number;
  /** A leading spoke meets the rim ahead of its hub hole as the wheel rolls; a trailing one behind it. */
  readonly direction: 'leading' | 'trailing' | 'radial';
  readonly head: WheelGroup['head'];
  readonly group: WheelGroup;
}

/** Every spoke of a wheel, in the order of the holes of the rim. */
export interface LacedWheel {
  readonly spokes: readonly LacedSpoke[];
  /** What the files leave open and was chosen. */
  readonly assumed: readonly string[];
}

/**
 * Puts each spoke into its holes. Where the files leave a choice, the spokes beside the valve lean away from it, so that a
 * pump has room. Null until both sides are known.
 */
export function lacedSpokes(wheel: WheelAnalysis): LacedWheel | null {
  const { rim, sides, groups } = wheel;
  const [left, right] = (['left', 'right'] as const).map((name) => sides.find(({ side }) => side === name));
  if (!rim || !left || !right) return null;
  const orders = rimOrders(rim, { left: left.count, right: right.count });
  const crossed = sides.filter(({ lacing }) => 0 < lacing.crosses);
  const tries = orders.flatMap((order) =>
    [0, 1].flatMap((ofLeft) =>
      [0, 1].map((ofRight) => lace(order, groups, { left: ofLeft, right: ofRight })),
    ),
  );
  const best = tries
    .map((spokes) => ({ spokes, misfit: Math.round(misfit(spokes, wheel) * 1e6), tight: atValve(spokes) }))
    .sort((a, b) => a.misfit - b.misfit || a.tight - b.tight)[0];
  if (!best) return null;
  return {
    spokes: best.spokes,
    assumed: [
      `first rim hole after the valve, clockwise as seen from the right, taken to belong to the ${best.spokes[0]?.side} side: look at the rim`,
      ...crossed
        .filter(({ groups: own }) => own.length > 1 && own.every(({ direction }) => direction === 'both'))
        .map(
          ({ side }) =>
            `${side} spokes with their heads inwards taken as the trailing ones: lacing.${side}.outside is not written`,
        ),
    ],
  };
}

function lace(
  order: readonly RimHole[],
  groups: readonly WheelGroup[],
  parity: Readonly<Record<Side, number>>,
): readonly LacedSpoke[] {
  const passed = { left: 0, right: 0 };
  return order.flatMap(({ side, turn }, at): readonly LacedSpoke[] => {
    const own = groups.filter((group) => group.side === side);
    const index = passed[side]++;
    const leans = (index + parity[side]) % 2 === 0 ? 'trailing' : 'leading';
    const group = groupFor(own, leans);
    if (!group) return [];
    const direction = group.angle < 1e-9 ? 'radial' : leans;
    const { hubRadius, rimRadius } = group.line;
    const hubTurn = turn + (leans === 'trailing' ? group.angle : -group.angle);
    const { head } = group;
    return [
      {
        side,
        number: index + 1,
        rimHole: at + 1,
        rimTurn: turn,
        hubTurn,
        hubRadius,
        rimRadius,
        direction,
        head,
        group,
      },
    ];
  });
}

/** Where nothing says which spokes run outside the flange, the trailing ones do. */
function groupFor(own: readonly WheelGroup[], leans: 'leading' | 'trailing'): WheelGroup | undefined {
  return (
    own.find(({ direction }) => direction === leans) ?? (leans === 'leading' ? own[1] : undefined) ?? own[0]
  );
}

/** How far the hub holes that come out are from those of the flange: even, or in pairs; rad. */
function misfit(spokes: readonly LacedSpoke[], { sides }: WheelAnalysis): number {
  let sum = 0;
  for (const { side, count, flange } of sides) {
    if (flange.straightPull) continue;
    const turns = spokes.filter((spoke) => spoke.side === side).map(({ hubTurn }) => inCircle(hubTurn));
    turns.sort((a, b) => a - b);
    const gaps = turns.map((turn, at) =>
      at === 0 ? turn + 2 * Math.PI - (turns.at(-1) ?? 0) : turn - (turns[at - 1] ?? 0),
    );
    const pitch = (2 * Math.PI) / count;
    const radius = (flange.circle?.value ?? 1) / 2;
    const near = flange.pair ? 2 * Math.asin(Math.min(1, flange.pair.value / (2 * radius))) : pitch;
    const offBy = (first: number): number =>
      gaps.reduce(
        (total, gap, at) => total + Math.abs(gap - (at % 2 === first ? near : 2 * pitch - near)),
        0,
      );
    sum += Math.min(offBy(0), offBy(1));
  }
  return sum;
}

/** Spokes beside the valve that lean over it. */
function atValve(spokes: readonly LacedSpoke[]): number {
  const [first, last] = [spokes[0]?.direction, spokes.at(-1)?.direction];
  return (
    (first === 'leading' ? 2 : first === 'radial' ? 1 : 0) +
    (last === 'trailing' ? 2 : last === 'radial' ? 1 : 0)
  );
}

/** An angle between 0 and a full turn, rad. */
const inCircle = (angle: number): number => ((angle % (2 * Math.PI)) + 2 * Math.PI) % (2 * Math.PI);
