import type { Check } from '../check.ts';
import { pageHub } from '../page-hub.ts';

/** An allowance that silences nothing. The run of all checks yields it, when it has seen which were used. */
export const allowUnused: Check = {
  code: 'allow-unused',
  group: 'text',
  severity: 'hint',
  summary: 'An allowance silences nothing.',
  page: {
    why: 'The fault it spoke of is gone, or its code is misspelled. Left standing, it would hide the next fault of that kind in this place.',
    bad: pageHub(['    length: 62.06', '    # allow width-off because the fork is filed\n    length: 62.06']),
    good: pageHub(),
    sources: ['common practice'],
  },
  run: () => [],
};
