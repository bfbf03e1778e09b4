import type { Check } from '../check.ts';
import { pageHub } from '../page-hub.ts';
import { fromProblems } from './from-problems.ts';

/** An allowance gives no reason. */
export const allowWithoutReason: Check = {
  code: 'allow-without-reason',
  group: 'text',
  severity: 'warning',
  summary: 'An allowance gives no reason.',
  page: {
    why: 'An allowance is read by the next person who services the hub. Without a reason it silences nothing: write because and what makes it right here.',
    bad: pageHub(['    length: 62.06', '    # allow width-off\n    length: 62.06']),
    good: pageHub(),
    sources: ['common practice'],
  },
  run: fromProblems('allow-without-reason'),
};
