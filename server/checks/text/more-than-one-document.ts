import type { Check } from '../check.ts';
import { pageHub } from '../page-hub.ts';
import { fromProblems } from './from-problems.ts';

/** A second document begins in the file. */
export const moreThanOneDocument: Check = {
  code: 'more-than-one-document',
  group: 'text',
  severity: 'error',
  summary: 'A second document begins in the file.',
  page: {
    why: 'One file is one hub, so that a name, a drawing and an order belong together without doubt. Only the first document is read. Another hub goes into a file of its own; another set of end caps is a variant of this one.',
    bad: `${pageHub()}---\n${pageHub()}`,
    good: pageHub(),
    sources: ['common practice'],
  },
  run: fromProblems('more-than-one-document'),
};
