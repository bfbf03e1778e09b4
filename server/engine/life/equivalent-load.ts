import {
  angularAxialFactors,
  angularStaticFactors,
  deepGrooveAxialFactors,
} from '../tables/load-rating-factors.ts';

/** Radial and axial load on one bearing, N, neither negative. */
export interface BearingLoad {
  readonly radial: number;
  readonly axial: number;
}

/** Factors of the dynamic equivalent load P = X·Fr + Y·Fa. */
export interface AxialFactors {
  /** Fa/Fr up to which the axial load does not count. */
  readonly e: number;
  readonly x: number;
  readonly y: number;
  /** False outside the table; the nearest row then stands. */
  readonly valid: boolean;
}

/** Factors of a deep groove bearing of normal clearance by f0·Fa/C0, straight between the rows (source `iso-281`). */
export function deepGrooveFactors(f0: number, axial: number, staticRating: number): AxialFactors {
  const relative = (f0 * axial) / staticRating;
  const [e = 0, y = 0] = interpolate(deepGrooveAxialFactors, relative);
  return { e, x: 0.56, y, valid: relative <= (deepGrooveAxialFactors.at(-1)?.[0] ?? 0) };
}

/** Factors of a single angular contact bearing by nominal angle, degrees, 25 to 40 (source `iso-281`). */
export function angularFactors(degrees: number): AxialFactors {
  const [e = 0, x = 0, y = 0] = interpolate(angularAxialFactors, degrees);
  return { e, x, y, valid: 25 <= degrees && degrees <= 40 };
}

/** Dynamic equivalent load, N: Fr alone while Fa/Fr stays within e (source `iso-281`). */
export function equivalentLoad({ radial, axial }: BearingLoad, factors: AxialFactors): number {
  return axial <= factors.e * radial ? radial : factors.x * radial + factors.y * axial;
}

/** Static equivalent load of a deep groove bearing, N: the greater of 0.6·Fr + 0.5·Fa and Fr (source `iso-76`). */
export function staticEquivalentLoad({ radial, axial }: BearingLoad): number {
  return Math.max(0.6 * radial + 0.5 * axial, radial);
}

/** Static equivalent load of a single angular contact bearing, N, nominal angle in degrees, 15 to 40 (source `iso-76`). */
export function angularStaticLoad({ radial, axial }: BearingLoad, degrees: number): number {
  const [y0 = 0] = interpolate(angularStaticFactors, degrees);
  return Math.max(0.5 * radial + y0 * axial, radial);
}

/** Values of a table at a key, straight between its rows and held at its ends. */
function interpolate(table: readonly (readonly number[])[], key: number): readonly number[] {
  const first = table[0] ?? [];
  const last = table.at(-1) ?? [];
  if (key <= (first[0] ?? 0)) return first.slice(1);
  const above = table.findIndex((row) => key <= (row[0] ?? 0));
  if (above < 0) return last.slice(1);
  const [low = [], high = []] = [table[above - 1], table[above]];
  const share = (key - (low[0] ?? 0)) / ((high[0] ?? 0) - (low[0] ?? 0));
  return low.slice(1).map((value, i) => value + share * ((high[i + 1] ?? 0) - value));
}
