import { analyze } from '../analysis/analyze.ts';
import type { Finding } from '../checks/check.ts';
import { checks } from '../checks/registry.ts';
import { type Findings, runChecks } from '../checks/run.ts';
import { commentsIn } from '../spec/comments.ts';
import type { Fix } from '../spec/problem.ts';
import { readSpec } from '../spec/read-spec.ts';
import type { Snapshot } from '../workspace/workspace.ts';
import { withoutStops } from './text-edits.ts';

/** Characters up to which a mended text is worked out whole before its fix is offered; beyond it is only read. */
const workedOut = 20_000;

/**
 * The fixes of a finding that keep their promise. In a file whose text has faults of its own, another fault may stand
 * in the way of a fix: there each one is carried out and looked at before it is offered.
 */
export function soundFixes(snapshot: Snapshot, finding: Finding): readonly Fix[] {
  if (snapshot.document.problems.length === 0) return finding.fixes;
  return finding.fixes.filter((fix) => keepsPromise(snapshot, finding, fix));
}

function keepsPromise({ document, analysis, findings }: Snapshot, finding: Finding, fix: Fix): boolean {
  const text = carriedOut(document.text, fix);
  if (text === null || !keepsComments(document.text, text, finding)) return false;
  const read = readSpec(text, document.kind);
  if (faultsOf(document.problems) < faultsOf(read.problems)) return false;
  // What is still to be typed may be the very thing that is missing.
  if (fix.snippet || workedOut < text.length) return true;
  const after = runChecks(analyze(read, analysis.surroundings), checks);
  return !stillFound(findings, after, finding, fix);
}

/** Whether a change that no finding asked for leaves the file as sound as it was; a very long one is believed. */
export function bringsNothingNew({ document, analysis, findings }: Snapshot, fix: Fix): boolean {
  const text = carriedOut(document.text, fix);
  if (text === null || workedOut < text.length) return text !== null;
  const after = runChecks(analyze(readSpec(text, document.kind), analysis.surroundings), checks);
  const before = findings.findings.map(({ code }) => code);
  return after.findings.every(({ code }) => before.includes(code));
}

/** The text with the changes made, nothing typed into their stops; null where they overlap. */
function carriedOut(text: string, { changes, snippet }: Fix): string | null {
  const sorted = changes.toSorted((a, b) => a.span.start - b.span.start);
  let result = '';
  let from = 0;
  for (const { span, text: put } of sorted) {
    if (span.start < from) return null;
    result += text.slice(from, span.start) + (snippet ? withoutStops(put) : put);
    from = span.end;
  }
  return result + text.slice(from);
}

/** Comments go only with one side of a merge, or where the comment itself is what is mended. */
function keepsComments(before: string, after: string, { code, span }: Finding): boolean {
  if (code === 'conflict-markers') return true;
  const kept = commentsOf(after);
  return commentsOf(before).every((comment) => {
    const at = kept.indexOf(comment);
    if (at < 0) return code.startsWith('allow-') && before.slice(span.start, span.end).includes(comment);
    kept.splice(at, 1);
    return true;
  });
}

const commentsOf = (text: string): string[] =>
  commentsIn(text).map(({ start, end }) => text.slice(start, end).trim());

/** Faults that keep parts of a text from being read at all. */
const faultsOf = (problems: readonly { readonly code: string }[]): number =>
  problems.filter(({ code }) => code === 'yaml-syntax' || code === 'tab-indentation').length;

/** As many findings of that code as before, and this one still at its place. */
function stillFound(before: Findings, after: Findings, finding: Finding, fix: Fix): boolean {
  const alike = ({ findings }: Findings) => findings.filter(({ code }) => code === finding.code);
  if (alike(after).length < alike(before).length) return false;
  const shift = fix.changes
    .filter(({ span }) => span.end <= finding.span.start)
    .reduce((sum, { span, text }) => sum + text.length - (span.end - span.start), 0);
  return alike(after).some(({ span }) => span.start === finding.span.start + shift);
}
