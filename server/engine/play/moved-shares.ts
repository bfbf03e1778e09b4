import type { BuildShares } from './build-shares.ts';
import type { PairBuilds } from './play-statistics.ts';

/**
 * What becomes of the same builds when the inner distance is changed by `change` (mm). Their clearances are known, so
 * nothing is built anew: each build has the play its travel leaves at its new δ. `shortening` is what the clamp takes, mm.
 */
export function movedShares(
  builds: PairBuilds,
  shortening: number,
  change: number,
  mostPlay: number,
): Pick<BuildShares, 'yield' | 'loaded' | 'playHigh'> {
  const { mismatch, travel, widest, closes } = builds;
  const n = mismatch.length;
  const inward = closes === 'both' || closes === 'inward';
  const outward = closes === 'both' || closes === 'outward';
  let loaded = 0;
  let high = 0;
  for (let i = 0; i < n; i++) {
    const delta = (mismatch[i] as number) - shortening + change;
    const free = travel[i] as number;
    let play = closes === 'both' ? (widest[i] as number) : Number.POSITIVE_INFINITY;
    if (inward && free + delta < play) play = free + delta;
    if (outward && free - delta < play) play = free - delta;
    if (play < 0) loaded++;
    else if (play > mostPlay) high++;
  }
  return { yield: 1 - (loaded + high) / n, loaded: loaded / n, playHigh: high / n };
}
