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
const gap = 2;
const slot = 1;

/** A line that must stay where it is: an extension line that passes through the rows. */
const fixedWeight = 1e6;

/** Rows from the nearest (0) outwards; tries one row, then more, until nothing is pushed too far aside. */
export function placeInRows(
  items: readonly Placeable[],
  bounds: readonly [number, number],
  fixed: readonly number[] = [],
  most = 4,
): readonly PlacedInRow[] {
  if (items.length === 0) return [];
  let best: readonly PlacedInRow[] = [];
  for (let rows = 1; rows <= most; rows += 1) {
    best = place(items, bounds, fixed, rows);
    const farthest = Math.max(
      ...best.map(({ centres }, at) => Math.abs((centres.at(-1) ?? 0) - (items[at]?.want ?? 0))),
    );
    if (farthest <= 16) return best;
  }
  return best;
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
    const members = [
      ...here.map((item) => ({
        item,
        want: wants[item] ?? 0,
        width: rowOf.get(item) === row ? (items[item]?.width ?? 0) : slot,
        weight: 1,
      })),
      ...fixed.map((want) => ({ item: -1, want, width: slot, weight: fixedWeight })),
    ].sort((a, b) => a.want - b.want || a.item - b.item);
    const places = spread(members, bounds);
    for (const [at, { item }] of members.entries()) {
      if (item < 0) continue;
      centres[item]?.push(places[at] ?? 0);
      wants[item] = places[at] ?? 0;
    }
  }
  return items.map((_, item) => ({ row: rowOf.get(item) ?? 0, centres: centres[item] ?? [] }));
}

interface Member {
  readonly want: number;
  readonly width: number;
  readonly weight: number;
}

/**
 * The places nearest to those wanted (least weighted squares) that keep order and gaps: with the widths taken
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
  const pools: { value: number; weight: number; count: number }[] = [];
  for (const [at, { want, weight }] of members.entries()) {
    pools.push({ value: want - (offsets[at] ?? 0), weight, count: 1 });
    for (
      let last = pools.at(-1), before = pools.at(-2);
      last && before && last.value < before.value;
      last = pools.at(-1), before = pools.at(-2)
    ) {
      pools.splice(-2, 2, {
        value: (before.value * before.weight + last.value * last.weight) / (before.weight + last.weight),
        weight: before.weight + last.weight,
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
