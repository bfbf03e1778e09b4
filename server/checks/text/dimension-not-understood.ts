import type { Check } from '../check.ts';
import { pageHub } from '../page-hub.ts';
import { fromProblems } from './from-problems.ts';

/** A length or a diameter cannot be read as it is written. */
export const dimensionNotUnderstood: Check = {
  code: 'dimension-not-understood',
  group: 'text',
  severity: 'error',
  summary: 'A length or a diameter cannot be read as it is written.',
  page: {
    why: 'A dimension is a nominal with its tolerance: 62.05, 62.05 ±0.02, 62 +0.05/-0.02, 61.98..62.02, 26 N7 for a bore, 17 h6 for a shaft, 1/2 in. A measured value stands after the word measured. Whatever cannot be read is left out of every sum.',
    bad: pageHub(['62.06 ±0.01', '62.06 ±']),
    good: pageHub(),
    sources: ['ISO 14405-1, indications of size tolerances', 'ISO 286-1, tolerance classes'],
  },
  run: fromProblems('dimension-not-understood'),
};
