import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import { length, plain } from '../../engine/base/figures.ts';
import { chamferLimits } from '../../engine/tables/chamfer-limits.ts';
import type { Check, Draft } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
import { pageHub } from '../page-hub.ts';
import { rewriteFix } from '../rewrite.ts';
import { seatsOf } from '../seat-of.ts';

/** A shoulder is too low to carry the face of the outer ring. */
export const shoulderTooLow: Check = {
  code: 'shoulder-too-low',
  group: 'seat',
  severity: 'warning',
  summary: 'A shoulder is too low to carry the outer ring.',
  page: {
    why: 'The outer ring stands on the flat of its face inside the chamfer. A shoulder that ends near the chamfer gives it an edge to tip over, and the soft corner of a light alloy shoulder is pressed away.',
    bad: pageHub(['shoulder-bore: 23', 'shoulder-bore: 25.4']),
    good: pageHub(),
    sources: ['shoulder heights by chamfer, maker’s table after ISO 582'],
  },
  run: (analysis) => eachVariant(analysis, (variant) => tooLow(analysis, variant)),
};

function* tooLow(analysis: Analysis, variant: VariantAnalysis): Iterable<Draft> {
  for (const seat of seatsOf(variant)) {
    const shoulder = seat.seat.values['shoulder-bore'];
    const bearing = seat.contact?.bearing;
    const decoded = bearing?.bearing;
    if (!shoulder || !bearing || !decoded?.chamferMin || seat.stop !== 'shoulder') continue;
    const row = chamferLimits.find(([least]) => least === decoded.chamferMin);
    const height = (decoded.kind === 'angular-contact' ? row?.[7] : null) ?? row?.[6];
    if (height === undefined) continue;
    const most = decoded.outside - 2 * height;
    const inner = bearing.innerOutside?.value ?? 0;
    // A thin section has no room for the full height: the least shoulder may then not be asked for.
    const asked = Math.max(most, (inner + decoded.outside) / 2);
    if (shoulder.value.nominal <= asked) continue;
    const name = `shoulder-bore of ${seat.address}`;
    const is = (decoded.outside - shoulder.value.nominal) / 2;
    yield {
      path: shoulder.path,
      severity: is <= decoded.chamferMin ? 'error' : 'warning',
      message: `${name} is ${plain(shoulder.value.nominal)}, which leaves ${length(is)} mm of shoulder behind ${bearing.address}; ${length((decoded.outside - asked) / 2)} mm wanted — close it to ${plain(asked)}`,
      related: [
        {
          path: bearing.from,
          message: `outside ${plain(decoded.outside)}, smallest chamfer ${plain(decoded.chamferMin)}`,
        },
      ],
      data: { shoulderBore: shoulder.value.nominal, height: is, heightWanted: (decoded.outside - asked) / 2 },
      fixes: [
        rewriteFix(analysis, shoulder, Math.floor(asked * 10) / 10, {
          name,
          result: 'the face of the ring is carried',
        }),
      ],
    };
  }
}
