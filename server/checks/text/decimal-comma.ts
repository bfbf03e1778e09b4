import type { Check } from '../check.ts';
import { pageHub } from '../page-hub.ts';
import { fromProblems } from './from-problems.ts';

/** A number has a comma where a point is wanted. */
export const decimalComma: Check = {
  code: 'decimal-comma',
  group: 'text',
  severity: 'error',
  summary: 'A number has a comma where a point is wanted.',
  page: {
    why: 'A comma parts two things in this file format, and inside braces it would end the value: 14,03 would be 14 with a stray 03 behind it. Numbers are written with a point.',
    bad: pageHub(['14.03 ±0.02', '14,03 ±0.02']),
    good: pageHub(),
    sources: ['YAML 1.2, section 7.4', 'ISO 80000-1, decimal sign'],
  },
  run: fromProblems('decimal-comma'),
};
