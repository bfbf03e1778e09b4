import type { LoopTerm } from '../../assembly/loop.ts';
import type { StackPart } from '../../spec/model.ts';
import type { VariantAnalysis } from '../analyze.ts';
import type { PairMechanics } from './pair-mechanics.ts';

/** A spacer before a collar, both before shims. */
const preference: Partial<Record<StackPart['kind'], number>> = { spacer: 0, collar: 1, shim: 2, washer: 3 };

/** The part between the inner rings of a pair that is written anew to set its play; null where only bought parts stand there. */
export function spacerOf({ assembly }: VariantAnalysis, { loop, setting }: PairMechanics): LoopTerm | null {
  if (setting) return null;
  const rank = (item: LoopTerm): number => {
    const part = assembly.line.find(({ address }) => address === item.address)?.part;
    return (part && item.key === 'length' && item.sign === 1 ? preference[part.kind] : undefined) ?? 9;
  };
  const [best] = loop.inner.toSorted((a, b) => rank(a) - rank(b));
  return best && rank(best) < 9 ? best : null;
}
