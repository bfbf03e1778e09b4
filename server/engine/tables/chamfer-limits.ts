import type { SourceId } from '../base/sources.ts';

/**
 * Chamfer limits of a ring corner by its smallest chamfer and the bore: smallest chamfer, bore over, bore up to and
 * including, largest chamfer radially and axially, largest fillet that clears it, smallest shoulder height for a
 * deep groove and for an angular contact bearing. All mm; null where there is no bound or no value.
 */
export type ChamferRow = readonly [
  chamferMin: number,
  boreOver: number | null,
  boreUpTo: number | null,
  radialMost: number,
  axialMost: number,
  filletMost: number,
  shoulderLeast: number,
  angularShoulderLeast: number | null,
];

/** Chamfer limits, fillets and shoulder heights as printed, mm. */
export const chamferLimits: readonly ChamferRow[] = [
  [0.05, null, null, 0.1, 0.2, 0.05, 0.2, null],
  [0.08, null, null, 0.16, 0.3, 0.08, 0.3, null],
  [0.1, null, null, 0.2, 0.4, 0.1, 0.4, null],
  [0.15, null, null, 0.3, 0.6, 0.15, 0.6, null],
  [0.2, null, null, 0.5, 0.8, 0.2, 0.8, null],
  [0.3, null, 40, 0.6, 1, 0.3, 1, 1.25],
  [0.3, 40, null, 0.8, 1, 0.3, 1, 1.25],
  [0.6, null, 40, 1, 2, 0.6, 2, 2.5],
  [0.6, 40, null, 1.3, 2, 0.6, 2, 2.5],
  [1, null, 50, 1.5, 3, 1, 2.5, 3],
  [1, 50, null, 1.9, 3, 1, 2.5, 3],
  [1.1, null, 120, 2, 3.5, 1, 3.25, 3.5],
  [1.5, null, 120, 2.3, 4, 1.5, 4, 4.5],
  [2, null, 80, 3, 4.5, 2, 4.5, 5],
];

/** Where `chamferLimits` was read. */
export const chamferLimitsSource: SourceId = 'iso-582';
