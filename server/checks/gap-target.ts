import type { Closed } from '../analysis/close.ts';
import type { Wanted } from '../assembly/loop.ts';

/** The mean to aim a gap at: the middle of its limits; above a least gap, far enough that the spread clears it. */
export function gapTarget(wanted: Wanted, result: Closed): number {
  if (Number.isFinite(wanted.hi)) return (wanted.lo + wanted.hi) / 2;
  return wanted.lo + (result.mean - result.rss[0]);
}
