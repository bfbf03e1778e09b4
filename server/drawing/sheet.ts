import type { Point } from './scene.ts';

/** How the hub lies on the sheet: one scale along and across. */
export interface Sheet {
  /** mm on the sheet for each mm of the hub. */
  readonly scale: number;
  /** Sheet place of the left dropout face, and of the axis, mm. */
  readonly origin: Point;
  /** A point at a place along the axle and a radius; `half` −1 is above the axis, 1 below. */
  readonly point: (along: number, radius: number, half: -1 | 1) => Point;
  readonly x: (along: number) => number;
}

export function sheet(scale: number, origin: Point): Sheet {
  const x = (along: number): number => origin.x + along * scale;
  return {
    scale,
    origin,
    x,
    point: (along, radius, half) => ({ x: x(along), y: origin.y + half * radius * scale }),
  };
}

/** Scales of ISO 5455, and 1.5:1 between them where 2:1 is too large for the sheet; largest first. */
export const scales: readonly number[] = [5, 2, 1.5, 1, 0.5, 0.2, 0.1, 0.05, 0.02, 0.01, 0.001, 1e-4, 1e-5];

const finest = Array.from({ length: 45 }, (_, step) => 5 * 0.95 ** step);

/** For a screen, where no ruler is laid on: close enough together to fill any width; largest first. */
export const screenScales: readonly number[] = [...finest, ...scales.filter((scale) => scale < 0.5)];

/** `2:1`, `1:5` */
export function sayScale(scale: number): string {
  return 1 <= scale ? `${scale}:1` : `1:${Math.round(1 / scale)}`;
}
