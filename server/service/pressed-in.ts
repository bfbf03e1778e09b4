import type { Side } from '../spec/model.ts';
import { shareRadius } from './blocking.ts';
import { type Body, opposite } from './body.ts';
import { driverSize, driversOnWall } from './driver-size.ts';
import type { Hubwork } from './hubwork.ts';
import { pressForce, warmingFor } from './press-force.ts';
import { leaves } from './reach-in.ts';
import { landsFrom, reliefIn, seatPath } from './seat-path.ts';
import type { PressedIn, PressForce, Support } from './step.ts';
import type { Move } from './take-apart.ts';
import type { Tie } from './ties.ts';

type Press = Tie & { readonly kind: 'press' };

/** How each bearing of a move is pressed home; the move is the one that would take it out again. */
export function pressedIn(move: Move, work: Hubwork): readonly PressedIn[] {
  const presses = move.parted.filter((tie) => tie.kind === 'press');
  return [...new Set(presses.map(({ a }) => a))].flatMap((address) => {
    const bearing = work.find.get(address);
    return bearing?.part.bearing
      ? [
          oneIn(
            bearing,
            presses.filter(({ a }) => a === address),
            move,
            work,
          ),
        ]
      : [];
  });
}

function oneIn(bearing: Body, presses: readonly Press[], move: Move, work: Hubwork): PressedIn {
  const outer = presses.find(({ ring }) => ring === 'outer');
  const inner = presses.find(({ ring }) => ring === 'inner');
  const seat = outer ? work.seats.get(bearing.address) : undefined;
  const from = leaves(bearing.address, move);
  const stop = stopOf(bearing.address, outer !== undefined, work);
  const ring = inner && outer ? 'both' : stop === 'spacer' ? 'both' : outer ? 'outer' : 'inner';
  const byAxle =
    outer === undefined && move.moving.includes('axle') && !move.moving.includes(bearing.address);
  const section = bearing.part.bearing as NonNullable<Body['part']['bearing']>;
  const driver = driverSize(ring, section);
  const compound = seat?.seat.values.compound?.value === true;
  const housing = outer ? work.find.get(outer.b) : undefined;
  const path = housing
    ? seatPath(bearing, housing, from, landsFrom(work.variant.assembly[seat?.housing ?? 'shell'], from))
    : [];
  const touches = touched(bearing, from, move, work);
  const { inside: bore } = section.inner;
  return {
    bearing: bearing.address,
    pushed: byAxle ? 'axle' : 'bearing',
    ring,
    why:
      inner && outer
        ? 'both-tight'
        : stop === 'spacer'
          ? 'stopped-by-spacer'
          : outer
            ? 'tight-in-seat'
            : 'tight-on-axle',
    into: seat?.address ?? outer?.b ?? 'axle',
    driver,
    // An axle is pushed on its own end: no driver goes on a ring.
    onWall: byAxle ? null : driversOnWall(driver, work.bench.workshop),
    pilot: { from: bore - 0.1, to: bore - 0.02, by: holdsAxle(move) ? 'axle' : 'pin' },
    path,
    relief: reliefIn(path),
    below: housing ? belowFace(section.outer, housing, from) : null,
    force: compound ? null : forceOf(presses),
    warming: outer?.fit ? warmingFor(outer.fit, work.bench.warmest) : null,
    compound,
    support: byAxle
      ? backed(bearing, move.side, work)
      : supports(bearing, housing ?? null, ring, touches, from, move, work),
    stop,
    touches,
  };
}

function stopOf(bearing: string, outer: boolean, work: Hubwork): PressedIn['stop'] {
  const seat = work.seats.get(bearing);
  if (!outer || !seat) return 'axle';
  return seat.contact?.address === bearing ? seat.stop : 'bearing';
}

/** The part that the inner ring comes to touch: the nearest one behind it that shares a radius with it. */
function touched(bearing: Body, from: Side, move: Move, work: Hubwork): string | null {
  const inner = bearing.part.bearing?.inner;
  if (!inner) return null;
  const way = opposite(from);
  const there = move.moving.includes(bearing.address) ? move.held : move.moving;
  const pushed = work.blocking.pushes(bearing.address, way);
  const face = way === 'right' ? inner.right : inner.left;
  const near = there
    .filter((address) => pushed.has(address))
    .flatMap((address) => work.find.get(address) ?? [])
    .flatMap((body) =>
      body.kind === 'shell' || body.kind === 'freehub'
        ? []
        : body.tubes
            .filter((tube) => shareRadius(tube, inner))
            .map((tube) => ({
              address: body.address,
              off: Math.abs((way === 'right' ? tube.left : tube.right) - face),
            })),
    )
    .filter(({ off }) => off < 0.5)
    .sort((a, b) => a.off - b.off);
  return near[0]?.address ?? null;
}

function holdsAxle({ moving, held }: Move): boolean {
  return moving.includes('axle') || held.includes('axle');
}

function belowFace(
  outer: { readonly left: number; readonly right: number },
  housing: Body,
  from: Side,
): number {
  return from === 'right' ? housing.part.right - outer.right : outer.left - housing.part.left;
}

function forceOf(presses: readonly Press[]): PressForce {
  const forces = presses.map(({ fit, bearing }) => (fit && bearing ? pressForce(fit, bearing.width) : null));
  if (forces.includes(null)) return null;
  return forces.reduce<NonNullable<PressForce>>(
    (all, one) => ({
      least: all.least + (one?.least ?? 0),
      typical: all.typical + (one?.typical ?? 0),
      most: all.most + (one?.most ?? 0),
    }),
    { least: 0, typical: 0, most: 0 },
  );
}

/** The inner ring an axle is pressed into stands on a sleeve at the far side, so the balls carry nothing. */
function backed(bearing: Body, from: Side, work: Hubwork): readonly Support[] {
  const inner = work.find.get(bearing.address)?.part.bearing?.inner;
  if (!inner) return [];
  const side = opposite(from);
  return [
    { under: 'inner-ring', part: bearing.address, side, inside: inner.inside + 0.1, outside: inner.outside },
  ];
}

/** A seat is backed at the far end of its housing, an inner ring at what it runs up against. */
function supports(
  bearing: Body,
  housing: Body | null,
  ring: PressedIn['ring'],
  touches: string | null,
  from: Side,
  move: Move,
  work: Hubwork,
): readonly Support[] {
  const side = opposite(from);
  const group = [...move.moving, ...move.held].flatMap((address) => work.find.get(address) ?? []);
  const others = group.filter(({ address, kind }) => kind === 'bearing' && address !== bearing.address);
  const inHousing = others.filter(
    ({ address }) => housing && work.seats.get(address)?.housing === housing.address,
  );
  const widest = Math.max(0, ...inHousing.map(({ part }) => part.bearing?.outer.outside ?? 0));
  const bore = bearing.part.bearing?.outer.inside ?? 0;
  const under: Support[] = housing
    ? [{ under: 'housing', part: housing.address, side, inside: Math.max(widest, bore) + 0.5, outside: null }]
    : [];
  if (ring === 'outer' && touches === null) return under;
  const far = [...inHousing].sort((a, b) =>
    side === 'left' ? a.part.left - b.part.left : b.part.right - a.part.right,
  )[0];
  const inner = far?.part.bearing?.inner;
  if (touches === 'axle') {
    const axle = work.find.get('axle');
    return axle ? [...under, { under: 'axle', part: 'axle', side, inside: 0, outside: null }] : under;
  }
  if (ring === 'both' && far && inner)
    return [
      ...under,
      { under: 'inner-ring', part: far.address, side, inside: inner.inside, outside: inner.outside },
    ];
  return under;
}
