import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import { settle } from '../../assembly/settle.ts';
import { millimetres, plain } from '../../engine/base/figures.ts';
import { setValue } from '../../spec/edit.ts';
import type { Check, Draft } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
import { interference, interferenceInClass } from '../fit-of.ts';
import { pageHub } from '../page-hub.ts';
import { seatsOf } from '../seat-of.ts';
import { isDecided, isFitted } from './fitted.ts';

/** More room round a ring than a retaining compound fills. */
export const compoundGap: Check = {
  code: 'compound-gap',
  group: 'seat',
  severity: 'warning',
  summary: 'A retaining compound has more room to fill than it can.',
  page: {
    why: 'A retaining compound holds best in a thin film. In a wide gap it cures slowly or not at all, it is weaker, and nothing centres the ring while it sets: the wheel runs out of true. A worn seat is bushed, or turned to the next size; the compound then holds a slide fit.',
    bad: pageHub(['left: { bore: 26 N7, ', 'left: { bore: 26.2 ±0.01, compound: yes, ']),
    good: pageHub(['left: { bore: 26 N7, ', 'left: { bore: 26 H7, compound: yes, ']),
    sources: [
      'makers of retaining compounds: a gap of up to 0.1 to 0.25 mm on the diameter (from memory)',
      'ISO 492, deviation of the outside diameter',
    ],
  },
  run: (analysis) => eachVariant(analysis, (variant) => wide(analysis, variant)),
};

function* wide(analysis: Analysis, variant: VariantAnalysis): Iterable<Draft> {
  const most = analysis.limits.value('compound-gap');
  for (const { seat, address, contact } of seatsOf(variant)) {
    const { bore, compound } = seat.values;
    const bearing = contact?.bearing;
    if (!compound?.value || !bore || !bearing?.outside || !bearing.bearing || !isFitted(bore.value)) continue;
    const { outside } = bearing.bearing;
    const settled = settle(bore, variant.assembly.rules);
    const fit = interference(settled, bearing.outside);
    // A bore of another size is a finding of its own.
    if (
      !isDecided(settled, fit, -most, Number.POSITIVE_INFINITY) ||
      -most <= fit.mean ||
      Math.abs(bore.value.nominal - outside) > sameSize
    )
      continue;
    const slide = interferenceInClass(outside, 'H7', bearing.outside);
    yield {
      path: bore.path,
      message: `${address} leaves ${millimetres(-fit.mean)} of room round the ring of ${bearing.address}, wanted ${millimetres(most)} at most for a retaining compound: ${millimetres(-fit.mean - most)} too much — bush the seat, or turn it for the next size`,
      related: [{ path: compound.path, message: 'the compound that fills it' }],
      data: { roomUm: -fit.mean * 1000, limitUm: most * 1000 },
      fixes:
        bore.value.measured || !slide
          ? []
          : [
              {
                title: `Change the bore to ${plain(outside)} H7: ${millimetres(-slide.mean)} for the compound to fill`,
                changes: setValue(analysis.spec, bore.path, `${plain(outside)} H7`),
                preferred: true,
              },
            ],
    };
  }
}

/** A bore that differs by more than this, mm, is made for another bearing. */
const sameSize = 0.2;
