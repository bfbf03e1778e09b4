import type { Check } from '../check.ts';
import { pageHub } from '../page-hub.ts';
import { fromProblems } from './from-problems.ts';

/** A part is of no kind that is known. */
export const unknownKind: Check = {
  code: 'unknown-kind',
  group: 'text',
  severity: 'error',
  summary: 'A part is of no kind that is known.',
  page: {
    why: 'The kind says what a part does in the clamped line and which keys it takes. It is read on as the nearest kind, so that one slip does not silence the rest of the stack.',
    bad: pageHub(['spacer: centre', 'spcaer: centre']),
    good: pageHub(),
    sources: ['common practice'],
  },
  run: fromProblems('unknown-kind'),
};
