import { setValue } from '../../spec/edit.ts';
import type { Check } from '../check.ts';
import { pageWheel } from '../page-wheel.ts';

/** Rim and hub have not the same number of spoke holes. */
export const holesDisagree: Check = {
  code: 'holes-disagree',
  group: 'wheel',
  severity: 'error',
  summary: 'Rim and hub have not the same number of spoke holes.',
  page: {
    why: 'Every hole of the rim holds a spoke of one of the two flanges. Where the counts disagree, either the wrong rim or the wrong hub was taken down, and the wheel cannot be laced as it is written.',
    bad: pageWheel(['holes: 32', 'holes: 36']),
    good: pageWheel(),
    sources: ['common practice: holes left + holes right = holes of the rim'],
  },
  *run(analysis) {
    const holes = analysis.spec.wheel?.rim?.values.holes;
    const flanges = analysis.wheel()?.hub?.flanges;
    const [left, right] = [flanges?.left?.holes ?? null, flanges?.right?.holes ?? null];
    if (!holes || left === null || right === null || holes.value === left + right) return;
    const sum = left + right;
    yield {
      path: holes.path,
      message: `the rim has ${holes.value} holes, the hub ${left} left and ${right} right, ${sum} together: ${Math.abs(holes.value - sum)} too ${sum < holes.value ? 'many' : 'few'} — a rim of ${sum} holes, or another hub`,
      data: { rim: holes.value, left, right },
      doubts: [holes.path],
      fixes: [
        {
          title: `Change holes to ${sum}: as many as the hub has`,
          changes: setValue(analysis.spec, holes.path, String(sum)),
          preferred: true,
        },
      ],
    };
  },
};
