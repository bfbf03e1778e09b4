import type { Check } from '../check.ts';
import { pageHub } from '../page-hub.ts';
import { fromProblems } from './from-problems.ts';

/** A key that must be there is missing. */
export const missingKey: Check = {
  code: 'missing-key',
  group: 'text',
  severity: 'error',
  summary: 'A key that must be there is missing.',
  page: {
    why: 'Without its length a part leaves the clamped line open, and without its name nothing can point at it. The key is inserted with the cursor where its value goes.',
    bad: pageHub(['position: front\n', '']),
    good: pageHub(),
    sources: ['common practice'],
  },
  run: fromProblems('missing-key'),
};
