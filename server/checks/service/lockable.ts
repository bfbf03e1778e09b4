import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import { type Plan, planOf } from '../../service/plan.ts';
import { hasUnreadParts } from '../unread-parts.ts';

/** The plan of a variant whose every part could be read; null where the order would rest on a part made up. */
export function readablePlan(analysis: Analysis, variant: VariantAnalysis): Plan | null {
  if (hasUnreadParts(analysis)) return null;
  if (variant.assembly.bearings.some(({ bearing }) => bearing === null)) return null;
  return planOf(variant, analysis);
}

/** Whether a part is drawn into another, or is as wide or as narrow as it is only by guess. */
export function isDoubtful(plan: Plan, address: string): boolean {
  return (
    plan.measure.some((item) => item.address === address) ||
    plan.clashes.some((pair) => pair.includes(address))
  );
}
