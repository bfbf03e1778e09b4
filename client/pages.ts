import * as vscode from 'vscode';
import { type ExplainAnswer, explainRequest, pageScheme } from '../server/protocol/requests.ts';
import type { ServerLine } from './server-line.ts';

/** Serves the page of each finding as a read-only document: `hubwright-page:/spacer-short.md`. */
export function registerPages(context: vscode.ExtensionContext, line: ServerLine): void {
  const provider: vscode.TextDocumentContentProvider = {
    provideTextDocumentContent: async (uri) => {
      const code = codeOf(uri);
      const page = await line.ask<ExplainAnswer | null>(explainRequest, { code });
      return page?.markdown ?? `There is no page about ${code}.\n`;
    },
  };
  context.subscriptions.push(vscode.workspace.registerTextDocumentContentProvider(pageScheme, provider));
}

export const pageUri = (code: string): vscode.Uri =>
  vscode.Uri.from({ scheme: pageScheme, path: `/${code}.md` });

const codeOf = (uri: vscode.Uri): string => uri.path.replace(/^\/|\.md$/g, '');
