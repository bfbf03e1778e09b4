import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import { isWorked, type PairMechanics } from '../../analysis/mechanics/pair-mechanics.ts';
import { setValue } from '../../spec/edit.ts';
import type { Fix } from '../../spec/problem.ts';
import type { Check, Draft } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
import { angularPageHub } from './angular-page-hub.ts';

/** Two angular-contact bearings that carry the same way. */
export const pairOpen: Check = {
  code: 'pair-open',
  group: 'play',
  severity: 'error',
  summary: 'Both angular-contact bearings carry the same way, so that nothing stops the hub the other way.',
  page: {
    why: 'An angular-contact bearing carries along the axle one way only. Two of them make a pair when they face each other or stand back to back; with both turned alike the shell can slide off its balls the other way, and the wheel has no axial location at all.',
    bad: angularPageHub('50.03', '18.05', 'right'),
    good: angularPageHub('50.03', '18.05', 'left'),
    sources: [
      'arrangements of paired angular-contact bearings: back to back, face to face, tandem (bearing makers’ catalogues)',
    ],
  },
  run: (analysis) => eachVariant(analysis, (variant) => open(analysis, variant)),
};

function* open(analysis: Analysis, variant: VariantAnalysis): Iterable<Draft> {
  for (const pair of variant.mechanics('built').pairs) {
    if (!isWorked(pair) || !isOpen(variant, pair)) continue;
    const { left, right } = pair;
    const [one, other] = [left, right].map(({ stack }) => stack.part.values['back-face']);
    if (!one || !other) continue;
    // Inner rings that the clamp drives together close a pair whose back faces look at each other.
    const wrong = one.value === 'left' ? { back: one, of: left } : { back: other, of: right };
    const kept = wrong.of === left ? right : left;
    const to = wrong.back.value === 'left' ? 'right' : 'left';
    const fix: Fix = {
      title: `Turn ${wrong.of.address} round: back-face ${to}, back to back with ${kept.address}`,
      changes: setValue(analysis.spec, wrong.back.path, to),
      preferred: true,
    };
    yield {
      path: wrong.back.path,
      message: `${left.address} and ${right.address} both have their back face on the ${wrong.back.value}: both carry one way, and nothing stops the ${pair.loop.housing} the other way — turn ${wrong.of.address} round`,
      related: [
        {
          path: wrong.of === left ? other.path : one.path,
          message: `back-face of ${kept.address}`,
        },
      ],
      data: { bearings: [left.address, right.address], backFace: wrong.back.value },
      fixes: [fix],
    };
  }
}

/** Whether nothing closes a pair that is alone in its housing. */
function isOpen(variant: VariantAnalysis, { loop, input }: PairMechanics): boolean {
  const [left, right] = [input.left.carries, input.right.carries];
  const housing = variant.assembly[loop.housing];
  const count = housing?.seats.reduce((sum, seat) => sum + seat.bearings.length, 0) ?? 0;
  return count === 2 && left !== 'both' && right !== 'both' && left !== right;
}
