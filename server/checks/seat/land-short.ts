import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import { length, plain } from '../../engine/base/figures.ts';
import type { Check, Draft } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
import { pageHub } from '../page-hub.ts';
import { rewriteFix } from '../rewrite.ts';
import { seatsOf } from '../seat-of.ts';

/** The full-fit length of a seat is shorter than the cylinder of the rings in it. */
export const landShort: Check = {
  code: 'land-short',
  group: 'seat',
  severity: 'warning',
  summary: 'The full-fit length of a seat is shorter than the ring.',
  page: {
    why: 'Only the land grips. A ring that stands on a short land is gripped at one edge, rocks in use and fretting starts there. The cylinder of a ring is its width less a chamfer at each end; the land should carry all of it.',
    bad: pageHub(['left: { bore: 26 N7, depth: 5.1 ±0.02', 'left: { bore: 26 N7, land: 3, depth: 5.1 ±0.02']),
    good: pageHub([
      'left: { bore: 26 N7, depth: 5.1 ±0.02',
      'left: { bore: 26 N7, land: 5, depth: 5.1 ±0.02',
    ]),
    sources: ['ISO 15, smallest chamfer', 'common practice'],
  },
  run: (analysis) => eachVariant(analysis, (variant) => short(analysis, variant)),
};

function* short(analysis: Analysis, variant: VariantAnalysis): Iterable<Draft> {
  for (const seat of seatsOf(variant)) {
    const { land } = seat.seat.values;
    const bearings = seat.bearings.flatMap(({ bearing }) => bearing?.bearing ?? []);
    if (!land || bearings.length === 0 || bearings.length !== seat.bearings.length) continue;
    const width = bearings.reduce((sum, bearing) => sum + bearing.width, 0);
    const chamfer = bearings[0]?.chamferMin ?? 0;
    const needed = width - 2 * chamfer;
    if (needed <= land.value.nominal) continue;
    const name = `land of ${seat.address}`;
    yield {
      path: land.path,
      message: `${name} is ${length(land.value.nominal)}, the ring carries on ${length(needed)} (${plain(width)} less two chamfers of ${plain(chamfer)}): ${length(needed - land.value.nominal)} mm short — lengthen it to ${plain(width)}`,
      related: seat.bearings.map(({ part, address }) => ({
        path: part.values.code?.path ?? part.path,
        message: `${address} is ${plain(width)} wide`,
      })),
      data: { land: land.value.nominal, width, chamfer, needed },
      fixes: [rewriteFix(analysis, land, width, { name, result: 'it then carries the whole ring' })],
    };
  }
}
