import type { Analysis } from '../../analysis/analyze.ts';
import { type Plan, planOf } from '../../service/plan.ts';

/** The order of work at every variant, with the name the hub goes by. */
export function planAnswers(
  analysis: Analysis,
  file: string,
): readonly { readonly hub: string; readonly plan: Plan }[] {
  return analysis.variants.map((variant) => ({
    hub: variant.assembly.hub.values.hub?.value ?? file,
    plan: planOf(variant, analysis),
  }));
}
