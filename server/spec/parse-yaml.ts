import { isMap, type Node, parseDocument, visit, type YAMLError } from 'yaml';
import type { SpecKind } from './document.ts';
import { lineOf, newlineOf } from './lines.ts';
import { makeProblem } from './make-problem.ts';
import { mendErrors } from './mend-errors.ts';
import { mendText } from './mend-text.ts';
import { MendedText } from './mended-text.ts';
import { parseInParts } from './parse-parts.ts';
import type { Span } from './place.ts';
import type { Problem } from './problem.ts';
import { skeletons } from './skeleton.ts';
import { textTooLarge } from './text-guards.ts';
import { yamlMessage } from './yaml-message.ts';
import { isEmpty, nodeSpan, parseOptions, type YamlText } from './yaml-text.ts';

const mostRounds = 6;
const mostProblems = 20;

/**
 * Parses a text. A sound one is parsed once; a broken one is mended, for the parser only, until what is broken no longer
 * hides the rest, and its problems are in our words.
 */
export function parseYaml(text: string, kind: SpecKind): YamlText {
  const tooLarge = textTooLarge(text);
  if (tooLarge)
    return { text, root: null, at: (offset) => offset, mended: false, problems: [tooLarge], broken: [] };
  const mended = new MendedText(text);
  const problems = mendText(mended);
  const broken: Span[] = [];
  let doc = parsedOnce(mended.text);
  for (
    let round = 0;
    0 < doc.errors.length && round < mostRounds && problems.length < mostProblems;
    round++
  ) {
    const mendings = mendErrors(mended, doc.errors);
    if (mendings.length === 0) break;
    for (const mending of mendings) {
      if (mending.problem && !told(text, problems, mending.problem)) problems.push(mending.problem);
      if (mending.broken) broken.push(mending.broken);
    }
    doc = parseDocument(mended.text, parseOptions);
  }
  for (const problem of translated(mended, doc.errors, problems)) {
    problems.push(problem);
    broken.push(problem.span);
  }
  const tag = doc.warnings[0];
  if (tag) {
    const [start, end] = [mended.at(tag.pos[0]), mended.at(tag.pos[1])];
    problems.push(
      makeProblem(
        'yaml-syntax',
        yamlMessage(tag, text.slice(start, end)),
        { start, end },
        { data: { yaml: tag.code } },
      ),
    );
  }
  const root = doc.contents as Node | null;
  const at = mended.touched ? (offset: number) => mended.at(offset) : (offset: number) => offset;
  const yaml: YamlText = { text, root, at, mended: mended.touched, problems, broken };
  if (/[&*!]|<</.test(text)) problems.push(...notRead(yaml));
  if (!isMap(root)) problems.push(...noKeys(yaml, kind));
  return yaml;
}

/** A sound text in its parts, any other whole. */
function parsedOnce(
  text: string,
): Pick<ReturnType<typeof parseDocument>, 'contents' | 'errors' | 'warnings'> {
  const contents = parseInParts(text);
  return contents ? { contents, errors: [], warnings: [] } : parseDocument(text, parseOptions);
}

/** Whether the same slip was found on that line before. */
function told(text: string, problems: readonly Problem[], problem: Problem): boolean {
  const line = lineOf(text, problem.span.start);
  return problems.some(
    (other) =>
      other.message === problem.message && line.start <= other.span.start && other.span.start <= line.end,
  );
}

/** The errors left, at most one a line, and none where a slip was found already. */
function translated(mended: MendedText, errors: readonly YAMLError[], known: readonly Problem[]): Problem[] {
  const { original } = mended;
  const taken = new Set(known.map((problem) => lineOf(original, problem.span.start).start));
  const problems: Problem[] = [];
  for (const error of errors) {
    const place = mended.at(error.pos[0]);
    const opening =
      /Flow|closing|end with a|must end/.test(error.message) && /[}\]]/.test(error.message)
        ? openBracket(original, place)
        : null;
    const at = Math.min(opening ?? place, Math.max(0, original.length - 1));
    const line = lineOf(original, at);
    if (taken.has(line.start) || mostProblems < problems.length) continue;
    taken.add(line.start);
    if (opening !== null) {
      const sign = original[opening] === '{' ? '}' : ']';
      const end =
        line.start +
        original
          .slice(line.start, line.end)
          .replace(/[ \t]+#.*$/, '')
          .trimEnd().length;
      const message = `the bracket opened here is not closed; ${sign} is wanted at its end`;
      const fixes = [
        {
          title: `Close it with ${sign}`,
          changes: [{ span: { start: end, end }, text: ` ${sign}` }],
          preferred: true,
        },
      ];
      problems.push(
        makeProblem(
          'yaml-syntax',
          message,
          { start: opening, end: opening + 1 },
          { fixes, data: { yaml: error.code } },
        ),
      );
      continue;
    }
    const word = /^[^\s,}\]]*/.exec(original.slice(at, line.end))?.[0] ?? '';
    const end = Math.max(at + word.length, Math.min(at + 1, line.end));
    const code = error.code === 'TAB_AS_INDENT' ? 'tab-indentation' : 'yaml-syntax';
    problems.push(
      makeProblem(code, yamlMessage(error, word), { start: at, end }, { data: { yaml: error.code } }),
    );
  }
  return problems;
}

/** The last bracket before an offset that is open there. */
function openBracket(text: string, before: number): number | null {
  let closed = 0;
  for (let i = Math.min(before, text.length) - 1; 0 <= i; i--) {
    const c = text[i];
    if (c === '}' || c === ']') closed++;
    else if ((c === '{' || c === '[') && --closed < 0) return i;
  }
  return null;
}

/** Anchors, references, merges and types: one finding at the first. */
function notRead(yaml: YamlText): Problem[] {
  let first: Span | null = null;
  const found = (start: number, end: number): void => {
    if (!first || start < first.start) first = { start, end };
  };
  if (!yaml.root) return [];
  visit(yaml.root, {
    Alias(_, node) {
      const span = nodeSpan(yaml, node);
      if (span) found(span.start, span.end);
    },
    Node(_, node) {
      const marked = 'anchor' in node && node.anchor ? `&${node.anchor}` : null;
      const span = nodeSpan(yaml, node);
      if (!marked || !span) return;
      const start = yaml.text.lastIndexOf(marked, span.start);
      if (0 <= start) found(start, start + marked.length);
    },
    Pair(_, pair) {
      const span = nodeSpan(yaml, pair.key);
      if (span && yaml.text.slice(span.start, span.end) === '<<') found(span.start, span.end);
    },
  });
  if (!first) return [];
  const message = 'anchors and references (&, *, <<) are not read; write the value out where it is used';
  return [makeProblem('anchor-not-read', message, first)];
}

/** A file without keys: empty, or one that begins otherwise. */
function noKeys(yaml: YamlText, kind: SpecKind): Problem[] {
  const { root, text } = yaml;
  const start = text.charCodeAt(0) === 0xfeff ? 1 : 0;
  const example = kind === 'workshop' ? 'limits:' : `${kind}: Dunlin front`;
  if (isEmpty(root)) {
    if (0 < yaml.problems.length) return [];
    const newline = newlineOf(text);
    const separate = text.slice(start) === '' || /[\r\n]$/.test(text) ? '' : newline;
    const body = separate + skeletons[kind].join(newline) + newline;
    const fix = { title: `Begin a ${kind} file`, snippet: true, preferred: true } as const;
    const changes = [{ span: { start: text.length, end: text.length }, text: body }];
    const message = `nothing is written here yet; a ${kind} file begins with ${example}`;
    return [makeProblem('empty-file', message, { start, end: start }, { fixes: [{ ...fix, changes }] })];
  }
  const span = nodeSpan(yaml, root) ?? { start, end: start };
  if (yaml.problems.some((problem) => problem.code === 'yaml-syntax' && problem.span.start <= span.end))
    return [];
  const line = lineOf(text, span.start);
  const word = text.slice(span.start, Math.min(line.end, span.end)).trimEnd();
  const message = `${word} is no key with a value; a ${kind} file begins with ${example}`;
  return [makeProblem('yaml-syntax', message, { start: span.start, end: span.start + word.length })];
}
