import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import type { GapLoop } from '../../assembly/loop.ts';
import { asBuilt, meanOf } from '../../assembly/settle.ts';
import { lengthChanges } from '../length-fixes.ts';
import { widthDraft } from '../stack/width-off.ts';

/** Whether the length that puts the clamped width right also puts this gap right: then it is one fault, said there. */
export function mendedByWidth(
  analysis: Analysis,
  variant: VariantAnalysis,
  loop: GapLoop,
  how: 'drawn' | 'built',
): boolean {
  const { wanted } = variant.width.loop;
  const draft = wanted && loop.wanted ? widthDraft(analysis, variant) : null;
  if (!draft || !wanted || !loop.wanted) return false;
  const [best] = lengthChanges(variant, variant.width.loop, (wanted.lo + wanted.hi) / 2, how);
  const shared = best && loop.terms.find((item) => item.path === best.path);
  if (!best || !shared) return false;
  const mean = loop.terms.reduce((sum, item) => {
    const limits = how === 'built' ? asBuilt(item.settled) : item.settled.drawn;
    return sum + item.sign * item.count * meanOf(limits);
  }, 0);
  const then = mean + shared.sign * shared.count * (best.to - best.from);
  return loop.wanted.lo <= then && then <= loop.wanted.hi;
}
