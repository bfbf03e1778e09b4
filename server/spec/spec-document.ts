import { readAllowances } from './allowance.ts';
import type { SpecDocument, SpecKind } from './document.ts';
import type { Hub } from './model.ts';
import { placesOf } from './places.ts';
import type { Problem } from './problem.ts';
import type { Reader } from './section-reader.ts';
import type { Wheel } from './wheel-model.ts';
import type { Workshop } from './workshop-model.ts';
import type { YamlText } from './yaml-text.ts';

/** Beyond these nobody reads on. */
const mostProblems = 100;

/** The tree behind a document, for edits; a document is plain to everybody else. */
const trees = new WeakMap<SpecDocument, YamlText>();

export function treeOf(document: SpecDocument): YamlText | null {
  return trees.get(document) ?? null;
}

/** What every reader hands on: the model, the problems in the order of the text, and the places. */
export function specDocument(
  kind: SpecKind,
  reader: Reader,
  model: { readonly hub?: Hub | null; readonly wheel?: Wheel | null; readonly workshop?: Workshop | null },
): SpecDocument {
  const { yaml } = reader;
  const allowances = readAllowances(reader);
  const document: SpecDocument = {
    kind,
    text: yaml.text,
    hub: model.hub ?? null,
    wheel: model.wheel ?? null,
    workshop: model.workshop ?? null,
    problems: reader.problems
      .toSorted((a, b) => a.span.start - b.span.start)
      .slice(0, mostProblems)
      .map((problem) => withinLine(yaml.text, problem)),
    allowances,
    ...placesOf(yaml),
  };
  trees.set(document, yaml);
  return document;
}

/** A problem is shown on one line and said in one. */
function withinLine(text: string, problem: Problem): Problem {
  const { start, end } = problem.span;
  const line = text.slice(start, end).search(/[\r\n]/);
  if (line < 0 && !/[\r\n]/.test(problem.message)) return problem;
  const message = problem.message.replace(/\s*[\r\n]+\s*/g, ' ');
  return { ...problem, message, span: { start, end: line < 0 ? end : start + line } };
}
