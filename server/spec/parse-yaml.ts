import { type Node, parseDocument } from 'yaml';
import type { SpecKind } from './document.ts';
import { makeProblem } from './make-problem.ts';
import { parseOptions, type YamlText } from './yaml-text.ts';

/** Parses a text once; a text that is broken is mended as far as possible and its problems are in our words. */
export function parseYaml(text: string, _kind: SpecKind): YamlText {
  const doc = parseDocument(text, parseOptions);
  const problems = doc.errors.map((e) =>
    makeProblem('yaml-syntax', e.message, { start: e.pos[0], end: e.pos[1] }),
  );
  const broken = doc.errors.map((e) => ({ start: e.pos[0], end: e.pos[1] }));
  return { text, root: doc.contents as Node | null, at: (offset) => offset, problems, broken };
}
