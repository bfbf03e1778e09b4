import type { Analysis, VariantAnalysis } from '../analysis/analyze.ts';
import type { Draft } from './check.ts';

/** Runs a check over every variant and says of each draft which one it was found in. */
export function* eachVariant(
  analysis: Analysis,
  check: (variant: VariantAnalysis) => Iterable<Draft>,
): Iterable<Draft> {
  for (const variant of analysis.variants) {
    for (const draft of check(variant)) yield { ...draft, variant: variant.name };
  }
}
