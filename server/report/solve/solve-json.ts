import type { NoSpacer, SpacerAnswer } from './spacer-answer.ts';

/** What `solve --json` prints for one pair; lengths in mm, shares from 0 to 1. */
export function spacerJson(answer: SpacerAnswer | NoSpacer) {
  if ('missing' in answer) return answer;
  const { bearings, spacer, from, to, now, playClamped, range, widest, contributions, assumed } = answer;
  return {
    bearings,
    spacer,
    from: from.nominal,
    tolerance: [from.lower, from.upper],
    to,
    yield: answer.yield,
    shareLoaded: answer.loaded,
    sharePlayHigh: answer.playHigh,
    now: { yield: now.yield, shareLoaded: now.loaded, sharePlayHigh: now.playHigh },
    playClamped,
    range: range && [range.lo, range.hi],
    widestTolerance: widest,
    contributions,
    assumptions: assumed,
  };
}
