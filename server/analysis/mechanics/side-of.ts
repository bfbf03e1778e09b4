import type { FilledHousing, FilledSeat } from '../../assembly/housings.ts';
import { angularBearing, axialBearing } from '../../engine/contact/axial-load.ts';
import { allSteel, type BearingElasticity } from '../../engine/contact/ball-contact.ts';
import { bearingSteel } from '../../engine/contact/elasticity.ts';
import { angularSide, deepGrooveSide, type PairSide } from '../../engine/play/pair-side.ts';
import { materials } from '../../engine/tables/materials.ts';
import type { Side } from '../../spec/model.ts';
import { angularContact } from './angular-contact.ts';
import type { MountedBearing } from './mounted-bearing.ts';

/** Force that holds an outer ring against being pushed to one side, N; Infinity where something solid stops it. */
export type Holds = Readonly<Record<Side, number>>;

/**
 * A bearing as one side of a pair, with what holds its outer ring each way: a shoulder, a retaining ring, another
 * outer ring in the same seat, or the grip of its seat. Null where a seat, a clearance or a back face is not known.
 */
export function sideOf(
  mounted: MountedBearing,
  housing: FilledHousing,
  side: Side,
  bearings: readonly MountedBearing[],
): PairSide | null {
  const seat = seatOf(mounted, housing);
  if (!seat) return null;
  const other: Side = side === 'left' ? 'right' : 'left';
  const hold = holdsOf(mounted, seat, bearings);
  return sideWith(mounted, side, hold[side], hold[other]);
}

/** A bearing as one side of a pair, its outer ring held by so much, N, each way. */
export function sideWith(
  mounted: MountedBearing,
  side: Side,
  outward: number,
  inward: number,
): PairSide | null {
  if (!mounted.mounted) return null;
  const elasticity = elasticityOf(mounted);
  const angular = angularContact(mounted.stack);
  if (!angular) {
    return deepGrooveSide(axialBearing(mounted.geometry, mounted.mounted.mean, elasticity), outward, inward);
  }
  const { angle, back } = angular;
  if (!back || angle === null) return null;
  const loss = mounted.free ? mounted.free.lo - mounted.mounted.mean : 0;
  // The balls push an outer ring towards its back face: with that turned to the other bearing, inner rings driven
  // together are carried.
  return angularSide(
    angularBearing(mounted.geometry, angle, loss, elasticity),
    angle,
    back === side ? 'outward' : 'inward',
    outward,
    inward,
  );
}

/** The seat of a housing a bearing stands in. */
export function seatOf({ address }: MountedBearing, { seats }: FilledHousing): FilledSeat | null {
  return seats.find(({ bearings }) => bearings.some((bearing) => bearing.address === address)) ?? null;
}

/**
 * What stops the outer ring to the left and to the right. Towards its stop a ring that leans on another in the same
 * seat is stopped as that one is; away from it, it has its own grip and that of every ring it pushes along.
 */
function holdsOf({ address }: MountedBearing, seat: FilledSeat, bearings: readonly MountedBearing[]): Holds {
  // A ring that is the stop itself holds that way and no other.
  const ring =
    seat.stop === 'ring' ? null : (seat.seat.ring?.values.side?.value ?? (seat.seat.ring ? 'open' : null));
  const at = seat.bearings.findIndex((part) => part.address === address);
  const grips = seat.bearings.map((part) => bearings.find((one) => one.address === part.address)?.grip ?? 0);
  const sum = (some: readonly number[]): number => some.reduce((total, grip) => total + grip, 0);
  const [toLeft, toRight] = [sum(grips.slice(0, at + 1)), sum(grips.slice(at))];
  const [along, away] = seat.stopSide === 'right' ? [toRight, toLeft] : [toLeft, toRight];
  const stopped = seat.stop === 'spacer' ? along : Number.POSITIVE_INFINITY;
  const open = ring === 'open' ? Number.POSITIVE_INFINITY : away;
  return seat.stopSide === 'right' ? { right: stopped, left: open } : { left: stopped, right: open };
}

function elasticityOf({ stack }: MountedBearing): BearingElasticity {
  if (stack.bearing?.material !== 'hybrid') return allSteel;
  const { E, nu } = materials['silicon nitride'];
  return { ring: bearingSteel, ball: { E, nu } };
}
