import { spanOf } from './body.ts';
import type { Hubwork } from './hubwork.ts';
import type { Reach } from './reach.ts';
import { leaves, reachIn } from './reach-in.ts';
import type { Split } from './splits.ts';
import type { Price } from './take-apart.ts';

/** What it costs to get at a bearing, by how it is reached. */
const reachPrice: Readonly<Record<Reach['by'], number>> = {
  'outer-ring': 0,
  part: 2,
  drift: 3,
  extractor: 8,
  none: 300,
};

/**
 * What a hand would rather do: slide what is loose, unscrew, and only then use force; one fit at a time, where it
 * can be got at, out of the side it came in by. Putting together is priced without the reach, since a ring going
 * in is always pushed on the face one sees; there the ring that has a stop of its own goes in first.
 */
export function priceOf(direction: 'apart' | 'together', work: Hubwork): Price {
  const { find, seats } = work;
  const spans = new Map(work.bodies.map(({ address, tubes }) => [address, spanOf(tubes)]));
  const all = spanOf(work.bodies.flatMap(({ tubes }) => tubes));
  return (split, group) => {
    const presses = split.parted.filter((tie) => tie.kind === 'press');
    const threads = split.parted.length - presses.length;
    const parts = split.moving.length + farOf(split, spans, all) / 1000 + (split.side === 'right' ? 0 : 0.01);
    // Cone and locknut of the drive side stay locked: all adjusting is done on the other side (`common practice`).
    const drive = split.side === 'right' && group.includes('shell') ? 20 : 0;
    if (presses.length === 0) return threads === 0 ? parts : 200 * threads + drive + parts;
    const outer = presses.filter(({ ring }) => ring === 'outer');
    const against = outer.filter(({ a }) => leaves(a, split) !== (seats.get(a)?.from ?? null)).length;
    const base = 1000 + 100 * presses.length + 200 * threads + 150 * against + parts;
    if (direction === 'together') {
      // An axle goes into a bearing that is in its seat only where nothing else is simpler.
      const into = presses.filter(({ ring, a }) => ring === 'inner' && !split.moving.includes(a)).length;
      const stopped = outer.filter(({ a }) => seats.get(a)?.stop !== 'spacer').length;
      return base + 50 * into + 5 * stopped + 2 * split.moving.length;
    }
    const reached = outer.map(({ a }) => {
      const bearing = find.get(a);
      return bearing ? reachPrice[reachIn(bearing, split, group, work).by] : 0;
    });
    return base + reached.reduce((sum, price) => sum + price, 0);
  };
}

type Span = ReturnType<typeof spanOf>;

/** How far the moving bodies go, at most, until they are clear of all others, mm: the nearer side is the better. */
function farOf({ moving, side }: Split, spans: ReadonlyMap<string, Span>, all: Span): number {
  const own = moving.flatMap((address) => spans.get(address) ?? []);
  return side === 'right'
    ? all.right - Math.min(...own.map(({ left }) => left))
    : Math.max(...own.map(({ right }) => right)) - all.left;
}
