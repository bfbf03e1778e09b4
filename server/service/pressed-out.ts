import type { Body } from './body.ts';
import type { Hubwork } from './hubwork.ts';
import { pressForce } from './press-force.ts';
import { leaves, reachIn } from './reach-in.ts';
import { reliefIn, seatPath } from './seat-path.ts';
import type { PressedOut, Support } from './step.ts';
import type { Move } from './take-apart.ts';
import type { Tie } from './ties.ts';

type Press = Tie & { readonly kind: 'press' };

/** Room a hollow block leaves around a ring that drops into it, mm on the diameter (`common practice`). */
const dropRoom = 1;

/** What it takes to bring each bearing of a move out of its seat or off its axle. */
export function pressedOut(move: Move, work: Hubwork): readonly PressedOut[] {
  const presses = move.parted.filter((tie) => tie.kind === 'press');
  return [...new Set(presses.map(({ a }) => a))].flatMap((address) => {
    const bearing = work.find.get(address);
    return bearing
      ? [
          oneOut(
            bearing,
            presses.filter(({ a }) => a === address),
            move,
            work,
          ),
        ]
      : [];
  });
}

function oneOut(bearing: Body, presses: readonly Press[], move: Move, work: Hubwork): PressedOut {
  const outer = presses.find(({ ring }) => ring === 'outer');
  const inner = presses.find(({ ring }) => ring === 'inner');
  const forces = presses.map(({ fit, bearing: mounted }) =>
    fit && mounted ? pressForce(fit, mounted.width) : null,
  );
  const seat = work.seats.get(bearing.address);
  const rings = seat?.seat.ring ? [`${seat.address}.retaining-ring`] : [];
  const compound = outer !== undefined && seat?.seat.values.compound?.value === true;
  const force = compound || forces.includes(null) ? null : sum(forces.flatMap((one) => one ?? []));
  const base = { bearing: bearing.address, compound, force };
  if (!outer) {
    const bare = innerFace(bearing, work);
    return {
      ...base,
      from: inner?.b ?? 'axle',
      ring: 'inner',
      reach: { by: 'inner-ring', bare },
      // An outer ring that stays in its seat while the axle is driven out takes the force through the balls.
      scrap: bare < 0.3 || isHoused(bearing.address, move, work),
      ringsFirst: [],
      relief: null,
      support: isHoused(bearing.address, move, work)
        ? housingSupport(bearing, move, work)
        : innerSupport(bearing, move),
    };
  }
  const reach = reachIn(bearing, move, [...move.moving, ...move.held], work);
  const housing = work.find.get(outer.b);
  const path = housing
    ? seatPath(bearing, housing, leaves(bearing.address, move), seat?.seat.values.land?.value.nominal ?? null)
    : [];
  return {
    ...base,
    from: seat?.address ?? outer.b,
    ring: inner ? 'both' : 'outer',
    reach,
    scrap: reach.by !== 'outer-ring' || inner !== undefined,
    ringsFirst: rings,
    relief: reliefIn(path),
    support: housingSupport(bearing, move, work),
  };
}

/** Whether a bearing still sits in its housing when the axle leaves it. */
function isHoused(bearing: string, { moving, held }: Move, work: Hubwork): boolean {
  const housing = work.seats.get(bearing)?.housing;
  const same = moving.includes(bearing) ? moving : held;
  return housing !== undefined && same.includes(housing);
}

function housingSupport(bearing: Body, move: Move, work: Hubwork): Support | null {
  const housing = work.seats.get(bearing.address)?.housing;
  const body = housing === undefined ? undefined : work.find.get(housing);
  const outer = bearing.part.bearing?.outer;
  if (!body || !outer) return null;
  return {
    under: 'housing',
    part: body.address,
    side: leaves(bearing.address, move),
    inside: outer.outside + dropRoom,
    outside: null,
  };
}

function innerSupport(bearing: Body, move: Move): Support | null {
  const inner = bearing.part.bearing?.inner;
  if (!inner) return null;
  const side = leaves(bearing.address, move) === 'left' ? 'right' : 'left';
  return { under: 'inner-ring', part: bearing.address, side, inside: inner.inside, outside: inner.outside };
}

/** How much of the inner ring's face stands out beside the thickest part of the axle, mm on one side. */
function innerFace(bearing: Body, work: Hubwork): number {
  const inner = bearing.part.bearing?.inner;
  const axle = work.find.get('axle');
  if (!inner || !axle) return 0;
  const near = axle.tubes
    .filter(
      ({ left, right, outside }) =>
        inner.inside + 0.1 < outside &&
        (Math.abs(left - inner.right) < 0.5 || Math.abs(right - inner.left) < 0.5),
    )
    .map(({ outside }) => outside);
  return (inner.outside - Math.min(inner.outside, Math.max(inner.inside, ...near))) / 2;
}

const sum = (
  forces: readonly { readonly least: number; readonly typical: number; readonly most: number }[],
) =>
  forces.reduce(
    (all, one) => ({
      least: all.least + one.least,
      typical: all.typical + one.typical,
      most: all.most + one.most,
    }),
    { least: 0, typical: 0, most: 0 },
  );
