import type { Check } from '../check.ts';
import { pageHub } from '../page-hub.ts';
import { fromProblems } from './from-problems.ts';

/** A value is none of those a key takes. */
export const valueNotUnderstood: Check = {
  code: 'value-not-understood',
  group: 'text',
  severity: 'error',
  summary: 'A value is none of those a key takes.',
  page: {
    why: 'Where a key takes one of a few words, such as front or rear, any other word decides nothing, and the checks that depend on it stay silent. The words it takes are listed, and the nearest is offered.',
    bad: pageHub(['position: front', 'position: fornt']),
    good: pageHub(),
    sources: ['common practice'],
  },
  run: fromProblems('value-not-understood'),
};
