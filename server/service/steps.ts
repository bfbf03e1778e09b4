import { type Body, opposite, spanOf } from './body.ts';
import type { Hubwork } from './hubwork.ts';
import { pressedIn } from './pressed-in.ts';
import { pressedOut } from './pressed-out.ts';
import type { Moved, Step } from './step.ts';
import type { Move } from './take-apart.ts';

/** A move on the way apart as a step of the work. */
export function stepApart(move: Move, work: Hubwork): Step {
  const moved = { ...movedIn(move, work), side: move.side, towards: move.side, balls: ballsOf(move, work) };
  if (move.kind === 'ring') return { ...moved, kind: 'take-ring-out', ...ringOf(move, work) };
  const pressed = pressedOut(move, work);
  if (0 < pressed.length) return { ...moved, kind: 'press-out', pressed };
  const threads = threadsOf(move);
  return 0 < threads.length ? { ...moved, kind: 'unscrew', threads } : { ...moved, kind: 'slide-off' };
}

/** The same move the other way round, as a step of putting together. */
export function stepTogether(move: Move, work: Hubwork): Step {
  const towards = opposite(move.side);
  const moved = { ...movedIn(move, work), side: move.side, towards, balls: ballsOf(move, work) };
  if (move.kind === 'ring') return { ...moved, kind: 'put-ring-in', ...ringOf(move, work) };
  const pressed = pressedIn(move, work);
  if (0 < pressed.length) return { ...moved, kind: 'press-in', pressed };
  const threads = threadsOf(move);
  return 0 < threads.length ? { ...moved, kind: 'screw-on', threads } : { ...moved, kind: 'slide-on' };
}

const threadsOf = ({ parted }: Move): readonly string[] =>
  parted.flatMap((tie) => (tie.kind === 'thread' ? [tie.a] : []));

function movedIn(move: Move, work: Hubwork): Omit<Moved, 'side' | 'towards'> {
  const bodies = (addresses: readonly string[]): readonly Body[] =>
    addresses.flatMap((address) => work.find.get(address) ?? []);
  const [moving, held] = [bodies(move.moving), bodies(move.held)];
  const [own, rest] = [moving, held].map((all) => spanOf(all.flatMap(({ tubes }) => tubes)));
  const travel = !own || !rest ? 0 : move.side === 'right' ? rest.right - own.left : own.right - rest.left;
  const shell = work.find.has('shell') ? 'shell' : null;
  const everything = work.bodies.length === moving.length + held.length;
  const onHub = shell === null ? everything : move.held.includes(shell) || move.moving.includes(shell);
  return {
    part: mainPart(moving),
    moving: move.moving,
    held: move.held,
    travel: Math.max(0, travel),
    on: onHub ? 'hub' : 'bench',
  };
}

/** What a group that moves is called by: its housing, its axle, its bearing, else its first part. */
function mainPart(moving: readonly Body[]): string {
  for (const kind of ['shell', 'freehub', 'axle', 'bearing']) {
    const found = moving.find((body) => body.kind === kind);
    if (found) return found.address;
  }
  return moving[0]?.address ?? '';
}

function ringOf(move: Move, work: Hubwork) {
  const [address = ''] = move.moving;
  const seat = address.replace(/\.retaining-ring$/, '');
  const found = [...work.seats.values()].find((one) => one.address === seat);
  const { ring, values } = found?.seat ?? {};
  return {
    seat,
    size: (ring?.values.size ?? values?.bore)?.value.nominal ?? null,
    // A ring at the blind end comes after its bearing and holds nothing any more.
    holds: found?.bearings.flatMap((one) => (move.held.includes(one.address) ? [one.address] : [])) ?? [],
  };
}

/** The loose balls that lie open once a cone and its cup part. */
function ballsOf(move: Move, work: Hubwork): Step['balls'] {
  const parts = move.moving.includes('shell') ? move.held : move.held.includes('shell') ? move.moving : [];
  return parts.flatMap((address) => {
    const body = work.find.get(address);
    if (body?.kind !== 'cone') return [];
    const line = work.variant.assembly.line.find((part) => part.address === address);
    const balls = line?.part.values.balls?.value;
    return [{ part: address, count: balls?.count ?? null, diameter: balls?.diameter ?? null }];
  });
}
