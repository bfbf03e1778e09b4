import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import { force, millimetres, plain } from '../../engine/base/figures.ts';
import type { Check, Draft } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
import { pageHub } from '../page-hub.ts';
import { leastTravel, locatedPairs } from './located-pair.ts';
import { placeOfPlay } from './place-of-play.ts';
import { doubtedLengths, playChanges, playFixes, sayPlayChange } from './play-fixes.ts';
import { between, playData, relatedPlay } from './play-talk.ts';

/** More play than is wanted once the hub is clamped. */
export const playHigh: Check = {
  code: 'play-high',
  group: 'play',
  severity: 'warning',
  summary: 'The bearings have more play than wanted once the hub is clamped.',
  page: {
    why: 'The internal clearance of two bearings lets the wheel shift along its axle. Some of it is needed so that the balls are never squeezed; more is felt at the rim as a knock, and wears the grooves. A spacer a little shorter lets the clamp lean the inner rings towards each other, which takes play away while the shoulders still carry the outer rings.',
    bad: `${pageHub(['62.06 ±0.01', '62.10 ±0.01'])}clamp: 5 kN\n`,
    good: `${pageHub(['62.06 ±0.01', '62.07 ±0.01'])}clamp: 5 kN\n`,
    sources: [
      'play of two equal bearings 2a − |δ|, with a from the radial clearance as mounted',
      'common practice: 0.05 mm of axial play once clamped',
    ],
  },
  run: (analysis) => eachVariant(analysis, (variant) => high(analysis, variant)),
};

function* high(analysis: Analysis, variant: VariantAnalysis): Iterable<Draft> {
  const most = analysis.limits.value('play-clamped');
  for (const located of locatedPairs(analysis, variant)) {
    const { clamp, pair } = located;
    const play = pair.result.playClamped;
    // Play is judged in the frame: without a clamp nobody knows what is left of it.
    if (!clamp || !Number.isFinite(play) || play < most + leastTravel / 2) continue;
    const changes = playChanges(analysis, located);
    const [best] = changes;
    yield {
      path: placeOfPlay(located, best),
      message: `${between(located)} have ${millimetres(play, 3)} of axial play clamped with ${force(clamp.force)}, wanted ${plain(most)} at most: ${millimetres(play - most, 3)} too much — ${best ? sayPlayChange(best) : 'fit a shorter spacer or bearings with less clearance'}`,
      related: relatedPlay(located),
      data: playData(located, most),
      doubts: doubtedLengths(located, best),
      fixes: playFixes(analysis, located, changes),
    };
  }
}
