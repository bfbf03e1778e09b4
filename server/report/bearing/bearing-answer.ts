import {
  bearingFromSize,
  type DecodedBearing,
  decodeBearing,
  type NotDecoded,
} from '../../engine/bearings/decode-bearing.ts';
import type { Workshop } from '../../spec/workshop-model.ts';

/** A code looked up, with the house code that stood for it. */
export type BearingAnswer =
  | { readonly bearing: DecodedBearing; readonly houseCode: string | null }
  | { readonly failure: NotDecoded };

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
  const decoded = decodeBearing(code);
  return 'bearing' in decoded ? { bearing: decoded.bearing, houseCode: null } : decoded;
}
