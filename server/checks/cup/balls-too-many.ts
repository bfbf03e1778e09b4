import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import { length, millimetres, plain } from '../../engine/base/figures.ts';
import type { Check, Draft } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
import { countFix, filledCones } from './cones-of.ts';
import { pageConeHub } from './page-cone-hub.ts';

/** More loose balls than lie side by side in the cup. */
export const ballsTooMany: Check = {
  code: 'balls-too-many',
  group: 'cup',
  severity: 'error',
  summary: 'More balls are written for a cone than lie on the ball circle of its cup.',
  page: {
    why: 'Balls that do not fit side by side climb onto each other, and the cone binds long before it is set. A row takes one ball fewer than would fill its circle.',
    bad: pageConeHub(['10 × 3/16', '12 × 3/16']),
    good: pageConeHub(),
    sources: [
      'balls on a circle of diameter Dpw: π / asin(Dw / Dpw)',
      'common practice: one ball fewer than full',
    ],
  },
  run: (analysis) => eachVariant(analysis, (variant) => tooMany(analysis, variant)),
};

function* tooMany(analysis: Analysis, variant: VariantAnalysis): Iterable<Draft> {
  for (const cone of filledCones(analysis, variant)) {
    const { count, diameter, circle, gap, most, usual, path } = cone.balls;
    if (count <= most) continue;
    const circlePath = cone.cup?.values['ball-circle']?.path;
    yield {
      path,
      message: `${count} balls of ${plain(diameter)} mm need ${millimetres(-gap)} more than the ${plain(circle)} mm circle of the ${cone.side} cup has: ${most} lie on it, ${usual} are usual — fit ${usual}, or check ball size and circle`,
      related: circlePath ? [{ path: circlePath, message: `ball circle ${length(circle)} mm` }] : [],
      data: { count, diameter, circle, gap, most, usual },
      fixes: 0 < usual ? [countFix(analysis, cone, usual)] : [],
    };
  }
}
