import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import { length, plain } from '../../engine/base/figures.ts';
import type { Check, Draft } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
import { pageHub } from '../page-hub.ts';
import { rewriteFix } from '../rewrite.ts';
import { seatsOf } from '../seat-of.ts';

/** A shoulder comes so far in that it reaches the inner ring or the seal. */
export const shoulderTouchesInner: Check = {
  code: 'shoulder-touches-inner',
  group: 'seat',
  severity: 'error',
  summary: 'A shoulder reaches the inner ring.',
  page: {
    why: 'The shoulder turns with the wheel, the inner ring does not. A shoulder that reaches in over the inner ring rubs on it, and leaves no edge for the drift that must take the bearing out.',
    bad: pageHub(['shoulder-bore: 23', 'shoulder-bore: 18.5']),
    good: pageHub(),
    sources: ['ring shoulders estimated from the section unless inner-outside is written', 'common practice'],
  },
  run: (analysis) => eachVariant(analysis, (variant) => touching(analysis, variant)),
};

function* touching(analysis: Analysis, variant: VariantAnalysis): Iterable<Draft> {
  for (const seat of seatsOf(variant)) {
    const shoulder = seat.seat.values['shoulder-bore'];
    const bearing = seat.contact?.bearing;
    const inner = bearing?.innerOutside;
    if (!shoulder || !bearing?.bearing || !inner || bearing.outerInside === null) continue;
    if (inner.value < shoulder.value.nominal) continue;
    const target = Math.floor(bearing.outerInside * 10) / 10;
    const name = `shoulder-bore of ${seat.address}`;
    const estimated = inner.estimated ? ', estimated from the section' : '';
    yield {
      path: shoulder.path,
      message: `${name} is ${plain(shoulder.value.nominal)}, the inner ring of ${bearing.address} reaches out to ${length(inner.value, 1)}${estimated}: ${length((inner.value - shoulder.value.nominal) / 2, 1)} mm of it is covered — open it to ${plain(target)}`,
      related: [
        { path: bearing.from, message: `inner ring out to ${length(inner.value, 1)} mm${estimated}` },
      ],
      data: { shoulderBore: shoulder.value.nominal, innerOutside: inner.value, estimated: inner.estimated },
      fixes: [rewriteFix(analysis, shoulder, target, { name, result: 'it carries the outer ring only' })],
    };
  }
}
