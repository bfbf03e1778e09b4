import type { Body } from './body.ts';
import type { Hubwork } from './hubwork.ts';
import { offAxle } from './off-axle.ts';
import { pressForce } from './press-force.ts';
import { leaves, reachIn } from './reach-in.ts';
import { landsFrom, reliefIn, seatPath } from './seat-path.ts';
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
  const ring = seat?.seat.ring ? `${seat.address}.retaining-ring` : null;
  // A ring still there lies at the blind end: it holds nothing back and comes after the bearing.
  const rings = ring !== null && ![...move.moving, ...move.held].includes(ring) ? [ring] : [];
  const compound = outer !== undefined && seat?.seat.values.compound?.value === true;
  const force = compound || forces.includes(null) ? null : sum(forces.flatMap((one) => one ?? []));
  const base = { bearing: bearing.address, compound, force };
  if (!outer) return { ...base, ...offAxle(bearing, move, work) };
  const reach = reachIn(bearing, move, [...move.moving, ...move.held], work);
  const housing = work.find.get(outer.b);
  const path = housing
    ? seatPath(
        bearing,
        housing,
        leaves(bearing.address, move),
        landsFrom(work.variant.assembly[seat?.housing ?? 'shell'], leaves(bearing.address, move)),
      )
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
