import type { SourceId } from '../base/sources.ts';

/** A double row angular contact bearing: basic number, bore, outside, width, smallest chamfer (mm), ratings (N). */
export type DoubleRow = readonly [
  basic: string,
  bore: number,
  outside: number,
  width: number,
  chamferMin: number,
  dynamicRating: number | null,
  staticRating: number | null,
];

/** Double row angular contact bearings, as one maker prints them. */
export const doubleRowBearings: readonly DoubleRow[] = [
  ['30/5', 5, 14, 7, 0.2, null, null],
  ['30/6', 6, 17, 9, 0.3, null, null],
  ['30/7', 7, 19, 10, 0.3, null, null],
  ['30/8', 8, 22, 11, 0.3, null, null],
  ['3000', 10, 26, 12, 0.3, null, null],
  ['3001', 12, 28, 12, 0.3, null, null],
  ['3002', 15, 32, 13, 0.3, null, null],
  ['3003', 17, 35, 14, 0.3, null, null],
  ['3004', 20, 42, 16, 0.6, null, null],
  ['3005', 25, 47, 16, 0.6, null, null],
  ['3006', 30, 55, 19, 1, null, null],
  ['3007', 35, 62, 20, 1, null, null],
  ['3008', 40, 68, 21, 1, null, null],
  ['3200', 10, 30, 14, 0.6, 7610, 4300],
  ['3201', 12, 32, 15.9, 0.6, 10100, 5600],
  ['3202', 15, 35, 15.9, 0.6, 11200, 6800],
  ['3203', 17, 40, 17.5, 0.6, 14300, 8800],
  ['3204', 20, 47, 20.6, 1, 20000, 12000],
  ['3205', 25, 52, 20.6, 1, 21600, 14300],
  ['3207', 35, 72, 27, 1.1, 40000, 28000],
  ['3208', 40, 80, 30.2, 1.1, 47500, 34000],
  ['3302', 15, 42, 19, 1, 15100, 9300],
  ['3303', 17, 47, 22.2, 1, 21600, 12700],
  ['3304', 20, 52, 22.2, 1.1, 23600, 14600],
  ['3305', 25, 62, 25.4, 1.1, 32000, 20400],
  ['3306', 30, 72, 30.2, 1.1, 41500, 27500],
  ['3307', 35, 80, 34.9, 1.5, 52000, 35500],
  ['3308', 40, 90, 36.5, 1.5, 64000, 44000],
  ['3800', 10, 19, 7, 0.3, null, null],
  ['3801', 12, 21, 7, 0.3, null, null],
  ['3802', 15, 24, 7, 0.3, null, null],
  ['3803', 17, 26, 7, 0.3, null, null],
  ['3804', 20, 32, 10, 0.3, null, null],
  ['3805', 25, 37, 10, 0.3, null, null],
  ['3806', 30, 42, 10, 0.3, null, null],
  ['3807', 35, 47, 10, 0.3, null, null],
  ['3808', 40, 52, 10, 0.3, null, null],
];

/** Where `doubleRowBearings` was read. */
export const doubleRowBearingsSource: SourceId = 'schaeffler-hr1';
