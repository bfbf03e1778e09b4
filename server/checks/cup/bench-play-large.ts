import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import { force, length, millimetres, plain } from '../../engine/base/figures.ts';
import type { Check, Draft } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
import { coneData, leaveFix, leaveOf, relatedCones, sayTravel } from './bench-play-talk.ts';
import { conesOf } from './cones-of.ts';
import { pageConeHub } from './page-cone-hub.ts';

/** Cones set so wide that the clamp does not take the play up. */
export const benchPlayLarge: Check = {
  code: 'bench-play-large',
  group: 'cup',
  severity: 'warning',
  summary: 'The cones are set to more play than the clamp takes up.',
  page: {
    why: 'The clamp shortens a hollow axle by a few hundredths of a millimetre and a solid one with nuts by nothing. Play beyond that is felt at the rim as a knock, and hammers the tracks.',
    bad: pageConeHub(['set: 0.06', 'set: 0.15']),
    good: pageConeHub(),
    sources: [
      'shortening of a bar F·L/(E·A)',
      'stress area of a thread, ISO 898-1',
      'common practice: 0.05 mm of axial play once clamped',
    ],
  },
  run: (analysis) => eachVariant(analysis, (variant) => large(analysis, variant)),
};

function* large(analysis: Analysis, variant: VariantAnalysis): Iterable<Draft> {
  const cones = conesOf(analysis, variant);
  const { clamp } = variant.mechanics('built');
  const most = analysis.limits.value('play-clamped');
  if (!cones?.set || !cones.result || !clamp || cones.result.playClamped < most + 0.0005) return;
  const { result, set, leave } = cones;
  const to = leaveOf(cones);
  yield {
    path: set.path,
    message: `the cones are set to ${length(set.play)} mm of play, ${force(clamp.force)} takes ${millimetres(leave)} and leaves ${millimetres(result.playClamped)}, wanted ${plain(most)} at most: ${millimetres(result.playClamped - most)} too much — screw a cone in by ${sayTravel(cones, set.play - to)}`,
    related: relatedCones(cones, clamp),
    data: coneData(cones, clamp, most),
    fixes: leaveFix(analysis, cones),
  };
}
