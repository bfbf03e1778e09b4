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

const sides = ['right', 'left'] as const;

/**
 * Every way to part a group that is worth a thought. A body takes along what it pushes and what is tied to it; a
 * tie may part on the way: none, one, those of one body, or all of them. Where a group comes apart at all, one of
 * these does it: the last one asks nothing but that what is pushed moves along. What comes off by hand is always
 * the better, so where something does nothing else is looked for.
 */
export function splitsOf(
  group: readonly string[],
  blocking: Blocking,
  ties: readonly Tie[],
  held: string,
): readonly Split[] {
  const graph = graphOf(group, blocking);
  const own = ties.filter(({ a, b }) => graph.at.has(a) && graph.at.has(b));
  const byHand = found([own], graph, own, held);
  if (byHand.some(({ parted }) => parted.length === 0)) return byHand;
  const kept = [
    ...own.map((one) => own.filter((tie) => tie !== one)),
    ...[...new Set(own.map(({ a }) => a))]
      .map((body) => own.filter(({ a }) => a !== body))
      .filter(({ length }) => length < own.length - 1),
    [],
  ];
  return [...byHand, ...found(kept, graph, own, held)];
}

/** The bodies of a group by number, with the numbers each one pushes to a side. */
interface Graph {
  readonly group: readonly string[];
  readonly at: ReadonlyMap<string, number>;
  readonly pushed: Readonly<Record<Side, readonly (readonly number[])[]>>;
}

function graphOf(group: readonly string[], blocking: Blocking): Graph {
  const at = new Map(group.map((address, index) => [address, index]));
  const pushed = (side: Side): readonly (readonly number[])[] =>
    group.map((address) => [...blocking.pushes(address, side)].flatMap((other) => at.get(other) ?? []));
  return { group, at, pushed: { right: pushed('right'), left: pushed('left') } };
}

function found(
  keeping: readonly (readonly Tie[])[],
  graph: Graph,
  own: readonly Tie[],
  held: string,
): readonly Split[] {
  const seen = new Map<string, Split>();
  for (const kept of keeping) {
    const tied = tiedTo(kept, graph);
    for (const side of sides) {
      for (let seed = 0; seed < graph.group.length; seed++) {
        const { moves, count } = closure(seed, graph.pushed[side], tied);
        if (count === graph.group.length) continue;
        const key = `${side} ${moves.join('')}`;
        if (!seen.has(key)) seen.set(key, named(moves, side, graph, own, held));
      }
    }
  }
  return [...seen.values()];
}

function tiedTo(ties: readonly Tie[], { group, at }: Graph): readonly (readonly number[])[] {
  const tied: number[][] = group.map(() => []);
  for (const { a, b } of ties) {
    const [one, other] = [at.get(a), at.get(b)];
    if (one === undefined || other === undefined) continue;
    tied[one]?.push(other);
    tied[other]?.push(one);
  }
  return tied;
}

/** Which bodies move when `seed` does, a 1 for each that does. */
function closure(
  seed: number,
  pushed: readonly (readonly number[])[],
  tied: readonly (readonly number[])[],
): { readonly moves: Uint8Array; readonly count: number } {
  const moves = new Uint8Array(pushed.length);
  const next = [seed];
  moves[seed] = 1;
  let count = 1;
  const along = (body: number): void => {
    if (moves[body] === 1) return;
    moves[body] = 1;
    count += 1;
    next.push(body);
  };
  for (let body = next.pop(); body !== undefined; body = next.pop()) {
    for (const other of pushed[body] ?? []) along(other);
    for (const other of tied[body] ?? []) along(other);
  }
  return { moves, count };
}

/** The same parting told from the side of what is held: the shell stays, the rest moves. */
function named(
  moves: Uint8Array,
  side: Side,
  { group, at }: Graph,
  ties: readonly Tie[],
  held: string,
): Split {
  const does = (body: string): boolean => moves[at.get(body) ?? 0] === 1;
  const turned = does(held);
  return {
    moving: group.filter((body) => does(body) !== turned),
    side: turned ? (side === 'right' ? 'left' : 'right') : side,
    parted: ties.filter(({ a, b }) => does(a) !== does(b)),
  };
}

/** Bodies of a group that all push each other, whichever way one of them moves. The smallest such set is named. */
export function lockedIn(group: readonly string[], blocking: Blocking): readonly string[] {
  const graph = graphOf(group, blocking);
  const none = group.map(() => []);
  const sets = group.map((_, seed) => {
    const right = closure(seed, graph.pushed.right, none).moves;
    const left = closure(seed, graph.pushed.left, none).moves;
    return group.filter((__, body) => right[body] === 1 && left[body] === 1);
  });
  return sets.filter((set) => 1 < set.length).sort((a, b) => a.length - b.length)[0] ?? [];
}
