import type { LacedSpoke } from './laced-spokes.ts';

/** A place where two spokes of one side cross, seen along the axle. */
export interface SpokeCrossing {
  /** Runs outside the flange. */
  readonly outer: LacedSpoke;
  readonly inner: LacedSpoke;
  /** Place from the axle: x forwards at the bottom of the view, y down, mm; seen from the right with the valve at the top. */
  readonly x: number;
  readonly y: number;
  /** From the hub outwards, from 1, along the outer spoke. */
  readonly order: number;
  /** At the last crossing of interlaced spokes the outer one passes behind the inner one. */
  readonly under: boolean;
}

/** Place of a turn and radius, seen from the right with the valve at the top, y down. */
export function seenFromRight(turn: number, radius: number): { readonly x: number; readonly y: number } {
  return { x: radius * Math.sin(turn), y: -radius * Math.cos(turn) };
}

/** Crossings of the spokes of one side. Spokes that all run on the same face of the flange cross without a told order. */
export function spokeCrossings(spokes: readonly LacedSpoke[], interlaced: boolean): readonly SpokeCrossing[] {
  const outer = spokes.filter(({ head, direction }) =>
    head === 'straight-pull' ? direction === 'trailing' : head === 'head-in',
  );
  const inner = spokes.filter((spoke) => !outer.includes(spoke));
  return outer.flatMap((one) => {
    const met = inner.flatMap((other) => {
      const at = meeting(one, other);
      return at ? [{ outer: one, inner: other, ...at }] : [];
    });
    met.sort((a, b) => Math.hypot(a.x, a.y) - Math.hypot(b.x, b.y));
    return met.map((crossing, index) => ({
      ...crossing,
      order: index + 1,
      under: interlaced && index === met.length - 1,
    }));
  });
}

/** Where two spokes cross between their holes; null where they do not. */
function meeting(one: LacedSpoke, other: LacedSpoke): { readonly x: number; readonly y: number } | null {
  const [a, b] = [seenFromRight(one.hubTurn, one.hubRadius), seenFromRight(one.rimTurn, one.rimRadius)];
  const [c, d] = [
    seenFromRight(other.hubTurn, other.hubRadius),
    seenFromRight(other.rimTurn, other.rimRadius),
  ];
  const [ux, uy, vx, vy] = [b.x - a.x, b.y - a.y, d.x - c.x, d.y - c.y];
  const turn = ux * vy - uy * vx;
  if (Math.abs(turn) < 1e-9) return null;
  const along = ((c.x - a.x) * vy - (c.y - a.y) * vx) / turn;
  const across = ((c.x - a.x) * uy - (c.y - a.y) * ux) / turn;
  if (along <= 0 || 1 <= along || across <= 0 || 1 <= across) return null;
  return { x: a.x + ux * along, y: a.y + uy * along };
}
