import type { BuildPlan } from './build-clearance.ts';
import { buildPairs, PLAN, type VaryingPair } from './play-statistics.ts';
import { type SpacerAdvice, spacerForYield } from './spacer-for-yield.ts';

/** What is wanted of the clamped play: 0 to `mostPlay` (mm) in `share` of the builds (0 to 1). */
export interface WantedShare {
  readonly mostPlay: number;
  readonly share: number;
}

/**
 * The change of the inner distance that gives a pair most right builds, the outer rings carried by their shoulders,
 * and the yield it gives. The pair is built anew, so that two pairs compare over the same draws.
 */
export function bestYield(pair: VaryingPair, wanted: WantedShare, plan: BuildPlan = PLAN): SpacerAdvice {
  const shortening = pair.clampForce * pair.spacerCompliance;
  return spacerForYield(buildPairs(pair, plan), shortening, {
    least: 0,
    most: wanted.mostPlay,
    yield: wanted.share,
    side: 'short',
  });
}
