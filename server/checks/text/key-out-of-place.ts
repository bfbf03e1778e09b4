import type { Check } from '../check.ts';
import { pageHub } from '../page-hub.ts';
import { fromProblems } from './from-problems.ts';

/** A key stands in a section that does not take it. */
export const keyOutOfPlace: Check = {
  code: 'key-out-of-place',
  group: 'text',
  severity: 'error',
  summary: 'A key stands in a section that does not take it.',
  page: {
    why: 'The key is known, but not here, so its value is read nowhere. A seat has a depth, an end cap a length; both stand where the drawing of that part would carry them.',
    bad: pageHub(['    face: 19.4\n', '    face: 19.4\n    depth: 3\n']),
    good: pageHub(),
    sources: ['common practice'],
  },
  run: fromProblems('key-out-of-place'),
};
