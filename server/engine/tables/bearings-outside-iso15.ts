import type { SourceId } from '../base/sources.ts';

/**
 * One bearing outside the ISO 15 series: code, bore, outside, width of the open and of the closed version, smallest
 * chamfer (mm), then ratings as in the catalogue table (N). Null where nothing is printed.
 */
export type SizedRow = readonly [
  code: string,
  bore: number,
  outside: number,
  widthOpen: number | null,
  widthClosed: number | null,
  chamferMin: number | null,
  dynamicRating: number | null,
  staticRating: number | null,
  dynamicLow: number | null,
  dynamicHigh: number | null,
  staticLow: number | null,
  staticHigh: number | null,
  source: SourceId | null,
];

/** 16100 and 16101 look like series 160 and have other outside diameters. As printed, mm and N. */
export const lookalikeBearings: readonly SizedRow[] = [
  ['16100', 10, 28, 8, 8, null, 4620, 1960, 4620, 4620, 1960, 1960, 'cx-part-7'],
  ['16101', 12, 30, 8, 8, null, 5070, 2360, 5070, 5070, 2360, 2360, 'skf-2017'],
];

/** Miniature bearings coded MR, then outside, then bore; the width is not in the code. As printed, mm and N. */
export const mrBearings: readonly SizedRow[] = [
  ['MR63', 3, 6, 2, 2.5, 0.1, 208, 74, 206, 209, 74, 74, 'nsk-e1102e'],
  ['MR83', 3, 8, 2.5, 3, 0.15, 560, 179, 392, 560, 137, 179, 'nsk-e1102e'],
  ['MR74', 4, 7, 2, 2.5, 0.1, 310, 115, 255, 314, 108, 118, 'nsk-e1102e'],
  ['MR84', 4, 8, 2, 3, 0.15, 395, 139, 392, 395, 137, 141, 'nsk-e1102e'],
  ['MR85', 5, 8, 2, 2.5, 0.1, 310, 120, 218, 310, 90, 120, 'nsk-e1102e'],
  ['MR95', 5, 9, 2.5, 3, 0.15, 430, 168, 430, 432, 167, 169, 'nsk-e1102e'],
  ['MR105', 5, 10, 3, 4, 0.15, 430, 168, 430, 432, 167, 169, 'nsk-e1102e'],
  ['MR115', 5, 11, null, 4, null, null, null, null, null, null, null, null],
  ['MR106', 6, 10, 2.5, 3, 0.15, 495, 218, 495, 500, 216, 218, 'nsk-e1102e'],
  ['MR126', 6, 12, 3, 4, 0.2, 715, 292, 715, 716, 292, 295, 'nsk-e1102e'],
  ['MR117', 7, 11, 2.5, 3, 0.15, 455, 201, 451, 455, 201, 206, 'nsk-e1102e'],
  ['MR137', 7, 13, 3, 4, 0.2, 540, 276, 540, 541, 275, 276, 'nsk-e1102e'],
  ['MR128', 8, 12, 2.5, 3.5, 0.15, 545, 274, 540, 545, 274, 275, 'nsk-e1102e'],
  ['MR148', 8, 14, 3.5, 4, 0.2, 820, 385, 817, 820, 385, 386, 'nsk-e1102e'],
  ['MR104', 4, 10, 3, 4, 0.2, 710, 270, null, null, null, null, 'nsk-e1102e'],
  ['MR93', 3, 9, 2.5, 4, 0.2, 570, 187, null, null, null, null, 'nsk-e1102e'],
];

/** Inch bearings, printed by their makers in mm to three places. As printed, mm and N. */
export const inchBearings: readonly SizedRow[] = [
  ['R09', 1.016, 3.175, 1.191, null, 0.1, 80, 23, 80, 106, 23, 28, 'nsk-e1102e'],
  ['R0', 1.191, 3.967, 1.588, 2.38, 0.1, 138, 35, 138, 158, 35, 44, 'nsk-e1102e'],
  ['R1', 1.397, 4.762, 1.984, 2.779, 0.1, 231, 66, 231, 264, 66, 71, 'nsk-e1102e'],
  ['R1-4', 1.984, 6.35, 2.38, 3.571, 0.1, 310, 108, 284, 330, 96, 108, 'nsk-e1102e'],
  ['R133', 2.38, 4.762, 1.588, 2.38, 0.1, 188, 60, 144, 188, 53, 60, 'nsk-e1102e'],
  ['R1-5', 2.38, 7.938, 2.779, 3.571, 0.15, 550, 175, 550, 563, 175, 183, 'nsk-e1102e'],
  ['R144', 3.175, 6.35, 2.38, 2.779, 0.1, 283, 95, 283, 285, 95, 97, 'nsk-e1102e'],
  ['R2-5', 3.175, 7.938, 2.779, 3.571, 0.1, 560, 179, 558, 563, 179, 183, 'nsk-e1102e'],
  ['R2', 3.175, 9.525, 3.967, 3.967, 0.3, 630, 218, 630, 641, 218, 226, 'nsk-e1102e'],
  ['R2-6', 3.175, 9.525, 2.779, 3.571, 0.15, 640, 225, 563, 640, 183, 227, 'nsk-e1102e'],
  ['R2A', 3.175, 12.7, 4.366, 4.366, 0.3, 640, 225, 640, 640, 225, 227, 'nsk-e1102e'],
  ['R155', 3.967, 7.938, 2.779, 3.175, 0.1, 360, 149, 359, 391, 142, 150, 'nsk-e1102e'],
  ['R166', 4.762, 9.525, 3.175, 3.175, 0.1, 710, 270, 709, 712, 270, 272, 'nsk-e1102e'],
  ['R3', 4.762, 12.7, 3.967, 4.978, 0.3, 1300, 485, 1300, 1306, 485, 488, 'nsk-e1102e'],
  ['R3A', 4.763, 15.875, 4.978, 4.978, null, 1480, 621, 1480, 1480, 621, 621, 'zen-2012'],
  ['R168', 6.35, 9.525, 3.175, 3.175, 0.1, 420, 204, 373, 420, 172, 205, 'nsk-e1102e'],
  ['R4', 6.35, 15.875, 4.978, 4.978, 0.3, 1610, 660, 1470, 1610, 599, 660, 'nsk-e1102e'],
  ['R4A', 6.35, 19.05, 5.558, 7.142, 0.4, 2620, 1060, 2336, 2620, 896, 1060, 'nsk-e1102e'],
  ['R1810', 7.938, 12.7, 3.967, 3.967, 0.15, 540, 276, 540, 878, 276, 419, 'nsk-e1102e'],
  ['R6', 9.525, 22.225, 5.558, 7.142, 0.4, 3350, 1410, 3297, 3350, 1368, 1422, 'nsk-e1102e'],
  ['R1212', 12.7, 19.05, null, 3.967, null, null, null, null, null, null, null, null],
  ['R8', 12.7, 28.575, 6.35, 7.938, null, 5113, 2387, 5108, 5113, 2387, 2413, 'nmb-ball'],
  ['R10', 15.875, 34.925, 7.142, 8.733, null, 5988, 3287, 5988, 5988, 3287, 3287, 'zen-2012'],
  ['R1634', 19.05, 25.4, null, 3.967, null, null, null, null, null, null, null, null],
  ['R12', 19.05, 41.275, 7.938, 11.113, null, 9378, 5057, 9378, 9378, 5057, 5057, 'zen-2012'],
  ['R14', 22.225, 47.625, 9.525, 12.7, null, null, null, null, null, null, null, null],
  ['R16', 25.4, 50.8, 9.525, 12.7, null, null, null, null, null, null, null, null],
  ['R18', 28.575, 53.975, 9.5, 12.7, null, null, null, null, null, null, null, null],
  ['R20', 31.75, 57.15, 9.525, 12.7, null, null, null, null, null, null, null, null],
  ['R22', 34.925, 63.5, 11.113, 14.288, null, null, null, null, null, null, null, null],
  ['RLS4', 12.7, 33.338, 9.525, 9.525, null, 6950, 3220, 6950, 6950, 3220, 3220, 'zen-2012'],
  ['RLS5', 15.875, 39.688, 11.113, 11.113, null, null, null, null, null, null, null, null],
  ['RLS6', 19.05, 47.625, 14.288, 14.288, null, null, null, null, null, null, null, null],
  ['RLS7', 22.225, 50.8, 14.288, 14.288, null, null, null, null, null, null, null, null],
  ['RLS8', 25.4, 57.15, 15.875, 15.875, null, null, null, null, null, null, null, null],
  ['RLS9', 28.575, 63.5, 15.875, 15.875, null, null, null, null, null, null, null, null],
  ['RLS10', 31.75, 69.85, 17.463, 17.463, null, null, null, null, null, null, null, null],
  ['RLS12', 38.1, 82.55, 19.05, 19.05, null, null, null, null, null, null, null, null],
  ['R156', 4.762, 7.938, 2.779, 3.175, 0.1, 360, 149, null, null, null, null, 'nsk-e1102e'],
  ['R188', 6.35, 12.7, 3.175, 4.762, 0.15, 1080, 440, null, null, null, null, 'nsk-e1102e'],
];
