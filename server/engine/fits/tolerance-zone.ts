import type { SourceId } from '../base/sources.ts';
import {
  holeUpperDeviationsJ,
  holeUpperDeviationsK,
  iso286DeviationSteps,
  iso286DeviationsSource,
  shaftLowerDeviations,
  shaftLowerDeviationsJ,
  shaftLowerDeviationsK,
  shaftUpperDeviations,
} from '../tables/iso286-deviations.ts';
import { iso286GradeSteps, iso286Grades, iso286GradesSource } from '../tables/iso286-grades.ts';

/** A tolerance class of ISO 286: capital letters are holes, small letters are shafts. */
export interface FitClass {
  /** As written: `N`, `js`, `ZC`. */
  readonly letters: string;
  /** The number of the standard tolerance grade: 7 in `N7`. */
  readonly grade: number;
  readonly kind: 'hole' | 'shaft';
}

/** Deviations of a size from its nominal, mm, or why there are none. */
export type ToleranceZone =
  | { readonly lower: number; readonly upper: number; readonly sources: readonly SourceId[] }
  | { readonly error: string };

/** Largest size that the tables cover, mm. */
const LARGEST_SIZE = 80;
const COARSEST_GRADE = 11;
const FINEST_GRADE = 4;
const SOURCES: readonly SourceId[] = [...new Set([iso286GradesSource, iso286DeviationsSource])];

const SHAFT_LETTERS = [
  ...Object.keys(shaftUpperDeviations),
  'js',
  'j',
  'k',
  ...Object.keys(shaftLowerDeviations),
];

/** Reads `N7`, `h6`, `js6`, `ZC8`; null when the text is no tolerance class. Letters of mixed case are none. */
export function parseFitClass(text: string): FitClass | null {
  const match = /^\s*([A-Za-z]{1,2})(\d{1,2})\s*$/.exec(text);
  if (!match) return null;
  const [, letters = '', digits = ''] = match;
  if (!SHAFT_LETTERS.includes(letters.toLowerCase())) return null;
  if (letters === letters.toUpperCase()) return { letters, grade: Number(digits), kind: 'hole' };
  if (letters === letters.toLowerCase()) return { letters, grade: Number(digits), kind: 'shaft' };
  return null;
}

/**
 * Deviations of a tolerance class at a nominal size, mm: the fundamental deviation gives the limit next to
 * the nominal, the grade gives the width. For sizes up to 80 mm and grades 4 to 11 (sources `iso-286-1`).
 * A JS or js of an odd grade keeps its half micrometre; the standard allows rounding it down and does not ask for it.
 */
export function toleranceZone(size: number, fit: FitClass): ToleranceZone {
  const refused = refusal(size, fit);
  if (refused) return { error: refused };
  const width = gradeWidth(size, fit.grade);
  if (fit.letters.toLowerCase() === 'js') return zone(-width / 2, width / 2);
  const deviation = fit.kind === 'hole' ? holeDeviation(size, fit) : shaftDeviation(size, fit);
  if ('error' in deviation) return deviation;
  if ('upper' in deviation) return zone(deviation.upper - width, deviation.upper);
  return zone(deviation.lower, deviation.lower + width);
}

/** Offered for a hole: housings of a wheel bearing, then plain bores, then the rest. */
const HOLE_CLASSES =
  'N7 M7 P7 N6 M6 P6 R7 K7 H7 H8 H6 G7 F7 F8 JS7 J7 K6 R6 S7 E8 E9 D9 D10 H9 H10 H11 C11 JS9 P9 N9'.split(
    ' ',
  );

/** Offered for a shaft: axles under a standing inner ring, then the rest. */
const SHAFT_CLASSES =
  'g6 h6 h5 g5 f6 j6 js6 h7 js5 k5 k6 f7 h8 h9 e8 d9 m6 n6 p6 r6 s6 js9 h10 h11 c11'.split(' ');

/** Classes to offer while someone writes, the usual ones first; each is defined at every size from 1 to 80 mm. */
export function fitClassesFor(kind: 'hole' | 'shaft'): readonly string[] {
  return kind === 'hole' ? HOLE_CLASSES : SHAFT_CLASSES;
}

/** The limit next to the nominal, µm, or why the standard gives none. */
type Deviation = { readonly upper: number } | { readonly lower: number } | { readonly error: string };

function shaftDeviation(size: number, fit: FitClass): Deviation {
  const { letters, grade } = fit;
  const upper = shaftUpperDeviations[letters];
  if (upper) return found(at(upper, size), 'upper', size, fit);
  if (letters === 'j') return found(at(shaftLowerDeviationsJ[grade], size), 'lower', size, fit);
  if (letters === 'k')
    return { lower: 4 <= grade && grade <= 7 ? (at(shaftLowerDeviationsK, size) ?? 0) : 0 };
  return found(at(shaftLowerDeviations[letters], size), 'lower', size, fit);
}

function holeDeviation(size: number, fit: FitClass): Deviation {
  const { grade } = fit;
  const letters = fit.letters.toLowerCase();
  const mirrored = shaftUpperDeviations[letters];
  if (mirrored) return found(negated(at(mirrored, size)), 'lower', size, fit);
  if (letters === 'j') return found(at(holeUpperDeviationsJ[grade], size), 'upper', size, fit);
  if (letters === 'k') return holeDeviationK(size, fit);
  if (letters === 'n' && grade > 8) return holeDeviationCoarseN(size, fit);
  const corrected = letters === 'm' || letters === 'n' ? grade <= 8 : grade <= 7;
  const base = negated(at(shaftLowerDeviations[letters], size));
  const upper = base !== null && corrected ? base + correction(size, grade) : base;
  return found(upper, 'upper', size, fit);
}

/** Holes K: corrected up to grade 8; coarser ones exist up to 3 mm only, where the deviation is 0. */
function holeDeviationK(size: number, fit: FitClass): Deviation {
  if (fit.grade > 8 && size > 3) return notDefined(size, fit);
  return { upper: (at(holeUpperDeviationsK, size) ?? 0) + correction(size, fit.grade) };
}

/** Holes N coarser than grade 8 begin at the nominal over 3 mm and are not used up to 1 mm. */
function holeDeviationCoarseN(size: number, fit: FitClass): Deviation {
  if (size <= 1) return notDefined(size, fit);
  return size > 3 ? { upper: 0 } : { upper: negated(at(shaftLowerDeviations.n, size)) ?? 0 };
}

/** The correction Δ, µm: how much wider a grade is than the one before it; none up to 3 mm. */
function correction(size: number, grade: number): number {
  if (size <= 3 || grade > 8) return 0;
  return gradeWidth(size, grade) - gradeWidth(size, grade - 1);
}

/** Width of a grade at a size, µm. */
function gradeWidth(size: number, grade: number): number {
  return iso286Grades[grade]?.[step(iso286GradeSteps, size)] ?? 0;
}

function at(row: readonly (number | null)[] | undefined, size: number): number | null {
  return row?.[step(iso286DeviationSteps, size)] ?? null;
}

/** Which step a size falls in: over the end before, up to and including its own end. */
function step(ends: readonly number[], size: number): number {
  return ends.findIndex((end) => size <= end);
}

function negated(value: number | null): number | null {
  return value === null ? null : -value;
}

function found(value: number | null, side: 'upper' | 'lower', size: number, fit: FitClass): Deviation {
  if (value === null) return notDefined(size, fit);
  return side === 'upper' ? { upper: value } : { lower: value };
}

function notDefined(size: number, fit: FitClass): { readonly error: string } {
  return { error: `ISO 286 gives no ${fit.letters}${fit.grade} at ${size} mm` };
}

function refusal(size: number, { letters, grade }: FitClass): string | null {
  if (!(size > 0)) return `a tolerance class needs a size above 0 mm, not ${size} mm`;
  if (size > LARGEST_SIZE)
    return `the tables of tolerance classes here end at ${LARGEST_SIZE} mm, and ${size} mm is larger`;
  if (FINEST_GRADE <= grade && grade <= COARSEST_GRADE) {
    const wide = /^[ab]$/i.test(letters) && size <= 1;
    return wide ? `${letters}${grade} is not used up to 1 mm` : null;
  }
  return `grades ${FINEST_GRADE} to ${COARSEST_GRADE} are known here, and ${letters}${grade} is grade ${grade}`;
}

/** From µm to mm; dividing, not multiplying, so that 7 µm is exactly the number 0.007. */
function zone(lower: number, upper: number): ToleranceZone {
  return { lower: lower / 1000 || 0, upper: upper / 1000 || 0, sources: SOURCES };
}
