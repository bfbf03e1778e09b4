import type { Side } from '../spec/model.ts';
import { type Blocking, meets } from './blocking.ts';
import type { Body } from './body.ts';
import { lockedIn, type Split, splitsOf } from './splits.ts';
import type { Tie } from './ties.ts';

/** One thing done on the way apart: a part of a group moves off to a side, or a retaining ring comes out. */
export interface Move {
  readonly kind: 'part' | 'ring';
  readonly moving: readonly string[];
  /** What it moves off from. */
  readonly held: readonly string[];
  readonly side: Side;
  readonly parted: readonly Tie[];
}

/** The order, or the bodies that lock each other for good. */
export interface Apart {
  readonly moves: readonly Move[];
  readonly locked: readonly string[] | null;
}

/** What a move costs: the cheapest is made first. */
export type Price = (split: Split, group: readonly string[]) => number;

/** What taking a ring out costs: dearer than anything that goes by hand, cheaper than any force. */
const ringPrice = 20;

/**
 * Takes a hub apart, the cheapest move first. A move only ever removes what stands in the way of others, so no
 * choice is ever wrong: the search need not turn back, and where it stops nothing else would have gone on.
 */
export function takeApart(
  bodies: readonly Body[],
  blocking: Blocking,
  ties: readonly Tie[],
  price: Price,
): Apart {
  const groups: (readonly string[])[] = [bodies.map(({ address }) => address)];
  const moves: Move[] = [];
  const find = new Map(bodies.map((body) => [body.address, body]));
  for (let group = groups.shift(); group; group = groups.shift()) {
    if (group.length < 2) continue;
    const move = nextMove(group, find, blocking, ties, price);
    if (!move) return { moves, locked: core(group, find, blocking) };
    moves.push(move);
    groups.unshift(move.held);
    if (1 < move.moving.length) groups.push(move.moving);
  }
  return { moves, locked: null };
}

/** Bodies that hold each other for good, as few of them as do; null where everything comes apart. */
export function lockedBodies(bodies: readonly Body[], blocking: Blocking): readonly string[] | null {
  const find = new Map(bodies.map((body) => [body.address, body]));
  const group = bodies.map(({ address }) => address);
  if (frees(group, find, blocking)) return null;
  return takeApart(bodies, blocking, [], () => ringPrice).locked;
}

function nextMove(
  group: readonly string[],
  find: ReadonlyMap<string, Body>,
  blocking: Blocking,
  ties: readonly Tie[],
  price: Price,
): Move | null {
  const splits = splitsOf(group, blocking, ties, heldIn(group, find)).map((split) => ({
    split,
    price: price(split, group),
  }));
  const [best] = splits.sort((a, b) => a.price - b.price);
  const ring = best && best.price < ringPrice ? null : ringOut(group, find);
  if (ring) return ring;
  if (!best) return null;
  const { moving, side, parted } = best.split;
  return { kind: 'part', moving, side, parted, held: group.filter((body) => !moving.includes(body)) };
}

/** A retaining ring that the pliers reach: squeezed, it passes everything on its way out to one side. */
function ringOut(group: readonly string[], find: ReadonlyMap<string, Body>): Move | null {
  const bodies = group.flatMap((address) => find.get(address) ?? []);
  for (const { address, squeezed } of bodies) {
    if (!squeezed) continue;
    const held = group.filter((other) => other !== address);
    for (const side of ['right', 'left'] as const) {
      if (bodies.some((other) => other.address !== address && meets(squeezed, side, other))) continue;
      return { kind: 'ring', moving: [address], held, side, parted: [] };
    }
  }
  return null;
}

/** What stays in the hand or on the bench while the rest moves. */
function heldIn(group: readonly string[], find: ReadonlyMap<string, Body>): string {
  const order = ['shell', 'freehub', 'axle'];
  const [first = ''] = [...group].sort((a, b) => rank(a) - rank(b));
  function rank(address: string): number {
    const at = order.indexOf(find.get(address)?.kind ?? '');
    return at < 0 ? order.length : at;
  }
  return first;
}

/** The fewest of a locked group that still hold each other when everything else is gone. */
function core(
  group: readonly string[],
  find: ReadonlyMap<string, Body>,
  blocking: Blocking,
): readonly string[] {
  let kept = lockedIn(group, blocking);
  if (kept.length === 0 || frees(kept, find, blocking)) kept = group;
  for (const body of kept) {
    const fewer = kept.filter((other) => other !== body);
    if (1 < fewer.length && !frees(fewer, find, blocking)) kept = fewer;
  }
  return kept;
}

/** Whether bodies come apart at all, force and threads aside. */
function frees(group: readonly string[], find: ReadonlyMap<string, Body>, blocking: Blocking): boolean {
  const groups = [group];
  for (let one = groups.pop(); one; one = groups.pop()) {
    if (one.length < 2) continue;
    const move = nextMove(one, find, blocking, [], () => ringPrice);
    if (!move) return false;
    groups.push(move.moving, move.held);
  }
  return true;
}
