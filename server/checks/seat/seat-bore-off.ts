import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import { length, plain } from '../../engine/base/figures.ts';
import { bearingsFitting } from '../../engine/bearings/identify-bearing.ts';
import { setValue } from '../../spec/edit.ts';
import type { Check, Draft } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
import { sameSize } from '../journal-of.ts';
import { pageHub } from '../page-hub.ts';
import { rewriteFix } from '../rewrite.ts';
import { seatsOf } from '../seat-of.ts';
import { isFitted, plainlyApart } from './fitted.ts';

/** A seat and the bearing in it are of two different sizes. */
export const seatBoreOff: Check = {
  code: 'seat-bore-off',
  group: 'seat',
  severity: 'error',
  summary: 'A seat and the bearing in it have different diameters.',
  page: {
    why: 'The code was misread, or the bore was. Either the bearing that arrives does not go into the shell, or it drops through it. Sizes that lie near each other, such as 15 × 26 × 7 beside 15 × 28 × 7, are the usual trap.',
    bad: pageHub(['left: { bore: 26 N7', 'left: { bore: 28 N7']),
    good: pageHub(),
    sources: ['ISO 15, boundary dimensions'],
  },
  run: (analysis) => eachVariant(analysis, (variant) => wrongSize(analysis, variant)),
};

function* wrongSize(analysis: Analysis, variant: VariantAnalysis): Iterable<Draft> {
  for (const seat of seatsOf(variant)) {
    const { bore } = seat.seat.values;
    for (const { part, bearing } of seat.bearings) {
      const decoded = bearing?.bearing;
      if (!bore || !bearing || !decoded) continue;
      const off = bore.value.nominal - decoded.outside;
      if (Math.abs(off) <= (isFitted(bore.value) ? sameSize : plainlyApart)) continue;
      const name = `bore of ${seat.address}`;
      yield {
        path: bore.path,
        message: `${name} is ${plain(bore.value.nominal)}, ${bearing.address} is ${plain(decoded.outside)} outside: ${length(Math.abs(off))} mm ${off < 0 ? 'too small' : 'too large'} — check which of the two was misread`,
        related: [
          {
            path: bearing.from,
            message: `${plain(decoded.bore)} × ${plain(decoded.outside)} × ${plain(decoded.width)}`,
          },
        ],
        data: { bore: bore.value.nominal, outside: decoded.outside, off },
        fixes: [
          ...(bore.value.measured
            ? []
            : [
                rewriteFix(analysis, bore, decoded.outside, {
                  name,
                  result: `it takes ${bearing.address}`,
                  preferred: false,
                }),
              ]),
          ...codesFor(analysis, part.values.code, decoded, bore.value.nominal, seat.address),
        ],
      };
      break;
    }
  }
}

function codesFor(
  analysis: Analysis,
  code: { readonly value: string; readonly path: readonly (string | number)[] } | undefined,
  decoded: { readonly bore: number; readonly basic: string },
  outside: number,
  seat: string,
): NonNullable<Draft['fixes']> {
  if (!code?.value.includes(decoded.basic)) return [];
  const suffix = code.value.slice(code.value.indexOf(decoded.basic) + decoded.basic.length);
  return bearingsFitting({ bore: decoded.bore, outside: Math.round(outside * 100) / 100 })
    .slice(0, 3)
    .map((other) => ({
      title: `Change the code to ${other.code}${suffix} (${plain(other.bore)} × ${plain(other.outside)} × ${plain(other.width)}), which fits ${seat}`,
      changes: setValue(analysis.spec, code.path, `${other.code}${suffix}`),
    }));
}
