import type { Check } from '../check.ts';
import { pageHub } from '../page-hub.ts';
import { fromProblems } from './from-problems.ts';

/** A key stands twice in one section. */
export const duplicateKey: Check = {
  code: 'duplicate-key',
  group: 'text',
  severity: 'error',
  summary: 'A key stands twice in one section.',
  page: {
    why: 'Of two values for one dimension, one is wrong or left over, and the file does not say which. The first is read until the second is removed or renamed.',
    bad: pageHub(['    face: 19.4\n', '    face: 19.4\n    face: 19.6\n']),
    good: pageHub(),
    sources: ['YAML 1.2, section 3.2.1.1'],
  },
  run: fromProblems('duplicate-key'),
};
