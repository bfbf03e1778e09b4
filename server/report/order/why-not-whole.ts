import type { ProblemCode } from '../../spec/problem.ts';
import type { Snapshot } from '../../workspace/workspace.ts';

/** Faults of a text that may keep whole parts out of what was read. */
const holding: ReadonlySet<ProblemCode> = new Set([
  'yaml-syntax',
  'tab-indentation',
  'conflict-markers',
  'more-than-one-document',
  'anchor-not-read',
  'duplicate-key',
  'unknown-kind',
  'file-too-large',
]);

/** Why parts of a hub may not have been read, a sentence's end; null where all of them were. */
export function whyNotWhole({ document, analysis }: Snapshot): string | null {
  if (analysis.variants.length === 0) return 'no hub could be read';
  const fault = document.problems.find(({ code }) => holding.has(code));
  if (fault) return `parts may be missing, its text could not be read whole: ${fault.message}`;
  return document.hub?.stack.length === 0 ? 'no stack is written, so no parts of it are in the list' : null;
}
