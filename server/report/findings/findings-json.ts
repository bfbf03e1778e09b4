import type { Finding } from '../../checks/check.ts';
import { rangesIn } from '../ranges.ts';
import type { CheckedFile } from './checked-file.ts';

/** What `check --json` prints: a stable shape, documented in the README. */
export function findingsJson(files: readonly CheckedFile[]) {
  return { files: files.map(fileJson) };
}

function fileJson({ path, text, findings: { findings, allowed } }: CheckedFile) {
  const range = rangesIn(text);
  const one = (finding: Finding) => ({
    code: finding.code,
    severity: finding.severity,
    message: finding.message,
    range: range(finding.span),
    related: finding.related.map(({ span, message }) => ({ path, range: range(span), message })),
    data: finding.data,
  });
  return {
    path,
    findings: findings.map(one),
    allowed: allowed.map(({ finding, reason }) => ({ ...one(finding), reason })),
  };
}
