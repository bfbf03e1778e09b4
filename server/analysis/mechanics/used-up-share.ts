import { buildClearance } from '../../engine/play/build-clearance.ts';
import { PLAN } from '../../engine/play/play-statistics.ts';
import type { MountedBearing } from './mounted-bearing.ts';
import { varyingBearing } from './pair-statistics.ts';

/**
 * Share of many builds, 0 to 1, in which fits and warmth leave a bearing no radial clearance; null where its clearance
 * is not known, and for an angular-contact bearing, which has none of its own.
 */
export function usedUpShare(bearing: MountedBearing): number | null {
  if (!bearing.mounted || bearing.contactAngle) return null;
  const { clearance } = buildClearance(varyingBearing(bearing, 'apart'), [], PLAN);
  return clearance.filter((value) => value <= 0).length / clearance.length;
}
