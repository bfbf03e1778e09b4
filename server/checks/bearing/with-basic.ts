import type { DecodedBearing } from '../../engine/bearings/decode-bearing.ts';

/** A code with another basic number and its own suffixes: `6803-2RS C3` with `6903` is `6903-2RS C3`. */
export function withBasic(code: string, decoded: DecodedBearing, basic: string): string {
  const at = code.indexOf(decoded.basic);
  const suffixes = at === -1 ? '' : code.slice(at + decoded.basic.length);
  // A basic number that only exists closed comes with its seals, which the suffixes name already.
  const bare = decoded.closure === 'open' ? basic : basic.replace(/-2RS$/, '');
  return `${at === -1 ? '' : code.slice(0, at)}${bare}${suffixes}`;
}

/** What stands after the basic number of a code. */
export function suffixesOf(
  code: string,
  decoded: DecodedBearing,
): { readonly text: string; readonly start: number } {
  const at = code.indexOf(decoded.basic);
  const start = at === -1 ? 0 : at + decoded.basic.length;
  return { text: code.slice(start), start };
}
