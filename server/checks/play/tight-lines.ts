import type { VariantAnalysis } from '../../analysis/analyze.ts';
import type { LineMechanics } from '../../analysis/mechanics/line-mechanics.ts';
import { isWorked, type PairMechanics } from '../../analysis/mechanics/pair-mechanics.ts';
import { leastTravel } from './located-pair.ts';

/** More than two bearings that have no play together, with the pairs of neighbours, each of which has some. */
export interface TightLine {
  readonly line: LineMechanics;
  readonly pairs: readonly PairMechanics[];
}

/** The tight lines of a variant, as it is today. */
export function tightLines(variant: VariantAnalysis): readonly TightLine[] {
  const { lines, pairs } = variant.mechanics('built');
  return lines.flatMap((line): readonly TightLine[] => {
    const play = line.playClampedSigned;
    if (!Number.isFinite(play) || -leastTravel <= play) return [];
    const own = pairs.filter(isWorked).filter(({ loop }) => loop.housing === line.housing);
    const isEachFree = own.every(({ result }) => -leastTravel <= result.playClampedSigned);
    return isEachFree ? [{ line, pairs: own }] : [];
  });
}
