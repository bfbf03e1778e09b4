import type { SourceId } from '../base/sources.ts';

/**
 * Factor fc of the dynamic rating for Dw·cos α / Dpw = 0.01, 0.02 … 0.40: single row radial and angular contact
 * ball bearings with grooves no wider than 0.52 inside and 0.53 outside (ISO 281:2007 Table 2, as GOST 18855-2013).
 */
export const dynamicFactors: readonly number[] = [
  29.1, 35.8, 40.3, 43.8, 46.7, 49.1, 51.1, 52.8, 54.3, 55.5, 56.6, 57.5, 58.2, 58.8, 59.3, 59.6, 59.8, 59.9,
  60.0, 59.9, 59.8, 59.6, 59.3, 59.0, 58.6, 58.2, 57.7, 57.1, 56.6, 56.0, 55.3, 54.6, 53.9, 53.2, 52.4, 51.7,
  50.9, 50.0, 49.2, 48.4,
];

/** Factor f0 of the static rating for Dw·cos α / Dpw = 0.00, 0.01 … 0.40 (ISO 76:2006 Table 1, as GOST 18854-2013). */
export const staticFactors: readonly number[] = [
  14.7, 14.9, 15.1, 15.3, 15.5, 15.7, 15.9, 16.1, 16.3, 16.5, 16.4, 16.1, 15.9, 15.6, 15.4, 15.2, 14.9, 14.7,
  14.4, 14.2, 14.0, 13.7, 13.5, 13.2, 13.0, 12.8, 12.5, 12.3, 12.1, 11.8, 11.6, 11.4, 11.2, 10.9, 10.7, 10.5,
  10.3, 10.0, 9.8, 9.6, 9.4,
];

/** Where the factors were read. */
export const dynamicFactorsSource: SourceId = 'iso-281';
/** Where the static factors were read. */
export const staticFactorsSource: SourceId = 'iso-76';

/** Deep groove bearings: f0·Fa/C0, limit e of Fa/Fr and axial factor Y above it; X is 0.56 (ISO 281:2007 Table 3). */
export const deepGrooveAxialFactors: readonly (readonly [relative: number, e: number, y: number])[] = [
  [0.172, 0.19, 2.3],
  [0.345, 0.22, 1.99],
  [0.689, 0.26, 1.71],
  [1.03, 0.28, 1.55],
  [1.38, 0.3, 1.45],
  [2.07, 0.34, 1.31],
  [3.45, 0.38, 1.15],
  [5.17, 0.42, 1.04],
  [6.89, 0.44, 1.0],
];

/** Angular contact, single row: e, X and Y by contact angle in degrees (ISO 281:2007 Table 3). */
export const angularAxialFactors: readonly (readonly [angle: number, e: number, x: number, y: number])[] = [
  [25, 0.68, 0.41, 0.87],
  [30, 0.8, 0.39, 0.76],
  [40, 1.14, 0.35, 0.57],
];

/** Static factors X0 = 0.5 and Y0 by contact angle in degrees (ISO 76:2006 Table 3). */
export const angularStaticFactors: readonly (readonly [angle: number, y0: number])[] = [
  [15, 0.46],
  [25, 0.38],
  [30, 0.33],
  [40, 0.26],
];
