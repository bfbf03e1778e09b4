import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import { force, length, millimetres, share } from '../../engine/base/figures.ts';
import type { Check, Draft } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
import { coneData, leaveFix, leaveOf, relatedCones, sayTravel } from './bench-play-talk.ts';
import { conesOf } from './cones-of.ts';
import { pageConeHub } from './page-cone-hub.ts';

/** Cones set so close that the clamp loads the balls. */
export const benchPlaySmall: Check = {
  code: 'bench-play-small',
  group: 'cup',
  severity: 'warning',
  summary: 'The play the cones are set to is less than the clamp takes: the balls are loaded in the fork.',
  page: {
    why: 'A skewer shortens the hollow axle it runs through, and the cones on its threads come together by as much. A hub that is set without play on the bench binds in the fork: the cones pit within a season. Leave the play that the clamp takes, and no more.',
    bad: pageConeHub(['set: 0.06', 'set: 0.02']),
    good: pageConeHub(),
    sources: [
      'shortening of a bar F·L/(E·A)',
      'stress area of a thread, ISO 898-1',
      'common practice: slight play off the frame where a skewer clamps',
    ],
  },
  run: (analysis) => eachVariant(analysis, (variant) => small(analysis, variant)),
};

/** Travel less than this is not told from none, mm. */
const leastTravel = 0.001;

function* small(analysis: Analysis, variant: VariantAnalysis): Iterable<Draft> {
  const cones = conesOf(analysis, variant);
  const { clamp } = variant.mechanics('built');
  if (!cones?.set || !cones.result || !clamp || -leastTravel <= cones.result.playClampedSigned) return;
  const { result, set, leave } = cones;
  const stress = Math.max(result.left.contactStress, result.right.contactStress);
  const dents = analysis.limits.value('contact-stress') < stress ? ', which dents the tracks for good' : '';
  const dent = Math.max(result.left.dentShare, result.right.dentShare);
  const to = leaveOf(cones);
  yield {
    path: set.path,
    severity: dents ? 'error' : 'warning',
    message: `the cones are set to ${length(set.play)} mm of play and ${force(clamp.force)} takes ${millimetres(leave)}: the balls carry ${force(result.ballLoad)} (${Math.round(stress)} MPa, ${share(dent)} of what dents${dents}), wanted ${length(to)} on the bench: ${length(to - set.play)} too little — back a cone off by ${sayTravel(cones, to - set.play)}`,
    related: relatedCones(cones, clamp),
    data: coneData(cones, clamp, analysis.limits.value('play-clamped')),
    fixes: leaveFix(analysis, cones),
  };
}
