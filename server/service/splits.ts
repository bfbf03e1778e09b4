import type { Side } from '../spec/model.ts';
import type { Blocking } from './blocking.ts';
import type { Tie } from './ties.ts';

/** A way to part a group: some of its bodies move to a side, the rest stays. */
export interface Split {
  readonly moving: readonly string[];
  readonly side: Side;
  /** The fits and threads that part. */
  readonly parted: readonly Tie[];
}

/**
 * Every way to part a group that is worth a thought. A body takes along what it pushes and what is tied to it; a
 * tie may part on the way: none, one, those of one body, or all of them. Where a group comes apart at all, one of
 * these does it: the last one asks nothing but that what is pushed moves along.
 */
export function splitsOf(
  group: readonly string[],
  blocking: Blocking,
  ties: readonly Tie[],
  held: string,
): readonly Split[] {
  const inside = new Set(group);
  const own = ties.filter(({ a, b }) => inside.has(a) && inside.has(b));
  const free: (readonly Tie[])[] = [
    own,
    ...own.map((one) => own.filter((tie) => tie !== one)),
    ...[...new Set(own.map(({ a }) => a))].map((body) => own.filter(({ a }) => a !== body)),
    [],
  ];
  const found = new Map<string, Split>();
  for (const kept of free) {
    for (const seed of group) {
      for (const side of ['right', 'left'] as const) {
        const moving = closure(seed, side, inside, blocking, kept);
        if (moving.size === group.length) continue;
        const split = named(moving, side, group, own, held);
        found.set(`${split.side} ${split.moving.join(' ')}`, split);
      }
    }
  }
  return [...found.values()];
}

/** What moves when `seed` moves to a side. */
function closure(
  seed: string,
  side: Side,
  inside: ReadonlySet<string>,
  blocking: Blocking,
  ties: readonly Tie[],
): ReadonlySet<string> {
  const moving = new Set([seed]);
  for (const body of moving) {
    for (const pushed of blocking.pushes(body, side)) if (inside.has(pushed)) moving.add(pushed);
    for (const { a, b } of ties) {
      if (a === body) moving.add(b);
      if (b === body) moving.add(a);
    }
  }
  return moving;
}

/** The same parting told from the side of what is held: the shell stays, the rest moves. */
function named(
  moving: ReadonlySet<string>,
  side: Side,
  group: readonly string[],
  ties: readonly Tie[],
  held: string,
): Split {
  const parted = ties.filter(({ a, b }) => moving.has(a) !== moving.has(b));
  const turned = moving.has(held);
  return {
    moving: group.filter((body) => moving.has(body) !== turned),
    side: turned ? (side === 'right' ? 'left' : 'right') : side,
    parted,
  };
}

/** Bodies of a group that all push each other, whichever way one of them moves. The smallest such set is named. */
export function lockedIn(group: readonly string[], blocking: Blocking): readonly string[] {
  const inside = new Set(group);
  const sets = group.map((seed) => {
    const right = closure(seed, 'right', inside, blocking, []);
    const left = closure(seed, 'left', inside, blocking, []);
    return group.filter((body) => right.has(body) && left.has(body));
  });
  return sets.filter((set) => 1 < set.length).sort((a, b) => a.length - b.length)[0] ?? [];
}
