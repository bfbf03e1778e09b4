import type { SourceId } from '../base/sources.ts';

/** Source of the standard tolerance grades. */
export const iso286GradesSource: SourceId = 'iso-286-1';

/** Upper ends of the size steps of the grades, mm; a step is over the end before it, up to and including its own. */
export const iso286GradeSteps: readonly number[] = [3, 6, 10, 18, 30, 50, 80];

/**
 * Standard tolerance grades as printed (ISO 286-1 table 1), µm, by the steps above. The formulas that the
 * standard gives for them do not reproduce the printed, rounded values, so the print stands here.
 * Grade 3 is here for the correction of grade 4 holes only.
 */
export const iso286Grades: Readonly<Record<number, readonly number[]>> = {
  3: [2, 2.5, 2.5, 3, 4, 4, 5],
  4: [3, 4, 4, 5, 6, 7, 8],
  5: [4, 5, 6, 8, 9, 11, 13],
  6: [6, 8, 9, 11, 13, 16, 19],
  7: [10, 12, 15, 18, 21, 25, 30],
  8: [14, 18, 22, 27, 33, 39, 46],
  9: [25, 30, 36, 43, 52, 62, 74],
  10: [40, 48, 58, 70, 84, 100, 120],
  11: [60, 75, 90, 110, 130, 160, 190],
};
