import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import type { FilledHousing } from '../../assembly/housings.ts';
import { length } from '../../engine/base/figures.ts';
import type { Check, Draft } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
import { pageHub } from '../page-hub.ts';
import { rewriteFix } from '../rewrite.ts';

/** Length, depths and shoulders of a housing do not add up. */
export const housingLengthOff: Check = {
  code: 'housing-length-off',
  group: 'seat',
  severity: 'error',
  summary: 'The length of a housing is not the sum of its depths and the distance between its shoulders.',
  page: {
    why: 'A housing that is dimensioned end to end as well as seat by seat says the same length twice. When the two disagree, one of the dimensions is wrong, and the turner will follow whichever comes first.',
    bad: pageHub(['between-shoulders: 62.05 ±0.01', 'between-shoulders: 62.05 ±0.01\n  length: 73.25']),
    good: pageHub(['between-shoulders: 62.05 ±0.01', 'between-shoulders: 62.05 ±0.01\n  length: 72.25']),
    sources: ['ISO 129-1, one dimension for one feature'],
  },
  run: (analysis) => eachVariant(analysis, (variant) => lengthsOff(analysis, variant)),
};

/** Nominals are compared, so anything above a rounding is a contradiction, mm. */
const rounding = 0.005;

function* lengthsOff(analysis: Analysis, variant: VariantAnalysis): Iterable<Draft> {
  const { shell, freehub } = variant.assembly;
  for (const filled of [shell, freehub]) {
    if (filled) yield* ofHousing(analysis, filled);
  }
}

function* ofHousing(analysis: Analysis, { housing, seats }: FilledHousing): Iterable<Draft> {
  const { length: total, 'between-shoulders': between } = housing.values;
  const left = seats.find((seat) => seat.from === 'left');
  const right = seats.find((seat) => seat.from === 'right');
  const [a, b] = [left?.seat.values.depth, right?.seat.values.depth];
  if (!total || !between || !left || !right || seats.length !== 2 || !a || !b) return;
  const sum = a.value.nominal + between.value.nominal + b.value.nominal;
  const off = total.value.nominal - sum;
  if (Math.abs(off) <= rounding) return;
  const name = `length of the ${housing.name}`;
  const inside = total.value.nominal - a.value.nominal - b.value.nominal;
  yield {
    path: total.path,
    message: `${name} is ${length(total.value.nominal)}, depths and shoulders come to ${length(a.value.nominal)} + ${length(between.value.nominal)} + ${length(b.value.nominal)} = ${length(sum)}: ${length(Math.abs(off))} mm ${off < 0 ? 'short' : 'over'} — correct whichever was not measured`,
    related: [
      { path: a.path, message: `+ ${length(a.value.nominal)} depth of ${left.address}` },
      { path: between.path, message: `+ ${length(between.value.nominal)} between the shoulders` },
      { path: b.path, message: `+ ${length(b.value.nominal)} depth of ${right.address}` },
    ],
    data: { length: total.value.nominal, sum, off },
    fixes: [
      rewriteFix(analysis, total, Number(sum.toFixed(4)), {
        name,
        result: 'the sum of depths and shoulders',
        preferred: false,
      }),
      ...(0 < inside
        ? [
            rewriteFix(analysis, between, Number(inside.toFixed(4)), {
              name: 'between-shoulders',
              result: 'what the length leaves between the depths',
              preferred: false,
            }),
          ]
        : []),
    ].filter((fix) => fix.changes.length > 0),
  };
}
