import { type CodeAction, CodeActionKind, type Range } from 'vscode-languageserver-types';
import type { Finding } from '../checks/check.ts';
import type { Snapshot } from '../workspace/workspace.ts';
import { type DiagnosticOptions, diagnosticOf } from './diagnostics.ts';
import { exchangeActions } from './exchange-actions.ts';
import { positionsOf } from './positions.ts';
import { soundFixes } from './sound-fixes.ts';
import { spacerActions } from './spacer-actions.ts';
import { textEdits } from './text-edits.ts';

export interface CodeActionOptions extends DiagnosticOptions {
  /** The version of the text the snapshot was taken of; the edit holds for no other. */
  readonly version: number | null;
  /** Whether the client takes snippets in edits. */
  readonly snippets: boolean;
  /** Kinds asked for; null for all. */
  readonly only: readonly string[] | null;
  /** The command that opens the page of a finding, where the client has it. */
  readonly explain: string | null;
}

/** The fixes of the findings that a range touches and what could be written instead, for the text as it is now. */
export function codeActions(snapshot: Snapshot, range: Range, options: CodeActionOptions): CodeAction[] {
  const wants = (offered: CodeActionKind): boolean =>
    options.only?.some((kind) => `${offered}.`.startsWith(`${kind}.`)) ?? true;
  return [
    ...(wants(CodeActionKind.QuickFix) ? quickFixes(snapshot, range, options) : []),
    ...(wants(CodeActionKind.RefactorRewrite)
      ? [...spacerActions(snapshot, range, options), ...exchangeActions(snapshot, range, options)]
      : []),
  ];
}

function quickFixes(snapshot: Snapshot, range: Range, options: CodeActionOptions): CodeAction[] {
  const positions = positionsOf(snapshot.document);
  const [start, end] = [positions.offset(range.start), positions.offset(range.end)];
  const touched = snapshot.findings.findings.filter(({ span }) => span.start <= end && start <= span.end);
  return [
    ...touched.flatMap((finding) => fixesOf(snapshot, finding, options)),
    ...touched.flatMap((finding) => explanationOf(finding, options)),
  ];
}

function fixesOf(snapshot: Snapshot, finding: Finding, options: CodeActionOptions): CodeAction[] {
  const positions = positionsOf(snapshot.document);
  const diagnostic = diagnosticOf(snapshot, finding, options);
  const { uri, version, snippets } = options;
  return soundFixes(snapshot, finding).map((fix) => ({
    title: fix.title,
    kind: CodeActionKind.QuickFix,
    diagnostics: [diagnostic],
    ...(fix.preferred ? { isPreferred: true } : {}),
    edit: {
      documentChanges: [
        {
          textDocument: { uri, version },
          edits: textEdits(fix, snapshot.document.text, positions, snippets),
        },
      ],
    },
  }));
}

function explanationOf({ code }: Finding, { explain }: CodeActionOptions): CodeAction[] {
  if (!explain) return [];
  const title = `Read about ${code}`;
  return [{ title, kind: CodeActionKind.QuickFix, command: { title, command: explain, arguments: [code] } }];
}
