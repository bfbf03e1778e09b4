import { knownBearings } from './known-bearings.ts';

/** A bearing that looks like another and is not. mm */
export interface NearSize {
  readonly code: string;
  readonly bore: number;
  readonly outside: number;
  readonly width: number;
  /** The one dimension that differs, and by how much: positive where the near one is larger. */
  readonly differs: 'bore' | 'outside' | 'width';
  readonly by: number;
}

/** Further apart than this nobody mistakes one for the other, mm. */
const close = { bore: 2.1, outside: 2.1, width: 2.1 } as const;
const most = 6;

/** Bearings of which two dimensions are the same and the third is close, nearest first, those common in hubs before others. */
export function nearSizes(size: {
  readonly bore: number;
  readonly outside: number;
  readonly width: number;
}): readonly NearSize[] {
  const seen = new Set<string>();
  const found: NearSize[] = [];
  for (const { code, bore, outside, width } of knownBearings()) {
    const off = { bore: bore - size.bore, outside: outside - size.outside, width: width - size.width };
    const keys = (Object.keys(off) as (keyof typeof off)[]).filter((key) => Math.abs(off[key]) > 1e-9);
    const [key] = keys;
    if (keys.length !== 1 || !key || close[key] < Math.abs(off[key])) continue;
    const name = `${bore}|${outside}|${width}`;
    if (seen.has(name)) continue;
    seen.add(name);
    found.push({ code, bore, outside, width, differs: key, by: off[key] });
  }
  return found.sort((a, b) => Math.abs(a.by) - Math.abs(b.by)).slice(0, most);
}
