import type { Check } from '../check.ts';
import { pageHub } from '../page-hub.ts';
import { fromProblems } from './from-problems.ts';

/** The file is too large to be read. */
export const fileTooLarge: Check = {
  code: 'file-too-large',
  group: 'text',
  severity: 'information',
  summary: 'The file is too large to be read.',
  page: {
    why: 'A hub takes a few dozen lines. A file of more than a million characters is something else under this name, and reading it would hold up the editor; nothing in it is checked.',
    bad: '# … and so on, for more than a million characters\n',
    good: pageHub(),
    sources: ['common practice'],
  },
  run: fromProblems('file-too-large'),
};
