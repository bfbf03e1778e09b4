import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import { force, millimetres, plain } from '../../engine/base/figures.ts';
import type { Check, Draft } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
import { pageHub } from '../page-hub.ts';
import { isDeepGroove, leastTravel, locatedPairs } from './located-pair.ts';
import { placeOfPlay } from './place-of-play.ts';
import { doubtedLengths, playChanges, playFixes, sayPlayChange } from './play-fixes.ts';
import { between, isDented, middleOf, playData, relatedPlay, sayLoad } from './play-talk.ts';
import { stifferFix } from './stiffer-fix.ts';

/** Play on the bench that is gone in the fork. */
export const clampTakesPlay: Check = {
  code: 'clamp-takes-play',
  group: 'play',
  severity: 'warning',
  summary: 'The bearings have play on the bench and none once the hub is clamped.',
  page: {
    why: 'The clamp squeezes everything between the inner rings, and a light alloy sleeve gives several hundredths of a millimetre. The shell between the outer rings is not squeezed, so the inner rings come together by that much: a hub that is free on the bench turns with a notch in the fork. A longer spacer or a stiffer one leaves the play where it is wanted, in the fork.',
    bad: `${pageHub(['outside: 19.6', 'outside: 18.6'])}clamp: 5 kN\n`,
    good: `${pageHub(['outside: 19.6', 'outside: 18.6'], ['62.06 ±0.01', '62.12 ±0.01'])}clamp: 5 kN\n`,
    sources: [
      'shortening of a tube F·L/(E·A)',
      'play of two equal bearings 2a − |δ|, with a from the radial clearance as mounted',
      'common practice: play is judged in the frame, with the axle at its torque',
    ],
  },
  run: (analysis) => eachVariant(analysis, (variant) => taken(analysis, variant)),
};

function* taken(analysis: Analysis, variant: VariantAnalysis): Iterable<Draft> {
  const mostStress = analysis.limits.value('contact-stress');
  const mostPlay = analysis.limits.value('play-clamped');
  for (const located of locatedPairs(analysis, variant)) {
    const { clamp, pair } = located;
    const { result, input } = pair;
    if (!clamp || !isDeepGroove(located) || result.loadedBy !== 'short') continue;
    // Short before the clamp is the fault of the spacer alone.
    const shortOnBench = input.mismatch < 0 && result.playUnclamped < -leastTravel;
    if (shortOnBench || -leastTravel <= result.playClampedSigned) continue;
    const changes = playChanges(analysis, located);
    const stiffer = stifferFix(analysis, located);
    const [best] = changes;
    const todo = best
      ? sayPlayChange(best)
      : stiffer
        ? `make ${middleOf(located)} of steel, or longer`
        : 'fit a longer or a stiffer spacer';
    const bench = millimetres(Math.max(0, result.playUnclamped));
    yield {
      path: placeOfPlay(located, best),
      severity: isDented(located, mostStress) ? 'error' : 'warning',
      message: `${between(located)} have ${bench} of play on the bench and none clamped: ${force(clamp.force)} takes ${millimetres(clamp.force * input.spacerCompliance)} from ${middleOf(located)} and the balls carry ${sayLoad(located, mostStress)}, wanted 0 to ${plain(mostPlay)} mm of play — ${todo}`,
      related: relatedPlay(located),
      data: playData(located, mostPlay),
      doubts: doubtedLengths(located, best),
      fixes: [...playFixes(analysis, located, changes), ...(stiffer ? [stiffer] : [])],
    };
  }
}
