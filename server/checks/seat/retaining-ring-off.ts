import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import type { FilledSeat } from '../../assembly/housings.ts';
import { plain } from '../../engine/base/figures.ts';
import { boreRing } from '../../engine/tables/retaining-rings.ts';
import type { Check, Draft } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
import { pageHub } from '../page-hub.ts';
import { rewriteFix } from '../rewrite.ts';
import { seatsOf } from '../seat-of.ts';

/** A retaining ring is of another size than its bore, or thicker than its groove. */
export const retainingRingOff: Check = {
  code: 'retaining-ring-off',
  group: 'seat',
  severity: 'error',
  summary: 'A retaining ring does not suit its bore or its groove.',
  page: {
    why: 'A ring for another bore either does not reach the bottom of the groove or does not close into it, and one thicker than the groove does not go in at all. What is not seated in its groove holds nothing.',
    bad: pageHub([
      'left: { bore: 26 N7, depth: 5.1 ±0.02',
      'left: { bore: 26 N7, retaining-ring: { side: open, thickness: 1.2, groove-width: 1.1, groove-from-face: 0.5 }, depth: 6.75 ±0.02',
    ]),
    good: pageHub([
      'left: { bore: 26 N7, depth: 5.1 ±0.02',
      'left: { bore: 26 N7, retaining-ring: { side: open, thickness: 1.2, groove-width: 1.3, groove-from-face: 0.5 }, depth: 6.75 ±0.02',
    ]),
    sources: ['DIN 472, retaining rings for bores'],
  },
  run: (analysis) => eachVariant(analysis, ringsOff.bind(null, analysis)),
};

function* ringsOff(analysis: Analysis, variant: VariantAnalysis): Iterable<Draft> {
  for (const seat of seatsOf(variant)) {
    if (seat.seat.ring) {
      yield* wrongSize(analysis, seat);
      yield* tooThick(analysis, seat);
    }
  }
}

function* wrongSize(analysis: Analysis, seat: FilledSeat): Iterable<Draft> {
  const { bore } = seat.seat.values;
  const size = seat.seat.ring?.values.size;
  if (!bore || !size || Math.abs(size.value.nominal - bore.value.nominal) < 0.5) return;
  const name = `size of the retaining ring of ${seat.address}`;
  yield {
    path: size.path,
    message: `${name} is ${plain(size.value.nominal)}, the bore ${plain(bore.value.nominal)}: a ring is named after its bore — take ${plain(bore.value.nominal)}`,
    related: [{ path: bore.path, message: `bore ${plain(bore.value.nominal)} here` }],
    data: { size: size.value.nominal, bore: bore.value.nominal },
    fixes: [
      rewriteFix(analysis, size, Math.round(bore.value.nominal), { name, result: 'the ring for this bore' }),
    ],
  };
}

function* tooThick(analysis: Analysis, seat: FilledSeat): Iterable<Draft> {
  const { thickness, 'groove-width': groove } = seat.seat.ring?.values ?? {};
  if (!thickness || !groove || thickness.value.nominal < groove.value.nominal) return;
  const standard = boreRing(seat.seat.values.bore?.value.nominal ?? 0);
  const fits =
    standard && Math.abs(standard.thickness - thickness.value.nominal) < 0.005 ? standard.grooveWidth : null;
  const target = fits ?? thickness.value.nominal + 0.1;
  const name = `groove-width of ${seat.address}`;
  yield {
    path: groove.path,
    message: `${name} is ${plain(groove.value.nominal)}, the ring ${plain(thickness.value.nominal)} thick: it does not go in — ${plain(target)} wanted${fits ? ' (DIN 472)' : ''}`,
    related: [{ path: thickness.path, message: `ring ${plain(thickness.value.nominal)} thick` }],
    data: { grooveWidth: groove.value.nominal, thickness: thickness.value.nominal, wanted: target },
    fixes: [rewriteFix(analysis, groove, target, { name, result: 'the ring goes in' })],
  };
}
