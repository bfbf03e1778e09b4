import { classWithoutLimits, type Settled } from '../../assembly/settle.ts';
import type { Dimension } from '../../spec/model.ts';
import type { Interference } from '../fit-of.ts';

/** A reading that leaves more than this open, ± mm, cannot tell one fit from the next. */
const coarsest = 0.006;

/** Whether a diameter says enough to speak of a fit: a tolerance with known limits, or a reading. */
export function isFitted(dimension: Dimension): boolean {
  if (dimension.measured !== null) return true;
  return dimension.tolerance.kind !== 'none' && classWithoutLimits(dimension) === null;
}

/** Whether a reading is fine enough to judge a fit by; a drawn size always is. */
export function canJudge(settled: Settled): boolean {
  return settled.built === null || settled.built.upper <= coarsest;
}

/** Nominals without a tolerance that are further apart than this, mm, do not go together, whatever was left unsaid. */
export const plainlyApart = 0.05;

/**
 * Whether a fit is decided by what is known: the size is drawn or finely measured, or even a coarse reading leaves
 * no doubt that it lies under `least` or over `most` interference, mm.
 */
export function isDecided(settled: Settled, fit: Interference, least: number, most: number): boolean {
  return canJudge(settled) || fit.most < least || most < fit.least;
}
