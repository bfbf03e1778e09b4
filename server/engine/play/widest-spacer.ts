import { SIGMAS_TO_LIMIT } from '../seats/interference-spread.ts';
import { bestYield, type WantedShare } from './best-yield.ts';
import type { VaryingPair } from './play-statistics.ts';
import { straying } from './vary.ts';

/** Tolerances ± that a drawing is likely to carry, narrow to wide, mm. */
const USUAL = [0, 0.005, 0.01, 0.015, 0.02, 0.025, 0.03, 0.04, 0.05, 0.06, 0.08, 0.1];

/**
 * The widest usual tolerance ± of one length (mm) with which some nominal still gives the wanted share of builds;
 * 0 where only an exact one does, null where not even that. Halves the list: the share falls as the tolerance grows.
 */
export function widestSpacer(pair: VaryingPair, id: string, wanted: WantedShare, count = 1): number | null {
  const reaches = (tolerance: number): boolean =>
    bestYield(withTolerance(pair, id, tolerance, count), wanted).range !== null;
  if (!reaches(0)) return null;
  let [known, failed] = [0, USUAL.length];
  while (failed - known > 1) {
    const middle = (known + failed) >> 1;
    if (reaches(USUAL[middle] as number)) known = middle;
    else failed = middle;
  }
  return USUAL[known] as number;
}

/** The pair with another tolerance ± (mm) of one length, of which `count` parts stand in the line. */
export function withTolerance(pair: VaryingPair, id: string, tolerance: number, count = 1): VaryingPair {
  const sigma = (tolerance / SIGMAS_TO_LIMIT) * Math.sqrt(count);
  return straying(pair, (part) => (part.id === id ? sigma : part.sigma));
}
