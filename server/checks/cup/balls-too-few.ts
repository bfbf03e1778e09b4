import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import { length, millimetres, plain } from '../../engine/base/figures.ts';
import type { Check, Draft } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
import { countFix, filledCones } from './cones-of.ts';
import { pageConeHub } from './page-cone-hub.ts';

/** Room for two balls or more in a row of loose balls. */
export const ballsTooFew: Check = {
  code: 'balls-too-few',
  group: 'cup',
  severity: 'information',
  summary: 'The ball circle of a cup has room for two more balls or more.',
  page: {
    why: 'A row of loose balls is filled but for one. With fewer, each ball carries more, and the row can crowd to one side: usually a ball was lost when the hub was open, or the ball size or the circle was noted wrong.',
    bad: pageConeHub(['10 × 3/16', '8 × 3/16']),
    good: pageConeHub(),
    sources: [
      'balls on a circle of diameter Dpw: π / asin(Dw / Dpw)',
      'common practice: one ball fewer than full',
    ],
  },
  run: (analysis) => eachVariant(analysis, (variant) => tooFew(analysis, variant)),
};

function* tooFew(analysis: Analysis, variant: VariantAnalysis): Iterable<Draft> {
  for (const cone of filledCones(analysis, variant)) {
    const { count, diameter, circle, gap, most, usual, path } = cone.balls;
    if (usual <= count) continue;
    const circlePath = cone.cup?.values['ball-circle']?.path;
    yield {
      path,
      message: `${count} balls of ${plain(diameter)} mm leave ${millimetres(gap)} of the ${plain(circle)} mm circle of the ${cone.side} cup free, ${usual} are usual: ${usual - count} fewer — count them again, or check ball size and circle`,
      related: circlePath ? [{ path: circlePath, message: `ball circle ${length(circle)} mm` }] : [],
      data: { count, diameter, circle, gap, most, usual },
      fixes: [countFix(analysis, cone, usual)],
    };
  }
}
