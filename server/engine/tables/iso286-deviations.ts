import type { SourceId } from '../base/sources.ts';

/** Source of the fundamental deviations. */
export const iso286DeviationsSource: SourceId = 'iso-286-1';

/** Upper ends of the size steps of the deviations, mm; a step is over the end before it, up to and including its own. */
export const iso286DeviationSteps: readonly number[] = [3, 6, 10, 14, 18, 24, 30, 40, 50, 65, 80];

/** One row as printed, µm, by the steps above; null where the standard prints no value. */
type Row = readonly (number | null)[];

const _ = null;

/**
 * Upper deviations es of shafts a to h (ISO 286-1 tables of shafts), µm. Holes A to H are their mirror image.
 * The letters cd, ef and fg of fine mechanics are left out: two readings of the print disagree on them.
 */
export const shaftUpperDeviations: Readonly<Record<string, Row>> = {
  a: [-270, -270, -280, -290, -290, -300, -300, -310, -320, -340, -360],
  b: [-140, -140, -150, -150, -150, -160, -160, -170, -180, -190, -200],
  c: [-60, -70, -80, -95, -95, -110, -110, -120, -130, -140, -150],
  d: [-20, -30, -40, -50, -50, -65, -65, -80, -80, -100, -100],
  e: [-14, -20, -25, -32, -32, -40, -40, -50, -50, -60, -60],
  f: [-6, -10, -13, -16, -16, -20, -20, -25, -25, -30, -30],
  g: [-2, -4, -5, -6, -6, -7, -7, -9, -9, -10, -10],
  h: [0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0],
};

/** Lower deviations ei of shafts m to zc at every grade (ISO 286-1 tables of shafts), µm. */
export const shaftLowerDeviations: Readonly<Record<string, Row>> = {
  m: [2, 4, 6, 7, 7, 8, 8, 9, 9, 11, 11],
  n: [4, 8, 10, 12, 12, 15, 15, 17, 17, 20, 20],
  p: [6, 12, 15, 18, 18, 22, 22, 26, 26, 32, 32],
  r: [10, 15, 19, 23, 23, 28, 28, 34, 34, 41, 43],
  s: [14, 19, 23, 28, 28, 35, 35, 43, 43, 53, 59],
  t: [_, _, _, _, _, _, 41, 48, 54, 66, 75],
  u: [18, 23, 28, 33, 33, 41, 48, 60, 70, 87, 102],
  v: [_, _, _, _, 39, 47, 55, 68, 81, 102, 120],
  x: [20, 28, 34, 40, 45, 54, 64, 80, 97, 122, 146],
  y: [_, _, _, _, _, 63, 75, 94, 114, 144, 174],
  z: [26, 35, 42, 50, 60, 73, 88, 112, 136, 172, 210],
  za: [32, 42, 52, 64, 77, 98, 118, 148, 180, 226, 274],
  zb: [40, 50, 67, 90, 108, 136, 160, 200, 242, 300, 360],
  zc: [60, 80, 97, 130, 150, 188, 218, 274, 325, 405, 480],
};

/** Lower deviations ei of shafts j, which the standard prints grade by grade, µm. */
export const shaftLowerDeviationsJ: Readonly<Record<number, Row>> = {
  5: [-2, -2, -2, -3, -3, -4, -4, -5, -5, -7, -7],
  6: [-2, -2, -2, -3, -3, -4, -4, -5, -5, -7, -7],
  7: [-4, -4, -5, -6, -6, -8, -8, -10, -10, -12, -12],
  8: [-6, _, _, _, _, _, _, _, _, _, _],
};

/** Lower deviations ei of shafts k at grades 4 to 7; at every other grade the deviation is 0. µm. */
export const shaftLowerDeviationsK: Row = [0, 1, 1, 1, 1, 2, 2, 2, 2, 2, 2];

/** Upper deviations ES of holes J, printed grade by grade; they are no mirror image of the shafts j. µm. */
export const holeUpperDeviationsJ: Readonly<Record<number, Row>> = {
  6: [2, 5, 5, 6, 6, 8, 8, 10, 10, 13, 13],
  7: [4, 6, 8, 10, 10, 12, 12, 14, 14, 18, 18],
  8: [6, 10, 12, 15, 15, 20, 20, 24, 24, 28, 28],
};

/** Upper deviations ES of holes K to grade 8, to which the correction Δ is added, µm. */
export const holeUpperDeviationsK: Row = [0, -1, -1, -1, -1, -2, -2, -2, -2, -2, -2];
