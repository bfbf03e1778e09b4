import type { TraceStep } from '../../analysis/trace/trace-step.ts';
import { sources } from '../../engine/base/sources.ts';

/** What `explain FILE ADDRESS --json` prints: the links in their order, each value in its unit. */
export function traceJson(steps: readonly TraceStep[]) {
  return steps.map(({ name, value, unit, formula, source, inputs, assumed }) => ({
    name,
    value,
    unit,
    formula,
    source: source === null ? null : sources[source].title,
    inputs,
    assumptions: assumed,
  }));
}
