import { isScalar } from 'yaml';
import type { Allowance } from './document.ts';
import { lineOf, nextLine } from './lines.ts';
import { makeProblem } from './make-problem.ts';
import type { Span } from './place.ts';
import { placesOf } from './places.ts';
import type { Reader } from './section-reader.ts';

const comment = /(?<=^|[ \t])#[ \t]*allow\b[ \t]*([^\r\n]*)/gm;
const parts = /^([a-z][a-z0-9-]*)?[ \t]*(?:(?:because|:|,|—|–|-)[ \t]*)?(.*?)[ \t]*$/i;

/** Every `# allow CODE because reason` of the text; one without a reason is reported. */
export function readAllowances(reader: Reader): readonly Allowance[] {
  const { text } = reader.yaml;
  if (!/#[ \t]*allow\b/.test(text)) return [];
  const places = placesOf(reader.yaml);
  const allowances: Allowance[] = [];
  let above: Allowance | null = null;
  for (const match of text.matchAll(comment)) {
    const start = match.index;
    const end = start + match[0].trimEnd().length;
    if (insideValue(reader, start)) continue;
    const [, code = '', reason = ''] = parts.exec(match[1] ?? '') ?? [];
    const span = { start, end };
    // Comments that stand together speak of the same line, which is looked for once.
    const together: boolean = above !== null && span.end <= above.target.start;
    above = { code, reason, span, target: together && above ? above.target : targetOf(text, span, places) };
    allowances.push(above);
    if (reason === '') {
      const named = code === '' ? 'the finding it allows' : code;
      const message = `the allowance of ${named} gives no reason and silences nothing; write # allow ${code || 'CODE'} because …`;
      const fixes = [
        {
          title: 'Add because and a reason',
          snippet: true,
          preferred: true,
          changes: [{ span, text: `# allow ${code || 'CODE'} because $0` }],
        },
      ];
      reader.problems.push(makeProblem('allow-without-reason', message, span, { data: { code }, fixes }));
    }
  }
  return allowances;
}

/** A `#` inside a quoted or block text is no comment. */
function insideValue(reader: Reader, offset: number): boolean {
  const at = placesOf(reader.yaml).pathAt(offset);
  if (at?.part !== 'value') return false;
  let node: unknown = reader.yaml.root;
  for (const step of at.path)
    node = (node as { get?: (k: unknown, keep: boolean) => unknown })?.get?.(step, true);
  return (
    isScalar(node) &&
    !!node.range &&
    reader.yaml.at(node.range[0]) < offset &&
    offset < reader.yaml.at(node.range[1])
  );
}

/** The line it stands on when something is written before it, else the next line that says something, with all it opens. */
function targetOf(text: string, span: Span, places: ReturnType<typeof placesOf>): Span {
  const own = lineOf(text, span.start);
  if (text.slice(own.start, span.start).trim() !== '') return { start: firstWord(text, own), end: own.end };
  let at = nextLine(text, span.end);
  while (at < text.length) {
    const line = lineOf(text, at);
    const words = text.slice(line.start, line.end).trim();
    if (words !== '' && !words.startsWith('#')) {
      const start = firstWord(text, line);
      return { start, end: Math.max(line.end, opened(text, start, places)) };
    }
    const next = nextLine(text, at);
    if (next === at) break;
    at = next;
  }
  return { start: text.length, end: text.length };
}

const firstWord = (text: string, line: Span): number =>
  line.start + (/^\s*/.exec(text.slice(line.start, line.end))?.[0].length ?? 0);

/** The end of the item or section whose first line begins here. */
function opened(text: string, start: number, places: ReturnType<typeof placesOf>): number {
  const dash = /^(?:-[ \t]+)+/.exec(text.slice(start))?.[0].length ?? 0;
  const at = places.pathAt(start + dash);
  if (!at) return start;
  const path =
    dash === 0 ? at.path : at.path.slice(0, at.path.findLastIndex((step) => typeof step === 'number') + 1);
  return path.length === 0 ? start : places.span(path, 'whole').end;
}
