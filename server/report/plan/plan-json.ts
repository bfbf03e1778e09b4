import type { Plan } from '../../service/plan.ts';
import type { PressForce, Step } from '../../service/step.ts';
import { planCautions, planChecks } from './plan-text.ts';
import { stepWords } from './step-words.ts';

/** What `plan --json` prints for one variant: mm, N, °C; each step with its words beside its numbers. */
export function planJson(plan: Plan) {
  return {
    name: plan.variant,
    apart: plan.apart.map(stepJson),
    together: plan.together.map(stepJson),
    locked: plan.locked,
    overlaps: plan.clashes,
    measure: plan.measure.map(({ words }) => words),
    assumptions: plan.assumed,
    cautions: planCautions,
    checks: planChecks,
  };
}

function stepJson(step: Step) {
  const words = stepWords(step);
  if (step.kind !== 'press-in' && step.kind !== 'press-out') return { ...step, words };
  const pressed = step.pressed.map((one) => ({ ...one, force: forceJson(one.force) }));
  return { ...step, pressed, words };
}

const forceJson = (force: PressForce) =>
  force && { min: force.least, typical: force.typical, max: force.most };
