import * as vscode from 'vscode';
import { LanguageClient, TransportKind } from 'vscode-languageclient/node';
import { startClient, stopClient } from '../client.ts';

/** Starts the server as a process of its own, spoken to over its pipe to the editor. */
export function activate(context: vscode.ExtensionContext): void {
  const module = vscode.Uri.joinPath(context.extensionUri, 'dist', 'server-node.cjs').fsPath;
  startClient(
    context,
    (options) =>
      new LanguageClient('hubwright', 'Hubwright', { module, transport: TransportKind.ipc }, options),
  );
}

export function deactivate(): Promise<void> {
  return stopClient();
}
