import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import type { Settled } from '../../assembly/settle.ts';
import { settle } from '../../assembly/settle.ts';
import { plain } from '../../engine/base/figures.ts';
import { setValue } from '../../spec/edit.ts';
import type { Check, Draft } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
import { interference, interferenceInClass, sayInterference } from '../fit-of.ts';
import { pageHub } from '../page-hub.ts';
import { seatsOf } from '../seat-of.ts';
import { isDecided, isFitted } from './fitted.ts';

/** The outer ring has room in its seat and creeps under the load that turns round it. */
export const seatLoose: Check = {
  code: 'seat-loose',
  group: 'seat',
  severity: 'warning',
  summary: 'The outer ring is loose in its seat.',
  page: {
    why: 'In a wheel the outer ring turns against the load, so every point of it is pressed into the seat once a turn. A ring with any room creeps round, polishes the bore larger and wears its own outside; in a light alloy shell that goes fast. N7 is usual, P7 where the wall is thin or the load heavy. A seat made for a retaining compound can say compound: yes.',
    bad: pageHub(['left: { bore: 26 N7', 'left: { bore: 26 H7']),
    good: pageHub(),
    sources: [
      'ISO 286, limits of the bore',
      'ISO 492, deviation of the outside diameter',
      'makers’ fit tables for a rotating outer ring',
    ],
  },
  run: (analysis) => eachVariant(analysis, (variant) => loose(analysis, variant)),
};

/** A bore that was measured is there already, and no class makes it smaller. */
const byHand = 'hold the ring with a retaining compound and write compound: yes, or bush the seat';

function* loose(analysis: Analysis, variant: VariantAnalysis): Iterable<Draft> {
  const least = analysis.limits.value('seat-interference');
  for (const seat of seatsOf(variant)) {
    const { bore, compound } = seat.seat.values;
    const bearing = seat.contact?.bearing;
    if (!bore || !bearing?.outside || !bearing.bearing || compound?.value || !isFitted(bore.value)) continue;
    const settled = settle(bore, variant.assembly.rules);
    const fit = interference(settled, bearing.outside);
    if (
      !isDecided(settled, fit, least, Number.POSITIVE_INFINITY) ||
      least <= fit.mean ||
      Math.abs(bore.value.nominal - bearing.bearing.outside) > 0.2
    )
      continue;
    const written =
      bore.value.tolerance.kind === 'class'
        ? `${plain(bore.value.nominal)} ${bore.value.tolerance.letters}${bore.value.tolerance.grade}`
        : bore.value.written;
    yield {
      path: bore.path,
      message: `${settled.built ? `${seat.address} was measured ${plain(settled.built.nominal)} and` : written} leaves the ring of ${bearing.address} loose: ${sayInterference(fit)}, wanted interference in a wheel — ${settled.built ? byHand : `${plain(bearing.bearing.outside)} N7 is usual`}`,
      related: [
        {
          path: bearing.from,
          message: `outside ${plain(bearing.bearing.outside)} +0/−${(-bearing.outside.drawn.lower * 1000).toFixed(0)} µm`,
        },
      ],
      data: { leastUm: fit.least * 1000, meanUm: fit.mean * 1000, mostUm: fit.most * 1000 },
      fixes: bore.value.measured
        ? []
        : tighter(analysis, bore.path, bearing.bearing.outside, bearing.outside),
    };
  }
}

function tighter(
  analysis: Analysis,
  path: Draft['path'],
  size: number,
  ring: Settled,
): NonNullable<Draft['fixes']> {
  return ['N7', 'P7'].flatMap((name, index) => {
    const fit = interferenceInClass(size, name, ring);
    if (!fit) return [];
    return {
      title: `Change the bore to ${plain(size)} ${name}: ${sayInterference(fit)}`,
      changes: setValue(analysis.spec, path, `${plain(size)} ${name}`),
      preferred: index === 0,
    };
  });
}
