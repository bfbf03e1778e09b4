import type { VariantAnalysis } from '../analysis/analyze.ts';
import { section } from '../assembly/section.ts';
import { blockingOf } from './blocking.ts';
import { type Body, tubeOf } from './body.ts';
import type { Plan } from './plan.ts';
import { takeApart } from './take-apart.ts';

/** Whether a hub whose parts lock each other would come apart if one collar of its axle were a part of its own. */
export function comesApartWith(plan: Plan, variant: VariantAnalysis, collar: string): boolean {
  const part = section(variant.assembly).parts.find(({ address }) => address === collar);
  const axle = plan.bodies.find(({ kind }) => kind === 'axle');
  const own = axle?.tubes ?? [];
  if (!part || !axle) return false;
  // The axle goes on under the collar, as thick as beside it.
  const rod = Math.min(...own.map(({ outside }) => outside));
  const covers = (tube: { readonly left: number; readonly right: number }): boolean =>
    tube.left < part.right - 1e-6 && part.left < tube.right - 1e-6;
  const slim = own.map((tube) => (covers(tube) ? { ...tube, outside: Math.min(tube.outside, rod) } : tube));
  const tubes = part.steps.map(tubeOf).map((tube) => ({ ...tube, inside: rod }));
  const freed: Body = { ...axle, address: collar, kind: 'spacer', tubes, with: [], part };
  const bodies = plan.bodies.map((body) => (body === axle ? { ...axle, tubes: slim } : body));
  const all = [...bodies, freed];
  return takeApart(all, blockingOf(all), [], () => 0).locked === null;
}
