import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import { settle } from '../../assembly/settle.ts';
import { plain } from '../../engine/base/figures.ts';
import { usualness } from '../../engine/fits/recommended-fits.ts';
import { setValue } from '../../spec/edit.ts';
import type { Check, Draft } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
import { interference } from '../fit-of.ts';
import { pageHub } from '../page-hub.ts';
import { seatsOf } from '../seat-of.ts';

/** A class that neither creeps nor crushes, but that nobody would expect in a wheel. */
export const fitUnusual: Check = {
  code: 'fit-unusual',
  group: 'seat',
  severity: 'information',
  summary: 'The fit class of a seat is unusual for a ring that turns with the wheel.',
  page: {
    why: 'Makers agree on M7, N7 and P7 for an outer ring that turns against its load. Another class may be right for a thin wall or a light alloy, where all of them only say "tighter"; it is worth a second look and a word in the notes.',
    bad: pageHub(['left: { bore: 26 N7', 'left: { bore: 26 K6']),
    good: pageHub(),
    sources: ['four makers’ fit tables for a rotating outer ring'],
  },
  run: (analysis) => eachVariant(analysis, (variant) => unusual(analysis, variant)),
};

function* unusual(analysis: Analysis, variant: VariantAnalysis): Iterable<Draft> {
  for (const seat of seatsOf(variant)) {
    const { bore, compound } = seat.seat.values;
    const bearing = seat.contact?.bearing;
    const tolerance = bore?.value.tolerance;
    if (!bore || tolerance?.kind !== 'class' || !bearing?.outside || !bearing.bearing || compound?.value)
      continue;
    const { letters, grade } = tolerance;
    const judged = usualness(bore.value.nominal, { letters, grade, kind: 'hole' });
    if (!judged || judged.verdict === 'usual') continue;
    const fit = interference(settle(bore, variant.assembly.rules), bearing.outside);
    const most = analysis.limits.value('seat-interference-per-diameter') * bearing.bearing.outside;
    // Loose and over-tight seats have findings of their own.
    if (fit.mean < analysis.limits.value('seat-interference') || most < fit.mean) continue;
    const [first] = judged.verdict === 'looser' ? judged.usual : judged.usual.toReversed();
    yield {
      path: bore.path,
      message: `${letters}${grade} is ${judged.verdict} than the usual ${judged.usual.join(', ')} for a ring that turns with the wheel: ${judged.why}`,
      related: [{ path: bearing.from, message: `${bearing.address} stands in this seat` }],
      data: { fit: `${letters}${grade}`, usual: judged.usual, meanUm: fit.mean * 1000 },
      fixes: first
        ? [
            {
              title: `Change the bore to ${plain(bore.value.nominal)} ${first}, usual for a wheel`,
              changes: setValue(analysis.spec, bore.path, `${plain(bore.value.nominal)} ${first}`),
            },
          ]
        : [],
    };
  }
}
