import * as vscode from 'vscode';
import { LanguageClient } from 'vscode-languageclient/browser';
import { startClient, stopClient } from '../client.ts';

/** Starts the same server in a worker, where there are no processes. */
export function activate(context: vscode.ExtensionContext): void {
  const script = vscode.Uri.joinPath(context.extensionUri, 'dist', 'server-browser.js').toString(true);
  startClient(
    context,
    (options) => new LanguageClient('hubwright', 'Hubwright', async () => new Worker(script), options),
  );
}

export function deactivate(): Promise<void> {
  return stopClient();
}
