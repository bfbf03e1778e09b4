import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import { length, millimetres } from '../../engine/base/figures.ts';
import type { Check, Draft } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
import { emptySeats } from '../empty-seats.ts';
import { loopData, relatedTerms } from '../loop-talk.ts';
import { pageHub } from '../page-hub.ts';
import { rewriteFix } from '../rewrite.ts';
import { findSeat, isSplit } from '../seat-of.ts';

/** A seat is shallower than the rings that stand in it. */
export const seatProud: Check = {
  code: 'seat-proud',
  group: 'seat',
  severity: 'warning',
  summary: 'A seat is shallower than the ring that stands in it.',
  page: {
    why: 'What stands out of the seat is not held by it. A thin ring pressed over half its width tilts under load and wears the bore to a funnel, and the part of it that stands proud can touch the end cap.',
    bad: pageHub(['depth: 5.1 ±0.02', 'depth: 4.5 ±0.02']),
    good: pageHub(),
    sources: ['ISO 492, deviation of ring width', 'common practice'],
  },
  run: (analysis) => eachVariant(analysis, (variant) => proud(analysis, variant)),
};

function* proud(analysis: Analysis, variant: VariantAnalysis): Iterable<Draft> {
  const most = analysis.limits.value('seat-depth');
  for (const seat of variant.seats) {
    const result = seat.built ?? seat.drawn;
    const filled = findSeat(variant, seat.loop.seat);
    const depth = filled?.seat.values.depth;
    if (!result || !filled || !depth || -most <= result.mean) continue;
    // A bearing in the wrong seat is the fault then, and said where it names the seat.
    if (isSplit(filled, variant.assembly.line) && emptySeats(variant).length > 0) continue;
    const widths = seat.loop.terms.slice(1).reduce((sum, item) => sum + item.settled.drawn.nominal, 0);
    const rings = seat.loop.bearings.join(' and ');
    const name = `depth of ${seat.loop.seat}`;
    yield {
      path: depth.path,
      message: `${name} is ${length(depth.value.nominal)}, ${rings} ${seat.loop.bearings.length === 1 ? 'is' : 'are'} ${length(depth.value.nominal - result.mean)} wide on average: ${millimetres(-result.mean)} stands out of the seat — deepen it to ${length(widths)}`,
      related: relatedTerms(seat.loop, result, seat.built ? 'built' : 'drawn'),
      data: loopData(seat.loop, result),
      fixes: depth.value.measured
        ? []
        : [
            rewriteFix(analysis, depth, widths, {
              name,
              result: `the ring then stands ${length(widths - (depth.value.nominal - result.mean))} mm below the face on average`,
            }),
          ],
    };
  }
}
