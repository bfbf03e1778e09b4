import type { PairMechanics } from './pair-mechanics.ts';
import { countBuilds, pairStatistics, varyingPair } from './pair-statistics.ts';
import type { Shares } from './spacer-answer.ts';

/** What becomes of many builds of a pair as it is written, shares from 0 to 1. */
export interface BuildsInBrief extends Shares {
  /** Share with a loose outer ring, in the worse of the two seats. */
  readonly loose: number;
  /** The same where both bearings are alike, as two of one batch may be. */
  readonly alike: Shares;
  /** What brings most of the straying of the play, greatest first. */
  readonly contributions: readonly { readonly address: string; readonly share: number }[];
}

/** Contributions told: what follows matters to nobody. */
const told = 4;

/** Builds a pair many times and tells what a reader wants of it. */
export function buildsInBrief(pair: PairMechanics, how: 'drawn' | 'built', mostPlay: number): BuildsInBrief {
  const { shares, shareLoose, builds } = pairStatistics(pair, how, mostPlay);
  const alike = countBuilds(varyingPair(pair, how, 'alike'), mostPlay).shares;
  const only = ({ yield: right, loaded, playHigh }: Shares): Shares => ({ yield: right, loaded, playHigh });
  return {
    ...only(shares),
    loose: shareLoose,
    alike: only(alike),
    contributions: builds.contributions.slice(0, told).map(({ id, share }) => ({ address: id, share })),
  };
}
