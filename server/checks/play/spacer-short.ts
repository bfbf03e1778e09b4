import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import { force, length, millimetres, plain } from '../../engine/base/figures.ts';
import { travel } from '../../engine/play/pair-side.ts';
import type { Check, Draft } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
import { pageHub } from '../page-hub.ts';
import { isDeepGroove, type LocatedPair, leastTravel, locatedPairs } from './located-pair.ts';
import { placeOfPlay } from './place-of-play.ts';
import { doubtedLengths, playChanges, playFixes, sayPlayChange } from './play-fixes.ts';
import { between, isDented, middleOf, playData, relatedPlay, sayLoad } from './play-talk.ts';

/** The inner rings are driven together before the spacer takes its share. */
export const spacerShort: Check = {
  code: 'spacer-short',
  group: 'play',
  severity: 'error',
  summary: 'The spacer is too short: clamping drives the inner rings together and loads the balls.',
  page: {
    why: 'Between the shoulders the outer rings cannot follow. With a spacer shorter than the distance of the shoulders by more than the balls leave, the clamp pulls the inner rings together until the balls carry: the wheel turns with a notch, and the grooves wear where the balls stand. The clamp shortens the sleeve as well, so the length to write is a little over the distance of the shoulders.',
    bad: `${pageHub(['62.06 ±0.01', '61.97 ±0.01'])}clamp: 5 kN\n`,
    good: `${pageHub(['62.06 ±0.01', '62.08 ±0.01'])}clamp: 5 kN\n`,
    sources: [
      'play of two equal bearings 2a − |δ|, with a from the radial clearance as mounted',
      'Hertz contact; ISO 76, 4200 MPa dents a groove by a ten-thousandth of the ball',
      'ISO 5753, radial internal clearance',
    ],
  },
  run: (analysis) => eachVariant(analysis, (variant) => short(analysis, variant)),
};

function* short(analysis: Analysis, variant: VariantAnalysis): Iterable<Draft> {
  const mostStress = analysis.limits.value('contact-stress');
  const mostPlay = analysis.limits.value('play-clamped');
  for (const located of locatedPairs(analysis, variant)) {
    const { result, input } = located.pair;
    const angular = !isDeepGroove(located);
    // Angular-contact bearings are set with a load; only one that dents their grooves is a fault.
    if (angular && !isDented(located, mostStress)) continue;
    if (0 <= input.mismatch && !angular) continue;
    if (-leastTravel <= result.playUnclamped) continue;
    if (located.clamp && result.loadedBy !== 'short') continue;
    const changes = playChanges(analysis, located);
    const [best] = changes;
    yield {
      path: placeOfPlay(located, best),
      message: `${sayShort(located)}: ${sayClamped(located, mostStress)}, wanted 0 to ${plain(mostPlay)} mm of play${best ? ` — ${sayPlayChange(best)}` : ' — fit a longer spacer or add a shim'}`,
      related: relatedPlay(located),
      data: playData(located, mostPlay),
      doubts: doubtedLengths(located, best),
      fixes: playFixes(analysis, located, changes),
    };
  }
}

function sayShort(located: LocatedPair): string {
  const { left, right, mismatch } = located.pair.input;
  const free = travel(left, 'inward') + travel(right, 'inward');
  return `${middleOf(located)} is ${millimetres(-mismatch)} short on average between ${between(located)}, whose balls leave ${length(free)}`;
}

function sayClamped(located: LocatedPair, mostStress: number): string {
  const { clamp, pair } = located;
  if (!clamp)
    return `${millimetres(-pair.result.playUnclamped)} of travel is missing and any clamp loads the balls`;
  const all = pair.result.spacerReached ? '' : 'all of it, ';
  return `clamped with ${force(clamp.force)} the balls carry ${all}${sayLoad(located, mostStress)}`;
}
