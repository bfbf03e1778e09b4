import type { Check } from '../check.ts';
import { pageHub } from '../page-hub.ts';
import { fromProblems } from './from-problems.ts';

/** A quantity has no unit, or one of another kind. */
export const wrongUnit: Check = {
  code: 'wrong-unit',
  group: 'text',
  severity: 'error',
  summary: 'A quantity has no unit, or one of another kind.',
  page: {
    why: 'A clamp of 5 may be newtons, kilonewtons or a torque, and each makes another hub. Lengths are millimetres unless in is written; everything else names its unit.',
    bad: `${pageHub()}clamp: 5\n`,
    good: `${pageHub()}clamp: 5 kN\n`,
    sources: ['ISO 80000-1, quantities and units'],
  },
  run: fromProblems('wrong-unit'),
};
