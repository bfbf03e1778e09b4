import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import { settle } from '../../assembly/settle.ts';
import { micrometres, plain } from '../../engine/base/figures.ts';
import { setValue } from '../../spec/edit.ts';
import type { Check, Draft } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
import { interference, sayInterference } from '../fit-of.ts';
import { pageHub } from '../page-hub.ts';
import { seatsOf } from '../seat-of.ts';
import { isDecided, isFitted } from './fitted.ts';

/** More interference than a thin ring should be given. */
export const seatOverTight: Check = {
  code: 'seat-over-tight',
  group: 'seat',
  severity: 'warning',
  summary: 'The outer ring is pressed in with too much interference.',
  page: {
    why: 'Interference squeezes the outer ring onto the balls. A ring of a bicycle bearing is thin and takes most of it: the internal clearance goes, the bearing runs warm and notched, and a cold morning adds to it. A thousandth of the diameter is the usual upper bound.',
    bad: pageHub(['left: { bore: 26 N7', 'left: { bore: 26 S7']),
    good: pageHub(),
    sources: [
      'ISO 286, limits of the bore',
      'ISO 492, deviation of the outside diameter',
      'makers’ rule: at most a thousandth of the diameter',
    ],
  },
  run: (analysis) => eachVariant(analysis, (variant) => overTight(analysis, variant)),
};

function* overTight(analysis: Analysis, variant: VariantAnalysis): Iterable<Draft> {
  for (const seat of seatsOf(variant)) {
    const { bore } = seat.seat.values;
    const bearing = seat.contact?.bearing;
    if (!bore || !bearing?.outside || !bearing.bearing || !isFitted(bore.value)) continue;
    const { outside } = bearing.bearing;
    const settled = settle(bore, variant.assembly.rules);
    const fit = interference(settled, bearing.outside);
    const most = analysis.limits.value('seat-interference-per-diameter') * outside;
    if (
      !isDecided(settled, fit, Number.NEGATIVE_INFINITY, most) ||
      fit.mean <= most ||
      Math.abs(bore.value.nominal - outside) > 0.2
    )
      continue;
    yield {
      path: bore.path,
      message: `${bore.value.written} presses the ring of ${bearing.address} with ${sayInterference(fit)}, wanted ${micrometres(most)} at most: ${micrometres(fit.mean - most)} too much — ${plain(outside)} N7 is usual`,
      related: [
        {
          path: bearing.from,
          message: `outside ${plain(outside)} +0/−${(-bearing.outside.drawn.lower * 1000).toFixed(0)} µm`,
        },
      ],
      data: {
        leastUm: fit.least * 1000,
        meanUm: fit.mean * 1000,
        mostUm: fit.most * 1000,
        limitUm: most * 1000,
      },
      fixes: bore.value.measured
        ? []
        : [
            {
              title: `Change the bore to ${plain(outside)} N7, usual for a wheel`,
              changes: setValue(analysis.spec, bore.path, `${plain(outside)} N7`),
              preferred: true,
            },
          ],
    };
  }
}
