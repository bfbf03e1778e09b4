import type { Finding } from '../../server/checks/check.ts';
import { commentsIn } from '../../server/spec/comments.ts';
import type { Fix } from '../../server/spec/problem.ts';
import type { Snapshot } from '../../server/workspace/workspace.ts';
import { applied, isAllowance } from '../checks/apply.ts';
import { lookAt } from './samples.ts';
import { complaints } from './soundness.ts';

const reason = 'the drawing of this hub asks for it';

/** Carries one fix out and says what is wrong with the text it leaves. */
export function tried(name: string, before: Snapshot, finding: Finding, fix: Fix): readonly string[] {
  const { text } = before.document;
  const typed = isAllowance(fix) || finding.code.startsWith('allow-') ? reason : '';
  const after = lookAt(name, applied(text, fix, typed));
  const wrong = [...complaints(after)];
  if (brokenIn(before) < brokenIn(after)) wrong.push('the text it leaves is broken where it was not');
  const kept = commentsOf(after.document.text);
  for (const comment of commentsOf(text)) {
    const at = kept.indexOf(comment);
    if (at < 0 && !isOwn(finding, comment)) wrong.push(`the comment ${comment} is gone`);
    kept.splice(at, at < 0 ? 0 : 1);
  }
  // What is to be typed at the cursor may be the very thing that is missing.
  // A list that is full goes on with what was left out of it.
  const full = before.document.problems.length === 100;
  const typedLater = fix.snippet === true && typed === '';
  if (!typedLater && !full && !silenced(before, after, finding, fix))
    wrong.push(`${finding.code} is still found`);
  return wrong.map((line) => `${finding.code}, ${fix.title}: ${line}`);
}

/** Where a place of the text lies once the fix is carried out. */
function moved(offset: number, fix: Fix): number {
  return fix.changes
    .filter(({ span }) => span.end <= offset)
    .reduce((at, { span, text }) => at + text.length - (span.end - span.start), offset);
}

/** The finding of that code at that place is gone: another one like it may stand elsewhere. */
function silenced(before: Snapshot, after: Snapshot, finding: Finding, fix: Fix): boolean {
  const { code, span, message } = finding;
  const same = ({ findings }: Snapshot): readonly Finding[] =>
    findings.findings.filter((other) => other.code === code);
  if (same(after).length < same(before).length) return true;
  const at = moved(span.start, fix);
  return !same(after).some((other) => other.span.start === at && other.message === message);
}

const brokenIn = ({ document }: Snapshot): number =>
  document.problems.filter(({ code }) => code === 'yaml-syntax' || code === 'tab-indentation').length;

const commentsOf = (text: string): string[] =>
  commentsIn(text).map(({ start, end }) => text.slice(start, end).trim());

/** One side of a merge goes with its comments, and an allowance is a comment itself. */
function isOwn({ code }: Finding, comment: string): boolean {
  return code === 'conflict-markers' || (code.startsWith('allow-') && comment.includes('allow'));
}
