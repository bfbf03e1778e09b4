import type { SourceId } from '../base/sources.ts';

/** A retaining ring and the groove that its standard wants for it. */
export interface RetainingRing {
  /** Bore or shaft that the ring is named after, mm. */
  readonly size: number;
  /** Thickness of the ring, mm. */
  readonly thickness: number;
  /** Diameter at the bottom of the groove, mm. */
  readonly grooveDiameter: number;
  /** Width of the groove, mm. The ring is thinner: the difference is axial play unless the stack takes it up. */
  readonly grooveWidth: number;
  readonly sources: readonly SourceId[];
}

/** The ring of DIN 472 for a bore of `bore` mm, normal type; null where the table has no such bore. */
export function boreRing(bore: number): RetainingRing | null {
  return lookUp(din472, bore, 'din-472');
}

/** The ring of DIN 471 for a shaft of `shaft` mm, normal type; null where the table has no such shaft. */
export function shaftRing(shaft: number): RetainingRing | null {
  return lookUp(din471, shaft, 'din-471');
}

type Row = readonly [size: number, thickness: number, grooveDiameter: number, grooveWidth: number];

function lookUp(table: readonly Row[], size: number, source: SourceId): RetainingRing | null {
  const row = table.find(([candidate]) => Math.abs(candidate - size) < 0.001);
  if (!row) return null;
  const [found, thickness, grooveDiameter, grooveWidth] = row;
  return { size: found, thickness, grooveDiameter, grooveWidth, sources: [source, 'fasteners-data'] };
}

/*
 * Ring thickness and groove diameter are read from open fastener data; the standards' own tables agree where
 * both were read. The width follows the thickness, as printed for DIN 471: 1.2 thick has 1.3 wide, and so on.
 * Bore 28 reads 20.4 in the open data, a misprint of 29.4.
 */

/** Size, ring thickness, groove diameter, groove width; mm. */
const din472: readonly Row[] = [
  [8, 0.8, 8.4, 0.9],
  [9, 0.8, 9.4, 0.9],
  [10, 1, 10.4, 1.1],
  [11, 1, 11.4, 1.1],
  [12, 1, 12.5, 1.1],
  [13, 1, 13.6, 1.1],
  [14, 1, 14.6, 1.1],
  [15, 1, 15.7, 1.1],
  [16, 1, 16.8, 1.1],
  [17, 1, 17.8, 1.1],
  [18, 1, 19, 1.1],
  [19, 1, 20, 1.1],
  [20, 1, 21, 1.1],
  [21, 1, 22, 1.1],
  [22, 1, 23, 1.1],
  [23, 1.2, 24.1, 1.3],
  [24, 1.2, 25.2, 1.3],
  [25, 1.2, 26.2, 1.3],
  [26, 1.2, 27.2, 1.3],
  [27, 1.2, 28.4, 1.3],
  [28, 1.2, 29.4, 1.3],
  [29, 1.2, 30.4, 1.3],
  [30, 1.2, 31.4, 1.3],
  [31, 1.2, 32.7, 1.3],
  [32, 1.2, 33.7, 1.3],
  [33, 1.2, 34.7, 1.3],
  [34, 1.5, 35.7, 1.6],
  [35, 1.5, 37, 1.6],
  [36, 1.5, 38, 1.6],
  [37, 1.5, 39, 1.6],
  [38, 1.5, 40, 1.6],
  [39, 1.5, 41, 1.6],
  [40, 1.75, 42.5, 1.85],
  [41, 1.75, 43.5, 1.85],
  [42, 1.75, 44.5, 1.85],
  [43, 1.75, 45.5, 1.85],
  [44, 1.75, 46.5, 1.85],
  [45, 1.75, 47.5, 1.85],
  [46, 1.75, 48.5, 1.85],
  [47, 1.75, 49.5, 1.85],
  [48, 1.75, 50.5, 1.85],
  [49, 1.75, 51.5, 1.85],
  [50, 2, 53, 2.15],
  [51, 2, 54, 2.15],
  [52, 2, 55, 2.15],
  [53, 2, 56, 2.15],
  [54, 2, 57, 2.15],
  [55, 2, 58, 2.15],
  [56, 2, 59, 2.15],
  [57, 2, 60, 2.15],
  [58, 2, 61, 2.15],
  [60, 2, 63, 2.15],
];

/** Size, ring thickness, groove diameter, groove width; mm. */
const din471: readonly Row[] = [
  [3, 0.4, 2.8, 0.5],
  [4, 0.4, 3.8, 0.5],
  [5, 0.6, 4.8, 0.7],
  [6, 0.7, 5.7, 0.8],
  [7, 0.8, 6.7, 0.9],
  [8, 0.8, 7.6, 0.9],
  [9, 1, 8.6, 1.1],
  [10, 1, 9.6, 1.1],
  [11, 1, 10.5, 1.1],
  [12, 1, 11.5, 1.1],
  [13, 1, 12.4, 1.1],
  [14, 1, 13.4, 1.1],
  [15, 1, 14.3, 1.1],
  [16, 1, 15.2, 1.1],
  [17, 1, 16.2, 1.1],
  [18, 1.2, 17, 1.3],
  [19, 1.2, 18, 1.3],
  [20, 1.2, 19, 1.3],
  [21, 1.2, 20, 1.3],
  [22, 1.2, 21, 1.3],
  [23, 1.2, 22, 1.3],
  [24, 1.2, 22.9, 1.3],
  [25, 1.2, 23.9, 1.3],
  [26, 1.2, 24.9, 1.3],
  [27, 1.2, 25.6, 1.3],
  [28, 1.5, 26.6, 1.6],
  [29, 1.5, 27.6, 1.6],
  [30, 1.5, 28.6, 1.6],
  [31, 1.5, 29.3, 1.6],
  [32, 1.5, 30.3, 1.6],
  [33, 1.5, 31.3, 1.6],
  [34, 1.5, 32.3, 1.6],
  [35, 1.5, 33, 1.6],
  [36, 1.75, 34, 1.85],
  [37, 1.75, 35, 1.85],
  [38, 1.75, 36, 1.85],
  [39, 1.75, 37, 1.85],
  [40, 1.75, 37.5, 1.85],
  [41, 1.75, 38.5, 1.85],
  [42, 1.75, 39.5, 1.85],
  [44, 1.75, 41.5, 1.85],
  [45, 1.75, 42.5, 1.85],
  [46, 1.75, 43.5, 1.85],
  [47, 1.75, 44.5, 1.85],
  [48, 1.75, 45.5, 1.85],
  [50, 2, 47, 2.15],
  [52, 2, 49.5, 2.15],
  [54, 2, 51, 2.15],
  [55, 2, 52, 2.15],
  [56, 2, 53, 2.15],
  [57, 2, 54, 2.15],
  [58, 2, 55, 2.15],
  [60, 2, 57, 2.15],
];
