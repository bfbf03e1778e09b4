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
 * The bore of a housing as a ring meets it from the mouth on `side` to its place. Where only a `land` next to the
 * stop is bored to the fit, the rest of the seat is open. Grooves too narrow to let the ring go are not told.
 */
export function seatPath(
  bearing: Body,
  housing: Body,
  side: Side,
  land: number | null,
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
      const open = ring.outside + fitBand < inside;
      const edge = land === null ? 0 : Math.max(0, end - land);
      if (open || edge <= from) return [{ from, to, fit: open ? ('loose' as const) : ('tight' as const) }];
      if (to <= edge) return [{ from, to, fit: 'loose' as const }];
      return [
        { from, to: edge, fit: 'loose' as const },
        { from: edge, to, fit: 'tight' as const },
      ];
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
