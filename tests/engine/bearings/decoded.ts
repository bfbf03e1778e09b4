import { type DecodedBearing, decodeBearing } from '../../../server/engine/bearings/decode-bearing.ts';

/** The decoded bearing of a code that a table prints; a failure to decode fails the test with the code's name. */
export function decoded(code: string): DecodedBearing {
  const result = decodeBearing(code);
  if ('failure' in result) throw new Error(`${code}: ${result.failure.error}`);
  return result.bearing;
}

/** 'bore x outside x width' of a code, or why it was not decoded. */
export function sizeOf(code: string): string {
  const result = decodeBearing(code);
  if ('failure' in result) return result.failure.error;
  const { bore, outside, width } = result.bearing;
  return `${bore}x${outside}x${width}`;
}
