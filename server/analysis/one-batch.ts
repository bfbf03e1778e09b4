import type { Loop } from '../assembly/loop.ts';
import { asBuilt, meanOf } from '../assembly/settle.ts';
import { spreadOf } from '../engine/seats/interference-spread.ts';
import { normalOutside } from '../engine/stack/normal.ts';

/**
 * Share of builds outside the limits wanted where bearings of one kind are alike in every hub, as those of one batch
 * may be: their widths then add up instead of evening out. 0 to 1; null where nothing is wanted, a term is missing or
 * no two rings are of one kind. A sum of normal lengths is normal, so no hub is built for it.
 */
export function shareOutsideOneBatch(loop: Loop, how: 'drawn' | 'built'): number | null {
  if (!loop.wanted || loop.missing.length > 0) return null;
  const batches = new Map<string, number[]>();
  let mean = 0;
  let variance = 0;
  for (const { address, sign, count, settled } of loop.terms) {
    const limits = how === 'built' ? asBuilt(settled) : settled.drawn;
    const { sigma } = spreadOf(limits.lower, limits.upper);
    mean += sign * count * meanOf(limits);
    if (!address.startsWith('bearing.')) {
      variance += count * sigma ** 2;
      continue;
    }
    const kind = [limits.nominal, limits.lower, limits.upper].join();
    batches.set(kind, [...(batches.get(kind) ?? []), ...new Array<number>(count).fill(sign * sigma)]);
  }
  const alike = [...batches.values()];
  if (alike.every((rings) => rings.length < 2)) return null;
  for (const rings of alike) variance += rings.reduce((sum, sigma) => sum + sigma, 0) ** 2;
  return normalOutside(mean, Math.sqrt(variance), [loop.wanted.lo, loop.wanted.hi]);
}
