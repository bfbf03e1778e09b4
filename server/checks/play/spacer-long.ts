import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import { force, length, millimetres, plain } from '../../engine/base/figures.ts';
import { travel } from '../../engine/play/pair-side.ts';
import type { Check, Draft } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
import { pageHub } from '../page-hub.ts';
import { isDeepGroove, type LocatedPair, leastTravel, locatedPairs } from './located-pair.ts';
import { placeOfPlay } from './place-of-play.ts';
import { doubtedLengths, playChanges, playFixes, sayPlayChange } from './play-fixes.ts';
import { between, middleOf, playData, relatedPlay, sayLoad } from './play-talk.ts';

const wall: readonly [string, string] = ['  between-shoulders', '  outside: 34\n  between-shoulders'];
const steel: readonly [string, string] = ['outside: 19.6', 'outside: 19.6\n    material: steel'];

/** The inner rings push the outer rings off their shoulders. */
export const spacerLong: Check = {
  code: 'spacer-long',
  group: 'play',
  severity: 'error',
  summary: 'The spacer is too long: the inner rings push the outer rings off their shoulders.',
  page: {
    why: 'A spacer longer than the distance of the shoulders by more than the balls leave holds the inner rings too far apart. The balls then push the outer rings outward, and only the grip of the press fit holds them. Where the grip gives way the ring creeps off its shoulder, and the hub is loose between its shoulders.',
    bad: `${pageHub(wall, steel, ['62.06 ±0.01', '62.15 ±0.01'])}clamp: 5 kN\n`,
    good: `${pageHub(wall, steel)}clamp: 5 kN\n`,
    sources: [
      'play of two equal bearings 2a − |δ|, with a from the radial clearance as mounted',
      'grip of a press fit µ·p·π·D·B with µ 0.12, 0.08 to 0.18',
      'ISO 5753, radial internal clearance',
    ],
  },
  run: (analysis) => eachVariant(analysis, (variant) => long(analysis, variant)),
};

function* long(analysis: Analysis, variant: VariantAnalysis): Iterable<Draft> {
  const mostStress = analysis.limits.value('contact-stress');
  const mostPlay = analysis.limits.value('play-clamped');
  for (const located of locatedPairs(analysis, variant)) {
    const { result, input } = located.pair;
    const clamped = input.mismatch - input.clampForce * input.spacerCompliance;
    if (!isDeepGroove(located) || clamped <= 0 || -leastTravel <= result.playClampedSigned) continue;
    const changes = playChanges(analysis, located);
    const [best] = changes;
    yield {
      path: placeOfPlay(located, best),
      message: `${middleOf(located)} is ${millimetres(input.mismatch)} long on average between ${between(located)}, whose balls leave ${length(travel(input.left, 'outward') + travel(input.right, 'outward'))}: ${sayPushed(located, mostStress)}, wanted 0 to ${plain(mostPlay)} mm of play${best ? ` — ${sayPlayChange(best)}` : ' — fit a shorter spacer'}`,
      related: relatedPlay(located),
      data: {
        ...playData(located, mostPlay),
        gripLeft: located.pair.left.grip,
        gripRight: located.pair.right.grip,
        slid: result.slid,
      },
      doubts: doubtedLengths(located, best),
      fixes: playFixes(analysis, located, changes),
    };
  }
}

/** What happens to the outer rings: they hold and the balls are loaded, or they slide and the hub is loose. */
function sayPushed(located: LocatedPair, mostStress: number): string {
  const { result, left, right } = located.pair;
  if (!located.clamp)
    return `the inner rings push the outer rings ${millimetres(-result.playClampedSigned)} further apart than that`;
  const clamped = ` clamped with ${force(located.clamp.force)}`;
  if (result.slid === 'no')
    return `the inner rings${clamped} push the outer rings apart and the balls carry ${sayLoad(located, mostStress)}`;
  const grip = Math.min(left.grip, right.grip);
  const which = result.slid === 'either' ? 'one outer ring' : `the outer ring of bearing.${result.slid}`;
  const holds = 0 < grip ? `, held by ${force(grip)}` : ' (what its seat holds is not known)';
  return `the inner rings${clamped} push ${which} off its shoulder${holds}, and ${millimetres(result.playClampedShoulders)} of play is left between the shoulders`;
}
