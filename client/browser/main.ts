import * as vscode from 'vscode';
import {
  BrowserMessageReader,
  BrowserMessageWriter,
  LanguageClient,
  type MessageTransports,
} from 'vscode-languageclient/browser';
import { startClient, stopClient } from '../client.ts';

/** Starts the same server in a worker, where there are no processes. */
export function activate(context: vscode.ExtensionContext): void {
  const script = vscode.Uri.joinPath(context.extensionUri, 'dist', 'server-browser.js').toString(true);
  startClient(
    context,
    (options) => new LanguageClient('hubwright', 'Hubwright', async () => lineTo(script), options),
  );
}

/** An editor may put a worker of its own in place of the browser's, so the line to it is made here. */
function lineTo(script: string): MessageTransports {
  const worker = new Worker(script);
  return { reader: new BrowserMessageReader(worker), writer: new BrowserMessageWriter(worker) };
}

export function deactivate(): Promise<void> {
  return stopClient();
}
