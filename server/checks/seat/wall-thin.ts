import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import type { FilledHousing } from '../../assembly/housings.ts';
import { length, plain } from '../../engine/base/figures.ts';
import type { Check, Draft } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
import { pageHub } from '../page-hub.ts';
import { rewriteFix } from '../rewrite.ts';

/** The wall around a seat is thin, or there is none. */
export const wallThin: Check = {
  code: 'wall-thin',
  group: 'seat',
  severity: 'information',
  summary: 'The wall around a seat is thin, or there is none.',
  page: {
    why: 'The wall around a seat is what holds the ring: a press fit stretches it, and a thin one gives way instead of gripping. With the outside below the bore there is no wall at all, and one of the two was misread. For a freehub the outside is the root of its splines.',
    bad: pageHub(['  between-shoulders', '  outside: 29\n  between-shoulders']),
    good: pageHub(['  between-shoulders', '  outside: 34\n  between-shoulders']),
    sources: ['common practice'],
  },
  run: (analysis) => eachVariant(analysis, (variant) => thin(analysis, variant)),
};

/** Wall that a fix leaves where no least wall is asked for, mm. */
const leastFix = 1;

function* thin(analysis: Analysis, variant: VariantAnalysis): Iterable<Draft> {
  const { shell, freehub } = variant.assembly;
  for (const filled of [shell, freehub]) {
    const draft = filled && ofHousing(analysis, filled);
    if (draft) yield draft;
  }
}

function ofHousing(analysis: Analysis, { housing, seats }: FilledHousing): Draft | null {
  const { outside } = housing.values;
  const bored = seats.flatMap(({ address, seat }) => {
    const { bore } = seat.values;
    return bore ? [{ address, bore }] : [];
  });
  const [widest] = bored.toSorted((a, b) => b.bore.value.nominal - a.bore.value.nominal);
  if (!outside || !widest) return null;
  // The root of a freehub's splines lies close to its seats by design: there only a wall that is missing is a fault.
  const least = housing.name === 'shell' ? analysis.limits.value('shell-wall') : 0;
  const bore = widest.bore.value.nominal;
  const wall = (outside.value.nominal - bore) / 2;
  if (0 < wall && least <= wall) return null;
  const target = bore + 2 * Math.max(least, leastFix);
  const name = `outside of the ${housing.name}`;
  const left = wall <= 0 ? 'no wall is left' : `${length(wall)} mm of wall`;
  return {
    path: outside.path,
    severity: wall <= 0 ? 'error' : 'information',
    message: `${name} is ${plain(outside.value.nominal)}, ${widest.address} is bored ${plain(bore)}: ${left}, ${plain((target - bore) / 2)} mm wanted — ${plain(target)} or more outside`,
    related: [{ path: widest.bore.path, message: `bored ${plain(bore)} here` }],
    data: { outside: outside.value.nominal, bore, wall, least },
    fixes: outside.value.measured
      ? []
      : [
          rewriteFix(analysis, outside, target, {
            name,
            result: `${plain((target - bore) / 2)} mm of wall around the seat`,
          }),
        ],
  };
}
