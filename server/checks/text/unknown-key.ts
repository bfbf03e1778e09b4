import type { Check } from '../check.ts';
import { pageHub } from '../page-hub.ts';
import { fromProblems } from './from-problems.ts';

/** A key is not known in its section. */
export const unknownKey: Check = {
  code: 'unknown-key',
  group: 'text',
  severity: 'error',
  summary: 'A key is not known in its section.',
  page: {
    why: 'A key that is not understood is not checked: a misspelled length is a missing length. The nearest known key is offered.',
    bad: pageHub(['    inside: 17.1', '    insde: 17.1']),
    good: pageHub(),
    sources: ['common practice'],
  },
  run: fromProblems('unknown-key'),
};
