import { type Diagnostic, DiagnosticSeverity } from 'vscode-languageserver-types';
import type { Finding, Severity } from '../checks/check.ts';
import type { Snapshot } from '../workspace/workspace.ts';
import { positionsOf } from './positions.ts';

/** More than this many are noise; the last one then says how many were left out. */
const atMost = 100;

const severities: Readonly<Record<Severity, DiagnosticSeverity>> = {
  error: DiagnosticSeverity.Error,
  warning: DiagnosticSeverity.Warning,
  information: DiagnosticSeverity.Information,
  hint: DiagnosticSeverity.Hint,
};

/** How findings are addressed to a client. */
export interface DiagnosticOptions {
  readonly uri: string;
  /** Where the page of a code can be opened; null when the client cannot. */
  readonly pageOf: ((code: string) => string) | null;
}

/** The findings of a file as the protocol has them. */
export function diagnostics(snapshot: Snapshot, options: DiagnosticOptions): Diagnostic[] {
  const { findings } = snapshot.findings;
  const shown = findings.slice(0, atMost).map((finding) => diagnosticOf(snapshot, finding, options));
  const last = shown.at(-1);
  const left = findings.length - atMost;
  if (0 < left && last) {
    const { range } = last;
    const amount = left === 1 ? '1 more finding is' : `${left} more findings are`;
    const message = `${amount} not shown — mend some of those above first`;
    shown.push({
      range,
      severity: DiagnosticSeverity.Information,
      source: 'hubwright',
      code: 'more-findings',
      message,
    });
  }
  return shown;
}

export function diagnosticOf(
  snapshot: Snapshot,
  finding: Finding,
  { uri, pageOf }: DiagnosticOptions,
): Diagnostic {
  const { range } = positionsOf(snapshot.document);
  return {
    range: range(finding.span),
    severity: severities[finding.severity],
    source: 'hubwright',
    code: finding.code,
    ...(pageOf ? { codeDescription: { href: pageOf(finding.code) } } : {}),
    message: finding.message,
    relatedInformation: finding.related.map(({ span, message }) => ({
      location: { uri, range: range(span) },
      message,
    })),
    data: finding.data,
  };
}
