import type { BallGeometry } from '../contact/ball-geometry.ts';
import { dynamicFactors, staticFactors } from '../tables/load-rating-factors.ts';

/** A rating with whether the standard covers it. */
export interface Rating {
  /** N */
  readonly value: number;
  /** False outside the table of factors, or where the grooves are wider than the standard's 0.52 and 0.53. */
  readonly valid: boolean;
}

/** Widest grooves for which the factors hold. */
const WIDEST = { inner: 0.52, outer: 0.53 } as const;
/** Conformity is compared to this. */
const SLACK = 1e-9;

/** Dw·cos α / Dpw of a row, α in rad. */
export function relativeBall(geometry: BallGeometry, angle = 0): number {
  return (geometry.diameter * Math.cos(angle)) / geometry.pitch;
}

/**
 * Basic dynamic radial load rating, N: C = bm·fc·(i·cos α)^0.7·Z^⅔·Dw^1.8, above 25.4 mm 3.647·…·Dw^1.4, with
 * bm = 1.3 (source `iso-281`; 1.1 for bearings with a filling slot). α in rad.
 */
export function dynamicRating(geometry: BallGeometry, angle = 0, bm = 1.3): Rating {
  const { count, diameter } = geometry;
  const { value: fc, within } = dynamicFactor(relativeBall(geometry, angle));
  const size = diameter <= 25.4 ? diameter ** 1.8 : 3.647 * diameter ** 1.4;
  const value = bm * fc * Math.cos(angle) ** 0.7 * count ** (2 / 3) * size;
  return { value, valid: within && groovesWithin(geometry) };
}

/** Basic static radial load rating, N: C0 = f0·Z·Dw²·cos α (source `iso-76`). α in rad. */
export function staticRating(geometry: BallGeometry, angle = 0): Rating {
  const { value: f0, within } = staticFactor(relativeBall(geometry, angle));
  const value = f0 * geometry.count * geometry.diameter ** 2 * Math.cos(angle);
  return { value, valid: within && groovesWithin(geometry) };
}

/** fc at Dw·cos α / Dpw, straight between the printed values; `within` is false outside 0.01 to 0.40. */
export function dynamicFactor(relative: number): { readonly value: number; readonly within: boolean } {
  return between(dynamicFactors, relative * 100 - 1);
}

/** f0 at Dw·cos α / Dpw, straight between the printed values; `within` is false outside 0 to 0.40. */
export function staticFactor(relative: number): { readonly value: number; readonly within: boolean } {
  return between(staticFactors, relative * 100);
}

/** Beyond the table the line of its last two values is carried on. */
function between(table: readonly number[], at: number): { value: number; within: boolean } {
  const last = table.length - 1;
  const below = Math.min(last - 1, Math.max(0, Math.floor(at)));
  const [one = Number.NaN, next = Number.NaN] = [table[below], table[below + 1]];
  // An index worked out from a ratio may miss a whole number by the last digit.
  return { value: one + (at - below) * (next - one), within: -1e-9 <= at && at <= last + 1e-9 };
}

function groovesWithin({ innerConformity, outerConformity }: BallGeometry): boolean {
  return innerConformity <= WIDEST.inner + SLACK && outerConformity <= WIDEST.outer + SLACK;
}
