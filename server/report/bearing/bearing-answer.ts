import { plain } from '../../engine/base/figures.ts';
import {
  bearingFromSize,
  type DecodedBearing,
  decodeBearing,
  type NotDecoded,
} from '../../engine/bearings/decode-bearing.ts';
import { identifyBearing } from '../../engine/bearings/identify-bearing.ts';
import { readSize } from '../../spec/small-values.ts';
import type { Workshop } from '../../spec/workshop-model.ts';

/** A code looked up, with the house code that stood for it. */
export type BearingAnswer =
  | { readonly bearing: DecodedBearing; readonly houseCode: string | null }
  | { readonly failure: NotDecoded };

/** A bearing for what may be written in place of a code: a size, `17x26x5`, is one where the code does not matter. */
export function bearingOrSize(written: string, workshop: Workshop | null): BearingAnswer {
  const size = readSize(written);
  if (!('value' in size)) return bearingAnswer(written, workshop);
  const { bore, outside, width } = size.value;
  return { bearing: bearingFromSize(bore, outside, width), houseCode: null };
}

/** A size in place of a code, with the codes of that size. */
function sizeGiven(written: string): NotDecoded | null {
  const size = readSize(written);
  if (!('value' in size)) return null;
  const exact = { bore: 0.001, outside: 0.001, width: 0.001 };
  const didYouMean = identifyBearing(size.value, exact).candidates.map(({ code, bore, outside, width }) => ({
    code,
    size: `${plain(bore)} × ${plain(outside)} × ${plain(width)}`,
  }));
  const error = `a size, not a code; hubwright identify ${written.replaceAll(/\s/g, '')} names the bearings that come near it`;
  return { code: written, error, didYouMean, at: [0, written.length] };
}

/** Decodes a bearing code; a code of the house stands for the code or the size the workshop file gives it. */
export function bearingAnswer(code: string, workshop: Workshop | null): BearingAnswer {
  const house = workshop?.bearings[code]?.value;
  if (house?.code != null) {
    const decoded = decodeBearing(house.code);
    return 'bearing' in decoded ? { bearing: decoded.bearing, houseCode: code } : decoded;
  }
  if (house?.size) {
    const { bore, outside, width } = house.size;
    return { bearing: bearingFromSize(bore, outside, width), houseCode: code };
  }
  const size = sizeGiven(code);
  if (size) return { failure: size };
  const decoded = decodeBearing(code);
  return 'bearing' in decoded ? { bearing: decoded.bearing, houseCode: null } : decoded;
}
