import { bearingsOfSize } from './known-bearings.ts';

/**
 * The code that matches a size (mm), in the spelling stamped most often, or null when no bearing has exactly this
 * size. `closed` asks for the width of the closed or of the open version; without it either will do.
 */
export function encodeBearing(
  size: { readonly bore: number; readonly outside: number; readonly width: number },
  closed?: boolean,
): string | null {
  const same = bearingsOfSize(size.bore, size.outside, size.width);
  const fits = closed === undefined ? same : same.filter((b) => b.closed === null || b.closed === closed);
  return (fits.find(({ basic }) => basic.kind === 'deep-groove') ?? fits[0])?.code ?? null;
}
