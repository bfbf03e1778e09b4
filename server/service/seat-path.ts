import type { FilledHousing } from '../assembly/housings.ts';
import type { Side } from '../spec/model.ts';
import type { Body } from './body.ts';

/** A stretch of the bore a ring goes through, mm from the mouth inwards. */
export interface PathSegment {
  readonly from: number;
  readonly to: number;
  readonly fit: 'tight' | 'loose';
}

/** A bore within this of the ring's outside counts as the fit, mm. */
const fitBand = 0.1;

/**
 * The bore of a housing as a ring meets it from the mouth on `side` to its place. Where `lands` are written only
 * they are bored to the fit, the rest is open. Grooves too narrow to let the ring go are not told.
 */
export function seatPath(
  bearing: Body,
  housing: Body,
  side: Side,
  lands: readonly Land[] | null,
): readonly PathSegment[] {
  const ring = bearing.part.bearing?.outer;
  if (!ring) return [];
  const mouth = side === 'right' ? housing.part.right : housing.part.left;
  const end = Math.abs(mouth - (side === 'right' ? ring.left : ring.right));
  const away = (at: number): number => (side === 'right' ? mouth - at : at - mouth);
  const cuts = housing.part.steps
    .map(({ left, right, inside }) => {
      const [a, b] = [away(left), away(right)];
      return { from: Math.max(0, Math.min(a, b)), to: Math.min(end, Math.max(a, b)), inside };
    })
    .filter(({ from, to }) => from < to - 1e-6)
    .sort((a, b) => a.from - b.from)
    .flatMap(({ from, to, inside }) => {
      if (ring.outside + fitBand < inside) return [{ from, to, fit: 'loose' as const }];
      return lands === null ? [{ from, to, fit: 'tight' as const }] : byLands(from, to, lands);
    });
  const width = ring.right - ring.left;
  // A groove narrower than half the ring never lets go of it.
  const felt = cuts.map((cut) =>
    cut.fit === 'loose' && 0 < cut.from && cut.to - cut.from < width / 2
      ? { ...cut, fit: 'tight' as const }
      : cut,
  );
  return joined(felt);
}

/** Where a seat is bored to its fit, mm from the mouth. */
export interface Land {
  readonly from: number;
  readonly to: number;
}

/**
 * The lands a ring passes that comes in from a side: each next to the stop of its seat; a seat without one is bored
 * to its fit from the stop of the seat before it. Null where no land is written and the whole bore is the fit.
 */
export function landsFrom(housing: FilledHousing | null, side: Side): readonly Land[] | null {
  const seats = (housing?.seats ?? [])
    .filter(({ from }) => from === side)
    .flatMap(({ seat: { values } }) =>
      values.depth ? [{ depth: values.depth.value.nominal, land: values.land?.value.nominal }] : [],
    )
    .sort((a, b) => a.depth - b.depth);
  if (seats.every(({ land }) => land === undefined)) return null;
  return seats.map(({ depth, land }, index) => ({
    from: land === undefined ? (seats[index - 1]?.depth ?? 0) : Math.max(0, depth - land),
    to: depth,
  }));
}

function byLands(from: number, to: number, lands: readonly Land[]): readonly PathSegment[] {
  const inside = (at: number): boolean => lands.some((land) => land.from <= at && at <= land.to);
  const cuts = [from, to, ...lands.flatMap((land) => [land.from, land.to])]
    .filter((at) => from <= at && at <= to)
    .sort((a, b) => a - b);
  return cuts.slice(1).flatMap((end, index) => {
    const start = cuts[index] as number;
    if (end - start < 1e-6) return [];
    return [
      { from: start, to: end, fit: inside((start + end) / 2) ? ('tight' as const) : ('loose' as const) },
    ];
  });
}

/** The stretch in which a ring that was tight goes loose before it tightens again; null where there is none. */
export function reliefIn(
  path: readonly PathSegment[],
): { readonly from: number; readonly to: number } | null {
  const found = path.find(
    ({ fit }, index) =>
      fit === 'loose' && path[index - 1]?.fit === 'tight' && path[index + 1]?.fit === 'tight',
  );
  return found ? { from: found.from, to: found.to } : null;
}

function joined(cuts: readonly PathSegment[]): readonly PathSegment[] {
  const path: PathSegment[] = [];
  for (const cut of cuts) {
    const last = path.at(-1);
    if (last?.fit === cut.fit) path[path.length - 1] = { ...last, to: cut.to };
    else path.push(cut);
  }
  return path;
}
