import type { SpecDocument } from '../spec/document.ts';
import { allowLine } from '../spec/edit.ts';
import type { Fix } from '../spec/problem.ts';
import type { Finding } from './check.ts';

/** Findings about the text itself cannot be allowed: the file would stay unread. */
const mendOnly = new Set<Finding['group']>(['text', 'reference']);

/** The last fix of every finding: leave it as it is, with a reason to be written at the cursor. */
export function allowFix(spec: SpecDocument, finding: Finding): readonly Fix[] {
  if (mendOnly.has(finding.group)) return [];
  const changes = allowLine(spec, finding.path, finding.code, '$0');
  if (changes.length === 0) return [];
  return [{ title: `Allow ${finding.code} here, with a reason`, changes, snippet: true }];
}
