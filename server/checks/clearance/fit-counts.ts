import type { Analysis } from '../../analysis/analyze.ts';
import type { MountedBearing } from '../../analysis/mechanics/mounted-bearing.ts';
import { pushesOn } from '../journal-of.ts';

/** Whether a fit of a bearing is so tight that a finding of its own says so: what it does to the clearance follows. */
export function isTightElsewhere(analysis: Analysis, { outerFit, innerFit }: MountedBearing): boolean {
  const most = analysis.limits.value('seat-interference-per-diameter');
  if (outerFit && most * outerFit.seat.diameter < outerFit.taker.interference.mean) return true;
  return innerFit !== null && pushesOn < innerFit.taker.interference.mean;
}
