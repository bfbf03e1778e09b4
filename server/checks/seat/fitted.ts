import type { Settled } from '../../assembly/settle.ts';
import type { Dimension } from '../../spec/model.ts';

/** A reading that leaves more than this open, ± mm, cannot tell one fit from the next. */
const coarsest = 0.006;

/** Whether a diameter says enough to speak of a fit: a tolerance or a reading. */
export function isFitted(dimension: Dimension): boolean {
  return dimension.tolerance.kind !== 'none' || dimension.measured !== null;
}

/** Whether a reading is fine enough to judge a fit by; a drawn size always is. */
export function canJudge(settled: Settled): boolean {
  return settled.built === null || settled.built.upper <= coarsest;
}
