import type { Finding } from '../../server/checks/check.ts';
import type { Fix } from '../../server/spec/problem.ts';

/** The text with a fix carried out; `$0`, where the cursor goes, is filled with what a person would type. */
export function applied(text: string, fix: Fix, typed = ''): string {
  const changes = [...fix.changes].sort((a, b) => b.span.start - a.span.start);
  return changes.reduce((now, { span, text: put }) => {
    const written = fix.snippet ? put.replace('$0', () => typed).replaceAll('\\$', '$') : put;
    return now.slice(0, span.start) + written + now.slice(span.end);
  }, text);
}

/** The fixes of a finding that mend it; the last of most findings only allows it. */
export function mending(finding: Finding): readonly Fix[] {
  return finding.fixes.filter((fix) => !isAllowance(fix));
}

export const isAllowance = (fix: Fix): boolean => /^Allow \S+ here, with a reason$/.test(fix.title);
