import type { Plan } from '../../service/plan.ts';
import type { Step } from '../../service/step.ts';
import { list, stepWords } from './step-words.ts';

/** What is said once, before anything is touched. */
export const planCautions: readonly string[] = [
  "the maker's own instructions come first, and what you are not sure of goes to a qualified mechanic",
  'rotor and sprockets are off, the parts are laid out in the order they come, and the way each bearing looks is noted',
  'eyes and hands are protected wherever a part is driven, pressed or sprung; no hardened hammer on a hardened ring',
  'a bearing once pulled through its balls is scrap, without exception',
  'if a ring tilts, a shell cracks or a force is far from the one given: stop',
];

/** What is done before the hub is ridden again. */
export const planChecks: readonly string[] = [
  'clamped as in the frame: it spins without a notch, rocks by no more than the play wanted, nothing rubs',
  'the hub is checked on the stand before it is ridden, and again after the first ride',
];

/** The order of work at one variant, for people. */
export function planText(file: string, hub: string, plan: Plan): string {
  const name = plan.variant === null ? hub : `${hub}, variant ${plan.variant}`;
  return [
    `${name} — ${file}`,
    ...block('Before you begin', planCautions),
    ...(plan.locked ? lockedLines(plan.locked) : []),
    ...(plan.apart.length > 0 ? ['', '  Apart', ...stepLines(plan.apart)] : []),
    ...(plan.together.length > 0 ? ['', '  Together', ...stepLines(plan.together)] : []),
    ...(plan.together.length > 0 ? block('Before it is ridden', planChecks) : []),
    ...block(
      'Measure to be sure',
      plan.measure.map(({ words }) => words),
    ),
    ...block(
      'Drawn into each other',
      plan.clashes.map(([a, b]) => `${a} and ${b}: the order says nothing of these two`),
    ),
    ...block('Assumed', plan.assumed),
  ].join('\n');
}

function lockedLines(locked: readonly string[]): readonly string[] {
  return ['', `  No order takes this hub apart: ${list(locked)} hold each other both ways.`];
}

function stepLines(steps: readonly Step[]): readonly string[] {
  const wide = String(steps.length).length;
  return steps.flatMap((step, index) => {
    const { head, details } = stepWords(step);
    const bench = step.on === 'bench' ? ' (on the bench)' : '';
    const number = String(index + 1).padStart(wide);
    return [`    ${number}. ${head}${bench}`, ...details.map((text) => `    ${' '.repeat(wide)}    ${text}`)];
  });
}

function block(title: string, lines: readonly string[]): readonly string[] {
  return lines.length === 0 ? [] : ['', `  ${title}`, ...lines.map((line) => `    ${line}`)];
}
