import type { VariantAnalysis } from '../../analysis/analyze.ts';
import { settle } from '../../assembly/settle.ts';
import { micrometres, plain } from '../../engine/base/figures.ts';
import type { Dimension } from '../../spec/model.ts';
import type { Placed } from '../../spec/place.ts';
import type { Check, Draft } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
import { pageHub } from '../page-hub.ts';
import { seatsOf } from '../seat-of.ts';
import { canJudge } from './fitted.ts';

/** A measured diameter is too uncertain to say whether a ring fits. */
export const readingTooCoarse: Check = {
  code: 'reading-too-coarse',
  group: 'seat',
  severity: 'information',
  summary: 'A reading is too coarse to judge a fit.',
  page: {
    why: 'The difference between a ring that creeps and one that has lost its clearance is about 0.02 mm, which is what a calliper can be off by. A bore wants a bore gauge or a three-point micrometer, a journal a micrometer. Until then the fit is unchecked, not sound.',
    bad: pageHub(['left: { bore: 26 N7', 'left: { bore: measured 25.98']),
    good: pageHub(['left: { bore: 26 N7', 'left: { bore: measured 25.985 ±0.003']),
    sources: ['common practice'],
  },
  run: (analysis) => eachVariant(analysis, tooCoarse),
};

function* tooCoarse(variant: VariantAnalysis): Iterable<Draft> {
  const { hub, bearings, rules } = variant.assembly;
  const seats = seatsOf(variant).filter((seat) => seat.bearings.length > 0);
  const diameters: readonly (readonly [string, Placed<Dimension> | undefined])[] = [
    ...seats.map((seat) => [`bore of ${seat.address}`, seat.seat.values.bore] as const),
    ...bearings.map(({ part, address }) => [`journal of ${address}`, part.values.journal] as const),
    ['diameter of the axle', bearings.length > 0 ? hub.axle?.values.diameter : undefined],
  ];
  for (const [name, placed] of diameters) {
    if (!placed) continue;
    const settled = settle(placed, rules);
    if (canJudge(settled) || !settled.built) continue;
    yield {
      path: placed.path,
      message: `${name} was read as ${plain(settled.built.nominal)} ±${micrometres(settled.built.upper)}: a fit is decided by a few micrometres, so it stays unchecked — measure it to ±5 µm and write the uncertainty`,
      data: { reading: settled.built.nominal, uncertaintyUm: settled.built.upper * 1000 },
    };
  }
}
