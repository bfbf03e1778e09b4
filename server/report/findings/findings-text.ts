import type { Finding, Severity } from '../../checks/check.ts';
import { rangesIn } from '../ranges.ts';
import type { CheckedFile } from './checked-file.ts';
import { printable } from './printable.ts';

const severities: readonly Severity[] = ['error', 'warning', 'information', 'hint'];

/** The findings for people: one place a line, so that an editor's terminal can open it. */
export function findingsText(files: readonly CheckedFile[]): string {
  const parts = files.flatMap(fileText);
  return `${[...parts, summary(files)].join('\n\n')}\n`;
}

function fileText({ path, text, findings: { findings, allowed } }: CheckedFile): readonly string[] {
  const range = rangesIn(text);
  const place = (finding: Finding): string => {
    const { line, character } = range(finding.span).start;
    return `${path}:${line + 1}:${character + 1}`;
  };
  const found = findings.map((finding) => {
    const fix = finding.fixes.find(({ preferred }) => preferred) ?? null;
    return [
      `${place(finding)}  ${finding.severity}  ${finding.code}`,
      `    ${printable(finding.message)}`,
      ...(fix ? [`    fix: ${printable(fix.title)}`] : []),
    ].join('\n');
  });
  const silenced = allowed.map(
    ({ finding, reason }) =>
      `${place(finding)}  allowed  ${finding.code}\n    ${printable(finding.message)}\n    because ${printable(reason)}`,
  );
  return [...found, ...silenced];
}

function summary(files: readonly CheckedFile[]): string {
  const findings = files.flatMap((file) => file.findings.findings);
  const looked = `${files.length} ${files.length === 1 ? 'file' : 'files'} checked`;
  if (findings.length === 0) {
    return `${looked}, nothing found. That is not a verdict: what is not written was not checked.`;
  }
  const counts = severities.flatMap((severity) => {
    const count = findings.filter((finding) => finding.severity === severity).length;
    return count === 0 ? [] : [`${count} ${plural(severity, count)}`];
  });
  const hit = files.filter((file) => file.findings.findings.length > 0).length;
  const where = files.length === 1 ? '' : ` in ${hit} of them`;
  return `${looked}: ${counts.join(', ')}${where}. Why each matters: hubwright explain CODE`;
}

function plural(severity: Severity, count: number): string {
  return count === 1 || severity === 'information' ? severity : `${severity}s`;
}
