import type { Check } from '../check.ts';
import { pageHub } from '../page-hub.ts';
import { fromProblems } from './from-problems.ts';

/** Marks of an unfinished merge stand in the file. */
export const conflictMarkers: Check = {
  code: 'conflict-markers',
  group: 'text',
  severity: 'error',
  summary: 'Marks of an unfinished merge stand in the file.',
  page: {
    why: 'Two people changed the same lines and nobody has yet decided between them. A hub made from either half may be right and the mixture wrong: choose one side, then remove the three lines of marks.',
    bad: pageHub([
      'width: 100 ±0.2\n',
      '<<<<<<< mine\nwidth: 100 ±0.2\n=======\nwidth: 110 ±0.2\n>>>>>>> theirs\n',
    ]),
    good: pageHub(),
    sources: ['common practice'],
  },
  run: fromProblems('conflict-markers'),
};
