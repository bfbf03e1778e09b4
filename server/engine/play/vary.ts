import type { VaryingFit, VaryingPart, VaryingSide } from './build-clearance.ts';
import type { VaryingPair } from './play-statistics.ts';

/** The pair with another δ, mm: what a longer spacer does. */
export function movedBy(pair: VaryingPair, change: number): VaryingPair {
  return { ...pair, mismatch: pair.mismatch + change };
}

/** The pair with other standard deviations of its lengths and fits, mm; the clearances of the bearings stay. */
export function straying(pair: VaryingPair, sigmaOf: (part: VaryingPart) => number): VaryingPair {
  const part = (item: VaryingPart): VaryingPart => ({ ...item, sigma: sigmaOf(item) });
  const taken = (fit: VaryingFit | null): VaryingFit | null => fit && { ...fit, parts: fit.parts.map(part) };
  const side = (one: VaryingSide): VaryingSide => ({
    ...one,
    outer: taken(one.outer),
    inner: taken(one.inner),
  });
  return { ...pair, lengths: pair.lengths.map(part), left: side(pair.left), right: side(pair.right) };
}

/** Every length and every diameter of a fit that varies, each once. */
export function varyingParts({ lengths, left, right }: VaryingPair): readonly VaryingPart[] {
  const fits = [left, right].flatMap(({ outer, inner }) => [
    ...(outer?.parts ?? []),
    ...(inner?.parts ?? []),
  ]);
  return [...lengths, ...fits].filter(({ sigma }) => sigma > 0);
}
