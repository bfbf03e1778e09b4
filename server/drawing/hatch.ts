import type { Point, Shape } from './scene.ts';

/** Hatching of a cut face: lines at 45°, rising or falling to the right, at a distance in mm. */
export interface Hatching {
  readonly rising: boolean;
  readonly spacing: number;
}

/**
 * Hatches a closed polygon. The lines are laid on one grid for the whole sheet, so that two faces of one part
 * carry on the same lines.
 */
export function hatch(area: readonly Point[], { rising, spacing }: Hatching): Shape {
  // Turned so that a hatch line has one coordinate: along (u) and across (v) the lines.
  const turn = ({ x, y }: Point): readonly [number, number] => (rising ? [x - y, x + y] : [x + y, x - y]);
  const back = (u: number, v: number): Point =>
    rising ? { x: (u + v) / 2, y: (v - u) / 2 } : { x: (u + v) / 2, y: (u - v) / 2 };
  const corners = area.map(turn);
  const across = corners.map(([, v]) => v);
  const pitch = spacing * Math.SQRT2;
  const lines: (readonly [Point, Point])[] = [];
  const [least, most] = [Math.min(...across), Math.max(...across)];
  // A face this large, or this far away, cannot be read anyway.
  if (3000 < (most - least) / pitch || 1e6 < Math.max(-least, most) / pitch) {
    return { kind: 'hatch', area, lines };
  }
  // The grid is set off by an odd share so that it never runs along an edge's end.
  const shift = 0.137;
  for (let n = Math.ceil((least - shift) / pitch); n * pitch + shift <= most; n += 1) {
    const v = n * pitch + shift;
    const cuts = corners
      .flatMap(([u1, v1], at): readonly number[] => {
        const [u2, v2] = corners[(at + 1) % corners.length] ?? [u1, v1];
        if (v1 <= v === v2 <= v) return [];
        return [u1 + ((v - v1) / (v2 - v1)) * (u2 - u1)];
      })
      .sort((a, b) => a - b);
    for (let at = 0; at + 1 < cuts.length; at += 2) {
      const [from, to] = [cuts[at] as number, cuts[at + 1] as number];
      if (0.15 < to - from) lines.push([back(from, v), back(to, v)]);
    }
  }
  return { kind: 'hatch', area, lines };
}
