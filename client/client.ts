import * as vscode from 'vscode';
import type { BaseLanguageClient, LanguageClientOptions } from 'vscode-languageclient';
import {
  type ClientOptions,
  type FindFilesAnswer,
  type FindFilesParams,
  findFilesRequest,
  type ReadFileAnswer,
  type ReadFileParams,
  readFileRequest,
} from '../server/protocol/requests.ts';
import { registerCommands } from './commands.ts';
import { findFiles, readFile } from './file-access.ts';
import { registerPages } from './pages.ts';
import { registerPreview } from './preview-panel.ts';
import { createServerLine } from './server-line.ts';

let running: BaseLanguageClient | null = null;

/** Starts the server and everything that shows what it says. Commands are there at once and wait for it. */
export function startClient(
  context: vscode.ExtensionContext,
  newClient: (options: LanguageClientOptions) => BaseLanguageClient,
): void {
  const channel = vscode.window.createOutputChannel('Hubwright', { log: true });
  const client = newClient({
    documentSelector: ['hub-spec', 'wheel-spec', 'workshop-spec'].map((language) => ({ language })),
    outputChannel: channel,
    initializationOptions: clientOptions(),
  });
  running = client;
  client.onRequest(readFileRequest, ({ uri }: ReadFileParams): Promise<ReadFileAnswer> => readFile(uri));
  client.onRequest(findFilesRequest, async ({ folder, deep }: FindFilesParams): Promise<FindFilesAnswer> => {
    const found = await findFiles(folder, deep);
    return { uris: found.map((uri) => client.code2ProtocolConverter.asUri(uri)) };
  });
  const line = createServerLine(client, client.start());
  registerPages(context, line);
  const preview = registerPreview(context, line);
  registerCommands(context, line, preview);
  context.subscriptions.push(channel);
}

export async function stopClient(): Promise<void> {
  await running?.stop();
  running = null;
}

function clientOptions(): ClientOptions {
  const check = vscode.workspace.getConfiguration('hubwright').get<ClientOptions['check']>('check') ?? 'open';
  return { files: true, explain: true, suggestAgain: true, changed: true, check };
}
