import type { NoSpacer, Shares, SpacerAnswer } from '../../analysis/mechanics/spacer-answer.ts';

/** What `solve --json` prints for one pair; lengths in mm, shares from 0 to 1. */
export function spacerJson(answer: SpacerAnswer | NoSpacer) {
  if ('missing' in answer) return answer;
  const { bearings, spacer, from, to, now, playClamped, range, widest, contributions, assumed } = answer;
  const { allocation, options, alike, loose, usedUp } = answer;
  return {
    bearings,
    spacer,
    from: from.nominal,
    tolerance: [from.lower, from.upper],
    to,
    ...sharesJson(answer),
    now: sharesJson(now),
    oneBatch: sharesJson(alike),
    shareLoose: loose,
    shareWithoutClearance: usedUp,
    playClamped,
    range: range && [range.lo, range.hi],
    widestTolerance: widest,
    contributions,
    allocation: allocation && {
      yieldAllExact: allocation.ceiling,
      clearanceGroup: allocation.group,
      proposals: allocation.proposals.map(({ method, tolerances, change, yield: right }) => ({
        method,
        to: Number((from.nominal + change / answer.count).toFixed(3)),
        yield: right,
        tolerances: tolerances.map(({ id, from: wide, to: close, share }) => ({
          address: id,
          from: wide,
          to: close,
          share,
        })),
      })),
    },
    options,
    assumptions: assumed,
  };
}

function sharesJson({ yield: right, loaded, playHigh }: Shares) {
  return { yield: right, shareLoaded: loaded, sharePlayHigh: playHigh };
}
