import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import type { StackBearing } from '../../assembly/bearings.ts';
import { length } from '../../engine/base/figures.ts';
import { type DecodedBearing, decodeBearing } from '../../engine/bearings/decode-bearing.ts';
import { encodeBearing } from '../../engine/bearings/encode-bearing.ts';
import { setValue } from '../../spec/edit.ts';
import type { BearingSize } from '../../spec/model.ts';
import type { Fix } from '../../spec/problem.ts';
import type { Check, Draft } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
import { pageHub } from '../page-hub.ts';
import { fits, ownCode, relatedSurroundings, sayFits, saySize, surroundingsOf } from './fitting.ts';
import { withBasic } from './with-basic.ts';

/** The code of a bearing and the size written beside it are of two bearings. */
export const codeAndSizeDisagree: Check = {
  code: 'code-and-size-disagree',
  group: 'bearing',
  severity: 'error',
  summary: 'The code of a bearing and the size written beside it differ.',
  page: {
    why: 'One of the two was misread, and whoever orders by the other gets a bearing that does not fit. The seat and the axle tell which is right; measure the old bearing when they do not. Until then the size is taken.',
    bad: pageHub(['code: 6803-2RS', 'code: 6803-2RS\n    size: 17x30x7']),
    good: pageHub(['code: 6803-2RS', 'code: 6803-2RS\n    size: 17x26x5']),
    sources: ['ISO 15, boundary dimensions'],
  },
  run: (analysis) => eachVariant(analysis, (variant) => disagreeing(analysis, variant)),
};

function* disagreeing(analysis: Analysis, variant: VariantAnalysis): Iterable<Draft> {
  for (const bearing of variant.assembly.bearings) {
    const { size } = bearing.part.values;
    const code = ownCode(bearing);
    const decoded = code ? decoding(code.value) : null;
    if (!size || !code || !decoded) continue;
    const apart = differences(decoded, size.value);
    if (apart.length === 0) continue;
    const around = surroundingsOf(variant, bearing.part);
    yield {
      path: size.path,
      message: `size is ${size.value.written}, ${code.value} is ${saySize(decoded)}: ${apart.join(', ')} apart — change the one that was misread`,
      related: [
        { path: code.path, message: `${code.value} is ${saySize(decoded)}` },
        ...relatedSurroundings(around),
      ],
      data: { code: code.value, size: written(size.value), codeSize: written(decoded) },
      doubts: [size.path],
      fixes: fixesFor(analysis, variant, bearing, decoded, size.value),
    };
  }
}

function decoding(code: string): DecodedBearing | null {
  const found = decodeBearing(code);
  return 'bearing' in found ? found.bearing : null;
}

/** `outside 4.00 mm`; a width that some makers give the code is none. */
function differences(decoded: DecodedBearing, size: BearingSize): readonly string[] {
  const widths = [decoded.width, ...decoded.disputedWidths];
  const width = widths.includes(size.width) ? 0 : size.width - decoded.width;
  const apart = { bore: size.bore - decoded.bore, outside: size.outside - decoded.outside, width };
  return Object.entries(apart).flatMap(([name, by]) =>
    by === 0 ? [] : [`${name} ${length(Math.abs(by))} mm`],
  );
}

/** Both ways out; the one that fits the seat and the axle first, and to be taken when the other does not. */
function fixesFor(
  analysis: Analysis,
  variant: VariantAnalysis,
  { part }: StackBearing,
  decoded: DecodedBearing,
  size: BearingSize,
): readonly Fix[] {
  const around = surroundingsOf(variant, part);
  const { code, size: placed } = part.values;
  if (!code || !placed) return [];
  const sign = /\d\s*[x×*]\s*\d/.exec(size.written)?.[0].replace(/\d/g, '') ?? 'x';
  const resized = [decoded.bore, decoded.outside, decoded.width].join(sign);
  const toSize = {
    title: `Change size to ${resized}, the size of ${code.value}${sayFits(around, decoded)}`,
    changes: setValue(analysis.spec, placed.path, resized),
    fits: fits(around, decoded),
  };
  const other = codeOf(code.value, decoded, size);
  const toCode = other && {
    title: `Change code to ${other}, which is ${saySize(size)}${sayFits(around, size)}`,
    changes: setValue(analysis.spec, code.path, other),
    fits: fits(around, size),
  };
  const ways = toCode
    ? [toSize, toCode].sort((a, b) => Number(b.fits === true) - Number(a.fits === true))
    : [toSize];
  const clear = ways.filter((way) => way.fits === true).length === 1;
  return ways.map(({ title, changes, fits: fitting }) => ({
    title,
    changes,
    preferred: clear && fitting === true,
  }));
}

/** The code of a size with the suffixes of the code written; null where there is none that decodes to the size. */
function codeOf(code: string, decoded: DecodedBearing, size: BearingSize): string | null {
  const basic = encodeBearing(size, decoded.closure !== 'open') ?? encodeBearing(size);
  if (basic === null) return null;
  const made = withBasic(code, decoded, basic);
  const again = decoding(made);
  return again && differences(again, size).length === 0 ? made : null;
}

const written = ({ bore, outside, width }: Omit<BearingSize, 'written'>): readonly number[] => [
  bore,
  outside,
  width,
];
