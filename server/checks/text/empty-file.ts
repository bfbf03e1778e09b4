import type { Check } from '../check.ts';
import { pageHub } from '../page-hub.ts';
import { fromProblems } from './from-problems.ts';

/** The file holds nothing yet. */
export const emptyFile: Check = {
  code: 'empty-file',
  group: 'text',
  severity: 'information',
  summary: 'The file holds nothing yet.',
  page: {
    why: 'A hub begins with four keys: its name, its position, the width between the dropouts and the stack. Everything further buys further checks.',
    bad: '',
    good: pageHub(),
    sources: ['common practice'],
  },
  run: fromProblems('empty-file'),
};
