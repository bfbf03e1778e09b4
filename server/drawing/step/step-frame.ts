import type { Tube } from '../../service/body.ts';
import type { Point } from '../scene.ts';

/** Size of a picture on the sheet, mm. */
export const stepPicture = { width: 40, height: 26 } as const;

/** Places on the hub to places in the picture: a window on the seat, above the axis. */
export interface Frame {
  /** What the window shows along the axle, mm. */
  readonly left: number;
  readonly right: number;
  /** Least and greatest radius it shows, mm. */
  readonly low: number;
  readonly high: number;
  readonly scale: number;
  /** A place along the axle and a radius, mm. */
  readonly at: (x: number, radius: number) => Point;
}

/** The window that shows `inside` whole and as much around it as the picture has room for. */
export function frameOf(inside: readonly Tube[]): Frame {
  const left = Math.min(...inside.map((tube) => tube.left)) - margin;
  const right = Math.max(...inside.map((tube) => tube.right)) + margin;
  const low = Math.max(0, Math.min(...inside.map((tube) => tube.inside)) / 2 - margin);
  const high = Math.max(...inside.map((tube) => tube.outside)) / 2 + wall;
  const scale = Math.min(stepPicture.width / (right - left), stepPicture.height / (high - low), greatest);
  const [middle, half] = [(left + right) / 2, stepPicture.width / scale / 2];
  return {
    left: middle - half,
    right: middle + half,
    low,
    high: low + stepPicture.height / scale,
    scale,
    at: (x, radius) => ({
      x: (x - middle + half) * scale,
      y: stepPicture.height - (radius - low) * scale,
    }),
  };
}

/** Room about what the picture is of, and how much of the wall outside of it is shown, mm. */
const margin = 2;
const wall = 5;
/** Larger than this a picture only looks coarse. */
const greatest = 2.6;

/** The part of a tube that lies in the window; null where none does. */
export function clipped(tube: Tube, { left, right, low, high }: Frame): Tube | null {
  const cut = {
    left: Math.max(tube.left, left),
    right: Math.min(tube.right, right),
    inside: Math.max(tube.inside, 2 * low),
    outside: Math.min(tube.outside, 2 * high),
  };
  return cut.left < cut.right && cut.inside < cut.outside ? cut : null;
}

/** The corners of a tube's upper half, from the inside of its left end round to the inside of its right end. */
export function box(tube: Tube, { at }: Frame): readonly [Point, Point, Point, Point] {
  return [
    at(tube.left, tube.inside / 2),
    at(tube.left, tube.outside / 2),
    at(tube.right, tube.outside / 2),
    at(tube.right, tube.inside / 2),
  ];
}

/** The edges of a clipped tube that are its own: those that the window cuts are left open. */
export function ownEdges(tube: Tube, seen: Tube, frame: Frame): readonly (readonly [Point, Point])[] {
  const [a, b, c, d] = box(seen, frame);
  return [
    ...(seen.left === tube.left ? [[a, b] as const] : []),
    ...(seen.outside === tube.outside ? [[b, c] as const] : []),
    ...(seen.right === tube.right ? [[c, d] as const] : []),
    ...(seen.inside === tube.inside ? [[d, a] as const] : []),
  ];
}
