import type { Analysis } from '../analysis/analyze.ts';
import { plain } from '../engine/base/figures.ts';
import { setValue } from '../spec/edit.ts';
import type { Dimension } from '../spec/model.ts';
import type { Placed } from '../spec/place.ts';
import type { Fix } from '../spec/problem.ts';
import { withNominal } from '../spec/with-nominal.ts';

/** A fix that gives a written dimension another nominal and keeps its tolerance and notation. */
export function rewriteFix(
  analysis: Analysis,
  placed: Placed<Dimension>,
  nominal: number,
  say: { readonly name: string; readonly result: string; readonly preferred?: boolean },
): Fix {
  return {
    title: `Change ${say.name} to ${plain(nominal)}: ${say.result}`,
    changes: setValue(analysis.spec, placed.path, withNominal(placed.value, Number(nominal.toFixed(4)))),
    preferred: say.preferred ?? true,
  };
}
