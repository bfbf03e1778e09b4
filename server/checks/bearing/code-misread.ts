import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import { length, plain } from '../../engine/base/figures.ts';
import { type DecodedBearing, decodeBearing } from '../../engine/bearings/decode-bearing.ts';
import { setValue } from '../../spec/edit.ts';
import { nearestOf } from '../../spec/nearest.ts';
import type { Check, Draft } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
import { sameSize } from '../journal-of.ts';
import { pageHub } from '../page-hub.ts';
import {
  codesThatFit,
  ownCode,
  relatedSurroundings,
  type Surroundings,
  sayFits,
  saySize,
  surroundingsOf,
} from './fitting.ts';
import { withBasic } from './with-basic.ts';

/** A code fits neither seat nor axle as it is, and one that is a single slip away fits both. */
export const codeMisread: Check = {
  code: 'code-misread',
  group: 'bearing',
  severity: 'error',
  summary: 'A code does not fit its seat or its axle, and one a single slip away fits both.',
  page: {
    why: 'One digit of a bearing code changes its series, and with it the outside and the width. When seat and axle agree on a bearing whose code differs in one sign, the code was misread or mistyped. The wrong one would be ordered, and does not go in. What else rests on its size waits until this is settled.',
    bad: pageHub(['code: 6803-2RS', 'code: 6903-2RS']),
    good: pageHub(),
    sources: ['ISO 15, boundary dimensions', 'common practice'],
  },
  run: (analysis) => eachVariant(analysis, (variant) => misread(analysis, variant)),
};

function* misread(analysis: Analysis, variant: VariantAnalysis): Iterable<Draft> {
  for (const stacked of variant.assembly.bearings) {
    const { bearing, part } = stacked;
    const code = ownCode(stacked);
    if (!code || !bearing || part.values.size) continue;
    const around = surroundingsOf(variant, part);
    const apart = misfits(around, bearing);
    const other = apart.length === 0 ? null : oneSlipAway(around, code.value, bearing);
    if (!other) continue;
    const result = `${other.code} (${saySize(other.bearing)})${sayFits(around, other.bearing)}`;
    yield {
      path: code.path,
      message: `${code.value} is ${saySize(bearing)}: ${apart.join(', ')} — write ${result}`,
      related: relatedSurroundings(around),
      doubts: [code.path],
      data: { code: code.value, size: saySize(bearing), suggestion: other.code },
      fixes: [
        {
          title: `Change to ${result}`,
          changes: setValue(analysis.spec, code.path, other.code),
          preferred: true,
        },
      ],
    };
  }
}

/** `4.00 mm too large for its seat, bored 26` */
function misfits({ seat, axle }: Surroundings, { bore, outside }: DecodedBearing): readonly string[] {
  if (!seat || !axle) return [];
  const room = seat.bore - outside;
  const play = bore - axle.diameter;
  return [
    ...(sameSize < Math.abs(room)
      ? [
          `${length(Math.abs(room))} mm too ${room < 0 ? 'large' : 'small'} for its seat, bored ${plain(seat.bore)}`,
        ]
      : []),
    ...(sameSize < Math.abs(play)
      ? [
          `bore ${length(Math.abs(play))} mm too ${play < 0 ? 'small' : 'large'} for the axle of ${plain(axle.diameter)}`,
        ]
      : []),
  ];
}

/** The bearing that fits and whose basic number differs by one sign, or by two that changed places. */
function oneSlipAway(
  around: Surroundings,
  code: string,
  bearing: DecodedBearing,
): { readonly code: string; readonly bearing: DecodedBearing } | null {
  // 61903 is the long spelling of 6903: the slip is looked for in the short one and written in the long one.
  const isLong = /^61[789]\d\d$/.test(bearing.basic);
  const short = isLong ? bearing.basic.replace('61', '6') : bearing.basic;
  const near = nearestOf(
    short,
    codesThatFit(around).map((fitting) => fitting.code.replace(/-2RS$/, '')),
    1,
  );
  if (near === null) return null;
  const other = withBasic(code, bearing, isLong ? near.replace('6', '61') : near);
  const found = decodeBearing(other);
  return 'bearing' in found && misfits(around, found.bearing).length === 0
    ? { code: other, bearing: found.bearing }
    : null;
}
