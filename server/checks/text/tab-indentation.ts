import type { Check } from '../check.ts';
import { pageHub } from '../page-hub.ts';
import { fromProblems } from './from-problems.ts';

/** A line is indented with a tab. */
export const tabIndentation: Check = {
  code: 'tab-indentation',
  group: 'text',
  severity: 'error',
  summary: 'A line is indented with a tab.',
  page: {
    why: 'The file format leaves tabs out because nobody can see how wide they are: what belongs to which part would depend on the editor. Two blanks a level is usual.',
    bad: pageHub(['    inside: 17.1', '\tinside: 17.1']),
    good: pageHub(),
    sources: ['YAML 1.2, section 6.1'],
  },
  run: fromProblems('tab-indentation'),
};
