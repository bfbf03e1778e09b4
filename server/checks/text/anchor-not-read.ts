import type { Check } from '../check.ts';
import { pageHub } from '../page-hub.ts';
import { fromProblems } from './from-problems.ts';

/** An anchor, an alias or a tag stands in the file. */
export const anchorNotRead: Check = {
  code: 'anchor-not-read',
  group: 'text',
  severity: 'error',
  summary: 'An anchor, an alias or a tag stands in the file.',
  page: {
    why: 'An alias stands for a value written somewhere else, so a number could change without its line changing, and a quick fix would change two parts at once. Every part here carries its own numbers; parts that are alike are written twice.',
    bad: pageHub(['length: 14.03 ±0.02', 'length: &cap 14.03 ±0.02']),
    good: pageHub(),
    sources: ['YAML 1.2, sections 3.2.2 and 6.9'],
  },
  run: fromProblems('anchor-not-read'),
};
