import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import { length, millimetres, plain } from '../../engine/base/figures.ts';
import type { Check, Draft } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
import { loopData, relatedTerms } from '../loop-talk.ts';
import { pageHub } from '../page-hub.ts';
import { rewriteFix } from '../rewrite.ts';
import { findSeat } from '../seat-of.ts';

/** A bearing stands so deep that the end cap beside it cannot reach its inner ring. */
export const seatTooDeep: Check = {
  code: 'seat-too-deep',
  group: 'seat',
  severity: 'error',
  summary: 'A seat is so deep that the end cap cannot reach the bearing.',
  page: {
    why: 'An end cap clamps the inner ring. Where the bearing lies below the face of the housing and the face of the cap is wider than the bore it must enter, cap and housing meet first: the stack is never clamped and the hub locks up.',
    bad: pageHub(
      ['left: { bore: 26 N7, depth: 5.1 ±0.02', 'left: { bore: 26 N7, depth: 6.1 ±0.02'],
      ['length: 14.03 ±0.02\n    face: 19.4', 'length: 14.03 ±0.02\n    face: 19.4\n    outside: 28'],
      ['face: 19.4', 'face: 27'],
    ),
    good: pageHub(),
    sources: ['common practice'],
  },
  run: (analysis) => eachVariant(analysis, (variant) => tooDeep(analysis, variant)),
};

function* tooDeep(analysis: Analysis, variant: VariantAnalysis): Iterable<Draft> {
  const { line } = variant.assembly;
  for (const seat of variant.seats) {
    const result = seat.built ?? seat.drawn;
    const filled = findSeat(variant, seat.loop.seat);
    const { bore, depth } = filled?.seat.values ?? {};
    if (!result || !filled || !bore || !depth || result.mean <= 0) continue;
    const outer = filled.from === 'left' ? filled.bearings[0] : filled.bearings.at(-1);
    const at = outer ? line.indexOf(outer) : -1;
    const cap = line[filled.from === 'left' ? at - 1 : at + 1];
    const face = cap?.part.kind === 'end-cap' ? cap.part.values.face : undefined;
    if (!cap || !face || face.value.nominal < bore.value.nominal) continue;
    const widths = seat.loop.terms.slice(1).reduce((sum, item) => sum + item.settled.drawn.nominal, 0);
    const name = `depth of ${seat.loop.seat}`;
    yield {
      path: depth.path,
      message: `${seat.loop.bearings.join(' and ')} lies ${millimetres(result.mean)} below the face on average and the face of ${cap.address}, ${plain(face.value.nominal)}, does not enter the ${plain(bore.value.nominal)} bore: the cap meets the housing first — make the seat ${length(widths - 0.1)} deep, or the face smaller`,
      related: [
        ...relatedTerms(seat.loop, result, seat.built ? 'built' : 'drawn'),
        { path: face.path, message: `face ${plain(face.value.nominal)} here` },
      ],
      data: { ...loopData(seat.loop, result), face: face.value.nominal, bore: bore.value.nominal },
      fixes: [
        rewriteFix(analysis, depth, widths - 0.1, {
          name,
          result: 'the ring then stands proud by a few hundredths and the cap reaches it',
        }),
      ],
    };
  }
}
