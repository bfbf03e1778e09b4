import type { PairMechanics } from '../../analysis/mechanics/pair-mechanics.ts';
import { pairStatistics, spacerAdvice } from '../../analysis/mechanics/pair-statistics.ts';
import type { LoopTerm } from '../../assembly/loop.ts';

/** Tolerances ± that a drawing is likely to carry, narrow to wide, mm. */
const usual = [0, 0.005, 0.01, 0.015, 0.02, 0.025, 0.03, 0.04, 0.05, 0.06, 0.08, 0.1];

/**
 * The widest usual tolerance ± of one length (mm) with which some nominal still gives the wanted share of builds;
 * 0 where only an exact one does, null where not even that. Halves the list: the share falls as the tolerance grows.
 */
export function widestTolerance(
  pair: PairMechanics,
  item: LoopTerm,
  how: 'drawn' | 'built',
  wanted: { readonly mostPlay: number; readonly share: number },
): number | null {
  const reaches = (tolerance: number): boolean => {
    const tried = withTolerance(pair, item, tolerance);
    const statistics = pairStatistics(tried, how, wanted.mostPlay);
    return spacerAdvice(tried, statistics, wanted.mostPlay, wanted.share).range !== null;
  };
  if (!reaches(0)) return null;
  let [known, failed] = [0, usual.length];
  while (failed - known > 1) {
    const middle = (known + failed) >> 1;
    if (reaches(usual[middle] as number)) known = middle;
    else failed = middle;
  }
  return usual[known] as number;
}

function withTolerance(pair: PairMechanics, item: LoopTerm, tolerance: number): PairMechanics {
  const { drawn } = item.settled;
  const settled = { ...item.settled, drawn: { ...drawn, lower: -tolerance, upper: tolerance }, built: null };
  const terms = pair.loop.terms.map((other) => (other.path === item.path ? { ...other, settled } : other));
  return { ...pair, loop: { ...pair.loop, terms } };
}
