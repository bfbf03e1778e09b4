/**
 * Places texts of different widths in rows without overlap, keeping their order, so that the leaders to them
 * never cross. A text of a farther row leaves a slot in each nearer row for its leader to pass.
 */

export interface Placeable {
  /** Where its middle would like to stand, mm. */
  readonly want: number;
  readonly width: number;
}

export interface PlacedInRow {
  readonly row: number;
  /** Middle of the leader's slot in each nearer row, then of the text itself, mm. */
  readonly centres: readonly number[];
}

/** Room between neighbours of a row, and the slot a leader needs, mm. */
const gap = 2.5;
const slot = 1;

/** How far a text may be pushed aside before another row is the lesser evil, mm. */
const asideForRow = 12;
/** Rows beyond those that the texts need in any case. */
const moreRows = 3;

/** Rows from the nearest (0) outwards, as many as read best; `fixed` are lines that pass through them and stay where they are. */
export function placeInRows(
  items: readonly Placeable[],
  bounds: readonly [number, number],
  fixed: readonly number[] = [],
): readonly PlacedInRow[] {
  if (items.length === 0) return [];
  const total = items.reduce((sum, { width }) => sum + width + gap, 0);
  const needed = Math.max(1, Math.ceil(total / (bounds[1] - bounds[0])));
  let best: { readonly placed: readonly PlacedInRow[]; readonly cost: number } | null = null;
  for (let rows = needed; rows <= needed + moreRows; rows += 1) {
    const placed = place(items, bounds, fixed, rows);
    const aside = placed.map(({ centres }, at) => Math.abs((centres.at(-1) ?? 0) - (items[at]?.want ?? 0)));
    const cost = Math.max(...aside) + rows * asideForRow;
    if (!best || cost < best.cost) best = { placed, cost };
  }
  return best?.placed ?? [];
}

function place(
  items: readonly Placeable[],
  bounds: readonly [number, number],
  fixed: readonly number[],
  rows: number,
): readonly PlacedInRow[] {
  const order = items
    .map((_, at) => at)
    .sort((a, b) => (items[a]?.want ?? 0) - (items[b]?.want ?? 0) || a - b);
  const rowOf = new Map(order.map((item, at) => [item, at % rows]));
  const centres = items.map((): number[] => []);
  const wants = items.map(({ want }) => want);
  for (let row = 0; row < rows; row += 1) {
    const here = order.filter((item) => row <= (rowOf.get(item) ?? 0));
    const members = here.map((item) => ({
      want: wants[item] ?? 0,
      width: rowOf.get(item) === row ? (items[item]?.width ?? 0) : slot,
    }));
    const places = spreadBetween(members, bounds, fixed);
    for (const [at, item] of here.entries()) {
      centres[item]?.push(places[at] ?? 0);
      wants[item] = places[at] ?? 0;
    }
  }
  return items.map((_, item) => ({ row: rowOf.get(item) ?? 0, centres: centres[item] ?? [] }));
}

/** Places in the room that fixed lines leave: each member goes to the nearest stretch that still has room for it. */
function spreadBetween(
  members: readonly Member[],
  [lo, hi]: readonly [number, number],
  fixed: readonly number[],
): readonly number[] {
  const lines = fixed.filter((at) => lo < at && at < hi).sort((a, b) => a - b);
  const edges = [lo - gap, ...lines, hi + gap];
  const stretches = edges
    .slice(1)
    .map((right, at) => ({ lo: (edges[at] ?? lo) + gap, hi: right - gap, members: [] as Member[] }));
  let first = 0;
  for (const member of members) {
    let [best, least] = [stretches.length - 1, Number.POSITIVE_INFINITY];
    for (const [at, stretch] of stretches.entries()) {
      const used = stretch.members.reduce((sum, { width }) => sum + width + gap, 0);
      if (at < first || stretch.hi - stretch.lo < used + member.width) continue;
      const nearest = Math.min(
        Math.max(member.want, stretch.lo + member.width / 2),
        stretch.hi - member.width / 2,
      );
      if (Math.abs(nearest - member.want) < least) [best, least] = [at, Math.abs(nearest - member.want)];
    }
    stretches[best]?.members.push(member);
    first = best;
  }
  return stretches.flatMap((stretch) => spread(stretch.members, [stretch.lo, stretch.hi]));
}

interface Member {
  readonly want: number;
  readonly width: number;
}

/**
 * The places nearest to those wanted (least squares) that keep order and gaps: with the widths taken
 * out, an isotonic regression, solved by pooling neighbours that push each other.
 */
export function spread(members: readonly Member[], [lo, hi]: readonly [number, number]): readonly number[] {
  const offsets: number[] = [];
  let run = 0;
  for (const [at, { width }] of members.entries()) {
    const before = members[at - 1];
    run += before ? (before.width + width) / 2 + gap : 0;
    offsets.push(run);
  }
  const pools: { value: number; count: number }[] = [];
  for (const [at, { want }] of members.entries()) {
    pools.push({ value: want - (offsets[at] ?? 0), count: 1 });
    for (
      let last = pools.at(-1), before = pools.at(-2);
      last && before && last.value < before.value;
      last = pools.at(-1), before = pools.at(-2)
    ) {
      pools.splice(-2, 2, {
        value: (before.value * before.count + last.value * last.count) / (before.count + last.count),
        count: before.count + last.count,
      });
    }
  }
  const [first, last] = [members[0], members.at(-1)];
  const least = lo + (first?.width ?? 0) / 2;
  const most = Math.max(least, hi - (last?.width ?? 0) / 2 - (offsets.at(-1) ?? 0));
  return pools
    .flatMap(({ value, count }) =>
      Array.from({ length: count }, () => Math.min(Math.max(value, least), most)),
    )
    .map((value, at) => value + (offsets[at] ?? 0));
}
