import type { Check } from '../check.ts';
import { pageHub } from '../page-hub.ts';
import { fromProblems } from './from-problems.ts';

/** A line of the file is not written as YAML: a colon, a quote or a bracket is missing or astray. */
export const yamlSyntax: Check = {
  code: 'yaml-syntax',
  group: 'text',
  severity: 'error',
  summary: 'A line of the file is not written as YAML: a colon, a quote or a bracket is missing or astray.',
  page: {
    why: 'One stray sign can swallow the lines after it, and a length that was swallowed is a length nobody checked. What stands before and after the broken place is still read. A key and its value are parted by a colon and a blank, a quote that opens also closes, and the parts of a stack begin with a dash and a blank.',
    bad: pageHub(['code: 6803-2RS', 'code: "6803-2RS']),
    good: pageHub(),
    sources: ['YAML 1.2, chapters 6 to 8'],
  },
  run: fromProblems('yaml-syntax'),
};
