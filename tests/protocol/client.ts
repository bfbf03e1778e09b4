import type {
  Diagnostic,
  InitializeResult,
  ProtocolConnection,
  PublishDiagnosticsParams,
} from 'vscode-languageserver/node';
import type { Line } from './lines.ts';

/** The little a test needs of an editor: it opens and edits files, and waits for findings. */
export interface Client {
  readonly connection: ProtocolConnection;
  readonly line: Line;
  /** What the server said of itself. */
  readonly started: InitializeResult;
  /** Everything the server put in its log. */
  readonly log: readonly string[];
  /** Findings as they came, latest last. */
  readonly published: readonly PublishDiagnosticsParams[];
  open(uri: string, text: string, languageId?: string): Promise<void>;
  change(uri: string, version: number, changes: readonly unknown[]): Promise<void>;
  /** The findings of a version of a file, once they are there. */
  findings(uri: string, version?: number): Promise<readonly Diagnostic[]>;
  /** Waits until what was published fulfils a condition. */
  until(what: string, met: (published: readonly PublishDiagnosticsParams[]) => boolean): Promise<void>;
  ask<Answer = unknown>(method: string, params: unknown): Promise<Answer>;
}

export interface ClientSetup {
  readonly capabilities?: object;
  readonly initializationOptions?: object;
  readonly folders?: readonly string[];
  /** Requests of the server, answered. */
  readonly answers?: Readonly<Record<string, (params: never) => unknown>>;
}

/** Starts a session with the server at the other end of a line. */
export async function startClient(line: Line, setup: ClientSetup = {}): Promise<Client> {
  const { connection } = line;
  const published: PublishDiagnosticsParams[] = [];
  const log: string[] = [];
  const waiting = new Set<() => void>();
  connection.onNotification('textDocument/publishDiagnostics', (params: PublishDiagnosticsParams) => {
    published.push(params);
    for (const look of waiting) look();
  });
  connection.onNotification(
    'window/logMessage',
    ({ message }: { message: string }) => void log.push(message),
  );
  connection.onRequest('client/registerCapability', () => null);
  for (const [method, answer] of Object.entries(setup.answers ?? {}))
    connection.onRequest(method, answer as never);

  const started = await connection.sendRequest<InitializeResult>('initialize', {
    processId: null,
    rootUri: null,
    capabilities: setup.capabilities ?? {},
    workspaceFolders: (setup.folders ?? []).map((uri) => ({ uri, name: 'folder' })),
    ...(setup.initializationOptions ? { initializationOptions: setup.initializationOptions } : {}),
  });
  await connection.sendNotification('initialized', {});

  const until: Client['until'] = (what, met) =>
    new Promise((resolve, reject) => {
      const patience = setTimeout(() => {
        waiting.delete(look);
        reject(new Error(`waited 10 s for ${what}; the log says ${log.join('\n')}`));
      }, 10_000);
      const look = (): void => {
        if (!met(published)) return;
        clearTimeout(patience);
        waiting.delete(look);
        resolve();
      };
      waiting.add(look);
      look();
    });
  const latest = (uri: string, version?: number) =>
    published.findLast(
      (params) => params.uri === uri && (version === undefined || params.version === version),
    );

  return {
    connection,
    line,
    started,
    log,
    published,
    until,
    open: (uri, text, languageId = 'hub-spec') =>
      connection.sendNotification('textDocument/didOpen', {
        textDocument: { uri, languageId, version: 1, text },
      }),
    change: (uri, version, contentChanges) =>
      connection.sendNotification('textDocument/didChange', {
        textDocument: { uri, version },
        contentChanges,
      }),
    findings: async (uri, version) => {
      await until(`findings of ${uri}`, () => latest(uri, version) !== undefined);
      return latest(uri, version)?.diagnostics ?? [];
    },
    ask: (method, params) => connection.sendRequest(method, params as object),
  };
}
