import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import type { FilledSeat } from '../../assembly/housings.ts';
import { plain } from '../../engine/base/figures.ts';
import { boreRing } from '../../engine/tables/retaining-rings.ts';
import { insertKey } from '../../spec/edit.ts';
import type { Check, Draft } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
import { pageHub } from '../page-hub.ts';
import { seatsOf } from '../seat-of.ts';

/** A seat is stopped by a retaining ring that is not written. */
export const retainingRingForgotten: Check = {
  code: 'retaining-ring-forgotten',
  group: 'freehub',
  severity: 'warning',
  summary: 'A seat is stopped by a retaining ring that is not written.',
  page: {
    why: 'The ring that stops a bearing has to be ordered, fitted, and taken out first at the next service. A bearing driven against a ring that nobody mentioned is torn apart, and its groove with it.',
    bad: pageHub([
      'left: { bore: 26 N7, depth: 5.1 ±0.02',
      'left: { bore: 26 N7, stop: ring, depth: 6.7 ±0.02',
    ]),
    good: pageHub([
      'left: { bore: 26 N7, depth: 5.1 ±0.02',
      'left: { bore: 26 N7, stop: ring, retaining-ring: { side: blind, thickness: 1.2, groove-width: 1.3 }, depth: 5.1 ±0.02',
    ]),
    sources: ['DIN 472, retaining rings for bores', 'common practice'],
  },
  run: (analysis) => eachVariant(analysis, (variant) => forgotten(analysis, variant)),
};

function* forgotten(analysis: Analysis, variant: VariantAnalysis): Iterable<Draft> {
  for (const seat of seatsOf(variant)) {
    if (seat.stop !== 'ring' || seat.seat.ring) continue;
    const stop = seat.seat.values.stop;
    yield {
      path: stop?.path ?? seat.seat.path,
      message: `${seat.address} is stopped by a ring, but no retaining-ring is written: it is ordered, and taken out first, only if it stands here — add retaining-ring`,
      related: seat.bearings.map(({ address, part }) => ({
        path: [...part.path, part.kind],
        message: `${address} stands against it`,
      })),
      data: { seat: seat.address },
      fixes: addRing(analysis, seat),
    };
  }
}

/** The ring of DIN 472 for the bore; where its groove lies follows from depth and ring width. */
function addRing(analysis: Analysis, seat: FilledSeat): NonNullable<Draft['fixes']> {
  const { bore } = seat.seat.values;
  const ring = bore ? boreRing(Math.round(bore.value.nominal)) : null;
  if (!ring) return [];
  const text = `{ side: blind, thickness: ${plain(ring.thickness)}, groove-width: ${plain(ring.grooveWidth)}, size: ${plain(ring.size)} }`;
  return [
    {
      title: `Add the ring of DIN 472 for a bore of ${plain(ring.size)}: ${plain(ring.thickness)} thick, groove ${plain(ring.grooveWidth)} wide`,
      changes: insertKey(analysis.spec, seat.seat.path, 'retaining-ring', text),
      preferred: true,
    },
  ];
}
