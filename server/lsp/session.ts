import type { Connection } from 'vscode-languageserver';
import { diagnostics } from '../features/diagnostics.ts';
import {
  changedNotification,
  type FindFilesAnswer,
  findFilesRequest,
  pageScheme,
  type ReadFileAnswer,
  readFileRequest,
} from '../protocol/requests.ts';
import { createWorkspace, type Snapshot, type Workspace } from '../workspace/workspace.ts';
import { createGuard, type Guard, type Life } from './guard.ts';
import type { Files, Host } from './host.ts';
import { createOpenDocuments, type OpenDocuments } from './open-documents.ts';
import { createPublisher, type Publisher } from './publisher.ts';
import { initialSettings, type Settings } from './settings.ts';
import { createUris, type Uris } from './uris.ts';
import { createWorkspaceFiles, type WorkspaceFiles } from './workspace-files.ts';

/** Everything one connection has: made once, handed to every handler. */
export interface Session {
  readonly connection: Connection;
  readonly host: Host;
  readonly workspace: Workspace;
  readonly documents: OpenDocuments;
  readonly uris: Uris;
  readonly files: WorkspaceFiles;
  readonly publisher: Publisher;
  readonly guard: Guard;
  readonly log: (message: string) => void;
  /** What a URI stands for now; null for a file that is no spec or is not known. */
  snapshot(uri: unknown): Snapshot | null;
  life: Life;
  settings: Settings;
  /** Whether files that are not open get findings too. */
  everywhere: boolean;
}

export function createSession(connection: Connection, host: Host): Session {
  const workspace = createWorkspace();
  const documents = createOpenDocuments();
  const uris = createUris();
  const log = (message: string): void => connection.console.error(message);
  const guard = createGuard(() => session.life, log);
  const files = createWorkspaceFiles(workspace, uris, () =>
    session.settings.options.files ? clientFiles(connection) : host,
  );
  const reported = new Set<string>();
  const snapshot = (file: string): Snapshot | null => {
    const made = workspace.snapshot(file);
    for (const { code, error } of made?.findings.broken ?? []) {
      if (reported.has(code)) continue;
      reported.add(code);
      log(`the check ${code} failed: ${error instanceof Error ? error.stack : String(error)}`);
    }
    return made;
  };
  const publisher = createPublisher({
    host,
    snapshot,
    dependents: workspace.dependents,
    wanted: (file) => session.everywhere || documents.get(file) !== null,
    toDiagnostics: (made) => diagnostics(made, { uri: uris.uri(made.file), pageOf: pageOf(session) }),
    send: (file, found) => {
      const uri = uris.uri(file);
      const version = documents.get(file)?.version;
      const params = { uri, diagnostics: found, ...(version === undefined ? {} : { version }) };
      void connection.sendDiagnostics(params);
      if (session.settings.options.changed) void connection.sendNotification(changedNotification, { uri });
    },
    settled: () => {
      if (session.settings.refreshesHints)
        guard.run('new hints', () => connection.languages.inlayHint.refresh());
    },
    guarded: guard.run,
  });
  const session: Session = {
    connection,
    host,
    workspace,
    documents,
    uris,
    files,
    publisher,
    guard,
    log,
    snapshot: (uri) => (typeof uri === 'string' ? snapshot(uris.file(uri)) : null),
    life: 'waiting',
    settings: initialSettings,
    everywhere: false,
  };
  return session;
}

/** Where a client can open the page of a finding; null for one that serves no pages. */
export function pageOf({ settings }: Session): ((code: string) => string) | null {
  return settings.options.explain ? (code) => `${pageScheme}:/${code}.md` : null;
}

/** Files as the client sees them: also where there is no disk. */
function clientFiles(connection: Connection): Files {
  return {
    readFile: async (uri) => {
      const answer = await connection.sendRequest<ReadFileAnswer | null>(readFileRequest, { uri });
      return answer?.text ?? null;
    },
    findFiles: async (folder, deep) => {
      const answer = await connection.sendRequest<FindFilesAnswer | null>(findFilesRequest, { folder, deep });
      return answer?.uris ?? [];
    },
  };
}
