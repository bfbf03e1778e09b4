import type { SourceId } from '../base/sources.ts';

/** Radial internal clearance of a bore range: over, up to and including (mm), least and most (µm). */
export type ClearanceRow = readonly [over: number, upTo: number, least: number, most: number];

/** Radial internal clearance by group, single row deep groove, cylindrical bore, not mounted, no load, µm. */
export const radialClearance: Readonly<Record<'C2' | 'N' | 'C3' | 'C4' | 'C5', readonly ClearanceRow[]>> = {
  C2: [
    [2.5, 10, 0, 7],
    [10, 18, 0, 9],
    [18, 24, 0, 10],
    [24, 30, 1, 11],
    [30, 40, 1, 11],
    [40, 50, 1, 11],
    [50, 65, 1, 15],
    [65, 80, 1, 15],
  ],
  N: [
    [2.5, 10, 2, 13],
    [10, 18, 3, 18],
    [18, 24, 5, 20],
    [24, 30, 5, 20],
    [30, 40, 6, 20],
    [40, 50, 6, 23],
    [50, 65, 8, 28],
    [65, 80, 10, 30],
  ],
  C3: [
    [2.5, 10, 8, 23],
    [10, 18, 11, 25],
    [18, 24, 13, 28],
    [24, 30, 13, 28],
    [30, 40, 15, 33],
    [40, 50, 18, 36],
    [50, 65, 23, 43],
    [65, 80, 25, 51],
  ],
  C4: [
    [2.5, 10, 14, 29],
    [10, 18, 18, 33],
    [18, 24, 20, 36],
    [24, 30, 23, 41],
    [30, 40, 28, 46],
    [40, 50, 30, 51],
    [50, 65, 38, 61],
    [65, 80, 46, 71],
  ],
  C5: [
    [2.5, 10, 20, 37],
    [10, 18, 25, 45],
    [18, 24, 28, 48],
    [24, 30, 30, 53],
    [30, 40, 40, 64],
    [40, 50, 45, 73],
    [50, 65, 55, 90],
    [65, 80, 65, 105],
  ],
};

/** Where `radialClearance` was read. */
export const radialClearanceSource: SourceId = 'iso-5753-1';

/** Clearance steps of miniature bearings, bore under 10 mm; makers' code, not ISO: least and most, µm. */
export const miniatureClearance: Readonly<Record<string, readonly [least: number, most: number]>> = {
  MC1: [0, 5],
  MC2: [3, 8],
  MC3: [5, 10],
  MC4: [8, 13],
  MC5: [13, 20],
  MC6: [20, 28],
};

/** Where `miniatureClearance` was read. */
export const miniatureClearanceSource: SourceId = 'nsk-e1102e';
