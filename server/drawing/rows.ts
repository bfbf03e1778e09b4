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

/** Rows from the nearest (0) outwards, as many as read best. */
export function placeInRows(
  items: readonly Placeable[],
  bounds: readonly [number, number],
): readonly PlacedInRow[] {
  if (items.length === 0) return [];
  const total = items.reduce((sum, { width }) => sum + width + gap, 0);
  const needed = Math.max(1, Math.ceil(total / (bounds[1] - bounds[0])));
  let best: { readonly placed: readonly PlacedInRow[]; readonly cost: number } | null = null;
  for (let rows = needed; rows <= needed + moreRows; rows += 1) {
    const placed = place(items, bounds, rows);
    const aside = placed.map(({ centres }, at) => Math.abs((centres.at(-1) ?? 0) - (items[at]?.want ?? 0)));
    const cost = Math.max(...aside) + rows * asideForRow;
    if (!best || cost < best.cost) best = { placed, cost };
  }
  return best?.placed ?? [];
}

function place(
  items: readonly Placeable[],
  bounds: readonly [number, number],
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
    const places = spread(members, bounds);
    for (const [at, item] of here.entries()) {
      centres[item]?.push(places[at] ?? 0);
      wants[item] = places[at] ?? 0;
    }
  }
  return items.map((_, item) => ({ row: rowOf.get(item) ?? 0, centres: centres[item] ?? [] }));
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
