import { type Body, opposite, spanOf } from './body.ts';
import type { Hubwork } from './hubwork.ts';
import { bareWidth, isBehind } from './reach.ts';
import { leaves } from './reach-in.ts';
import type { PressedOut } from './step.ts';
import type { Move } from './take-apart.ts';

/** Face of an inner ring that a sleeve or a split plate needs to back it, mm (`common practice`). */
export const backingFace = 0.3;
/** Thickness of a split plate that goes in beside a bearing from outside, mm (`common practice`). */
const plate = 3;

/** A bearing and the axle it is tight on part: where its inner ring is backed, the balls carry nothing. */
export function offAxle(
  bearing: Body,
  move: Move,
  work: Hubwork,
): Pick<PressedOut, 'from' | 'ring' | 'reach' | 'scrap' | 'ringsFirst' | 'relief' | 'support'> {
  const side = opposite(leaves(bearing.address, move));
  const last = lastInLine(bearing, side, move, work);
  const bare = bareFace(last, side, move, work);
  // Where the axle takes another bearing along, nothing can stand under the inner ring of the one that stays.
  const takes = move.parted.some((tie) => tie.kind === 'press' && tie.ring === 'outer');
  const backed = backingFace <= bare && !takes;
  const inner = last.part.bearing?.inner;
  return {
    from: 'axle',
    ring: 'inner',
    reach: { by: 'inner-ring', bare: takes ? 0 : bare },
    scrap: !backed,
    ringsFirst: [],
    relief: null,
    support:
      backed && inner && last === bearing
        ? {
            under: 'inner-ring',
            part: bearing.address,
            side,
            inside: inner.inside + 0.1,
            outside: inner.outside,
          }
        : null,
  };
}

/** An axle driven out of several bearings pushes their inner rings against each other: the last one is backed. */
function lastInLine(bearing: Body, side: 'left' | 'right', move: Move, work: Hubwork): Body {
  if (!move.moving.includes('axle') || move.moving.includes(bearing.address)) return bearing;
  const others = move.parted.flatMap((tie) =>
    tie.kind === 'press' && tie.ring === 'inner' ? (work.find.get(tie.a) ?? []) : [],
  );
  const sorted = [...others].sort((a, b) => a.part.left - b.part.left);
  return (side === 'right' ? sorted.at(-1) : sorted[0]) ?? bearing;
}

/** The widest ring of the inner ring's face on a side that nothing lies before, mm. */
function bareFace(bearing: Body, side: 'left' | 'right', move: Move, work: Hubwork): number {
  const inner = bearing.part.bearing?.inner;
  if (!inner) return 0;
  const group = [...move.moving, ...move.held];
  const housing = work.seats.get(bearing.address)?.housing;
  const housed = housing !== undefined && group.includes(housing);
  const { left, right } = spanOf(bearing.tubes);
  const inTheWay = group
    .filter((address) => address !== bearing.address && address !== housing)
    .flatMap((address) => work.find.get(address)?.tubes ?? [])
    .filter((tube) => isBehind(tube, bearing, opposite(side)))
    .filter((tube) => housed || (side === 'right' ? tube.left < right + plate : left - plate < tube.right));
  return bareWidth(inner.inside, inner.outside, inTheWay);
}
