import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import { length, millimetres, plain } from '../../engine/base/figures.ts';
import type { Check, Draft } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
import { loopData, relatedTerms } from '../loop-talk.ts';
import { pageHub } from '../page-hub.ts';
import { rewriteFix } from '../rewrite.ts';
import { findSeat } from '../seat-of.ts';

/** A bearing stands far below the face of its housing, and nothing is written that would fill the room. */
export const seatTooDeep: Check = {
  code: 'seat-too-deep',
  group: 'seat',
  severity: 'information',
  summary: 'A seat is far deeper than the ring that stands in it.',
  page: {
    why: 'An end cap clamps the inner ring. The deeper the bearing lies, the longer a nose the cap needs to reach it; where cap and housing meet first the stack is never clamped. A deep seat that holds a retaining ring, a seal or a cover says so by naming it.',
    bad: pageHub(['left: { bore: 26 N7, depth: 5.1 ±0.02', 'left: { bore: 26 N7, depth: 7.1 ±0.02']),
    good: pageHub(),
    sources: ['common practice'],
  },
  run: (analysis) => eachVariant(analysis, (variant) => tooDeep(analysis, variant)),
};

function* tooDeep(analysis: Analysis, variant: VariantAnalysis): Iterable<Draft> {
  const most = analysis.limits.value('seat-recess');
  const filledBeside = variant.assembly.hub.beside.some(({ kind }) => kind === 'seal' || kind === 'cover');
  for (const seat of variant.seats) {
    const result = seat.built ?? seat.drawn;
    const filled = findSeat(variant, seat.loop.seat);
    const { depth } = filled?.seat.values ?? {};
    if (
      !result ||
      !filled ||
      !depth ||
      filled.seat.ring ||
      filled.stop === 'ring' ||
      filledBeside ||
      result.mean <= most
    )
      continue;
    const widths = seat.loop.terms.slice(1).reduce((sum, item) => sum + item.settled.drawn.nominal, 0);
    const rings = seat.loop.bearings.join(' and ');
    yield {
      path: depth.path,
      message: `${rings} ${seat.loop.bearings.length === 1 ? 'lies' : 'lie'} ${millimetres(result.mean)} below the face of the ${filled.housing} on average, ${plain(most)} is usual without a ring or seal: the end cap needs a nose that long — make the seat ${length(widths)} deep, or name what fills it`,
      related: relatedTerms(seat.loop, result, seat.built ? 'built' : 'drawn'),
      data: loopData(seat.loop, result),
      fixes: depth.value.measured
        ? []
        : [
            rewriteFix(analysis, depth, widths, {
              name: `depth of ${seat.loop.seat}`,
              result: 'the ring then stands just below the face',
            }),
          ],
    };
  }
}
