import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import { settle, sizeRange } from '../../assembly/settle.ts';
import { plain } from '../../engine/base/figures.ts';
import { chamferLimits } from '../../engine/tables/chamfer-limits.ts';
import type { Check, Draft } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
import { pageHub } from '../page-hub.ts';
import { rewriteFix } from '../rewrite.ts';
import { seatsOf } from '../seat-of.ts';

/** The corner of a seat is rounder than the chamfer of the ring that must reach into it. */
export const filletTooLarge: Check = {
  code: 'fillet-too-large',
  group: 'seat',
  severity: 'error',
  summary: 'The fillet of a seat is larger than the chamfer of the ring.',
  page: {
    why: 'A ring with a smaller chamfer than the corner of its seat rides up on the fillet and never meets the shoulder. It then stands askew, and the distance between the bearings is not the one on the drawing.',
    bad: pageHub(['fillet: 0.2', 'fillet: 0.5']),
    good: pageHub(),
    sources: ['ISO 15 and ISO 582, smallest chamfer and largest fillet'],
  },
  run: (analysis) => eachVariant(analysis, (variant) => tooLarge(analysis, variant)),
};

function* tooLarge(analysis: Analysis, variant: VariantAnalysis): Iterable<Draft> {
  for (const seat of seatsOf(variant)) {
    const { fillet } = seat.seat.values;
    const bearing = seat.contact?.bearing;
    const chamfer = bearing?.bearing?.chamferMin;
    if (!fillet || !bearing || !chamfer) continue;
    const [, largest] = sizeRange(settle(fillet, variant.assembly.rules).drawn);
    const most = chamferLimits.find(([least]) => least === chamfer)?.[5] ?? chamfer;
    if (largest <= most) continue;
    const name = `fillet of ${seat.address}`;
    // The tolerance of the fillet stays, so its nominal keeps clear of the limit by as much.
    const nominal = Number((most - (largest - fillet.value.nominal)).toFixed(3));
    yield {
      path: fillet.path,
      message: `${name} can be ${plain(largest)}, the smallest chamfer of ${bearing.address} is ${plain(chamfer)}: the ring does not reach its shoulder — ${plain(most)} at most`,
      related: [{ path: bearing.from, message: `smallest chamfer ${plain(chamfer)} mm` }],
      data: { fillet: largest, chamferMin: chamfer, filletMax: most },
      fixes:
        0 < nominal
          ? [rewriteFix(analysis, fillet, nominal, { name, result: `the ring reaches its shoulder` })]
          : [],
    };
  }
}
