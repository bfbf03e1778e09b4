import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import { millimetres, plain } from '../../engine/base/figures.ts';
import type { Check, Draft } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
import { loopData, relatedTerms } from '../loop-talk.ts';
import { pageHub } from '../page-hub.ts';
import { rewriteFix } from '../rewrite.ts';
import { findSeat } from '../seat-of.ts';

/** The groove of a retaining ring lies where the bearing stands. */
export const retainingRingNoRoom: Check = {
  code: 'retaining-ring-no-room',
  group: 'seat',
  severity: 'error',
  summary: 'A retaining ring has no room beside the bearing.',
  page: {
    why: 'The ring must snap into its groove outside the bearing. Where the bearing still covers the groove the ring cannot be fitted, and a ring forced in half way flies out or lets the bearing walk.',
    bad: pageHub([
      'left: { bore: 26 N7, depth: 5.1 ±0.02',
      'left: { bore: 26 N7, retaining-ring: { side: open, thickness: 1.2, groove-width: 1.3, groove-from-face: 0.5 }, depth: 6.3 ±0.02',
    ]),
    good: pageHub([
      'left: { bore: 26 N7, depth: 5.1 ±0.02',
      'left: { bore: 26 N7, retaining-ring: { side: open, thickness: 1.2, groove-width: 1.3, groove-from-face: 0.5 }, depth: 6.75 ±0.02',
    ]),
    sources: ['DIN 472, retaining rings for bores', 'common practice'],
  },
  run: (analysis) => eachVariant(analysis, (variant) => noRoom(analysis, variant)),
};

function* noRoom(analysis: Analysis, variant: VariantAnalysis): Iterable<Draft> {
  for (const gap of variant.gaps) {
    const result = gap.built ?? gap.drawn;
    if (gap.loop.role !== 'retaining-ring' || !result || -1e-6 <= result.worst[0]) continue;
    const seat = findSeat(variant, gap.loop.between[0].replace('.retaining-ring', ''));
    const groove = seat?.seat.ring?.values['groove-from-face'];
    const depth = seat?.seat.values.depth;
    if (!seat || !groove || !depth) continue;
    const error = result.mean < 0;
    const least = -result.worst[0];
    const moved = Number((groove.value.nominal - least).toFixed(2));
    const deeper = Number((depth.value.nominal + least).toFixed(2));
    yield {
      path: groove.path,
      severity: error ? 'error' : 'warning',
      message: `room for the retaining ring of ${seat.address} is ${millimetres(result.mean)} on average and ${millimetres(result.worst[0])} at worst, wanted 0 or more: the bearing covers the groove — deepen the seat to ${plain(deeper)}`,
      related: relatedTerms(gap.loop, result, gap.built ? 'built' : 'drawn'),
      data: loopData(gap.loop, result),
      fixes: [
        rewriteFix(analysis, depth, deeper, {
          name: `depth of ${seat.address}`,
          result: 'every ring finds its groove',
        }),
        ...(0 < moved
          ? [
              rewriteFix(analysis, groove, moved, {
                name: `groove-from-face of ${seat.address}`,
                result: 'every ring finds its groove',
                preferred: false,
              }),
            ]
          : []),
      ],
    };
  }
}
