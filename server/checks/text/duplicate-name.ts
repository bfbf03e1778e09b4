import type { Check } from '../check.ts';
import { pageHub } from '../page-hub.ts';
import { fromProblems } from './from-problems.ts';

/** Two parts have the same kind and name. */
export const duplicateName: Check = {
  code: 'duplicate-name',
  group: 'text',
  severity: 'error',
  summary: 'Two parts have the same kind and name.',
  page: {
    why: 'A part is called by its kind and name: spacer.centre. Where two answer to one address, a variant or a message cannot say which is meant.',
    bad: pageHub(['- bearing: right', '- bearing: left']),
    good: pageHub(),
    sources: ['common practice'],
  },
  run: fromProblems('duplicate-name'),
};
