import type { SpecDocument } from '../../spec/document.ts';
import type { Fix, TextChange } from '../../spec/problem.ts';
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
  run: fromProblems('anchor-not-read', ({ spec }) => writtenOut(spec)),
};

/** An anchored value of one line; what is longer is for a person to copy. */
const anchored = /&([\w-]+)[ \t]+([^\s,#&*!|>[\]{}'"][^,#&*[\]{}\r\n]*?)(?=[ \t]*(?:[,}\]\r\n]|#|$))/g;

/** The values written where they are used, when every anchor and every reference of the file is that plain. */
function writtenOut({ text }: SpecDocument): readonly Fix[] {
  const values = new Map<string, string>();
  const changes: TextChange[] = [];
  for (const match of text.matchAll(anchored)) {
    const [whole, name = '', value = ''] = match;
    values.set(name, value);
    changes.push({ span: { start: match.index, end: match.index + whole.length }, text: value });
  }
  const uses = [...text.matchAll(/(?<=[:\-,[{][ \t]+)\*([\w-]+)/g)];
  for (const use of uses) {
    const value = values.get(use[1] ?? '');
    if (value === undefined) return [];
    changes.push({ span: { start: use.index, end: use.index + use[0].length }, text: value });
  }
  changes.sort((a, b) => a.span.start - b.span.start);
  const left = changes.reduceRight((now, { span }) => now.slice(0, span.start) + now.slice(span.end), text);
  if (changes.length === 0 || /(?<=^|[\s:,[{-])[&*][\w-]|<<[ \t]*:/m.test(left)) return [];
  const places =
    uses.length === 1 ? 'where it is referred to' : `in the ${uses.length} places that refer to it`;
  const title = uses.length === 0 ? 'Remove the anchor' : `Write the value out ${places}`;
  return [{ title, changes, preferred: true }];
}
