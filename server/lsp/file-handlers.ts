import {
  DidChangeConfigurationNotification,
  DidChangeWatchedFilesNotification,
  FileChangeType,
} from 'vscode-languageserver';
import type { Session } from './session.ts';
import { reconfigured } from './settings.ts';

/** Files are waited for at most this long before the first findings, ms. */
const patience = 400;

/** Reads the files of the workspace, then shows the findings of what is open, and of all when asked to. */
export async function loadFolders(session: Session, folders: readonly string[]): Promise<void> {
  const { connection, publisher, files, host, guard, settings } = session;
  const callOff = host.schedule(() => guard.run('the first findings', publisher.release), patience);
  if (settings.watchesFiles) {
    const watchers = [{ globPattern: '**/*.{hub,wheel,workshop}.{yaml,yml}' }];
    guard.run('watching files', () =>
      connection.client.register(DidChangeWatchedFilesNotification.type, { watchers }).then(() => {}),
    );
  }
  guard.run('watching settings', () =>
    session.settings.options.changed
      ? connection.client
          .register(DidChangeConfigurationNotification.type, { section: 'hubwright' })
          .then(() => {})
      : undefined,
  );
  try {
    await files.load(folders);
  } finally {
    callOff();
    publisher.release();
    refreshAll(session);
  }
}

/** Follows the files that change outside the editor, the folders and the settings. */
export function listenToFiles(session: Session): void {
  const { connection, workspace, files, publisher, uris, guard } = session;
  connection.onDidChangeWatchedFiles(({ changes }) =>
    guard.run('changed files', async () => {
      for (const { uri, type } of changes) {
        const file = uris.file(uri);
        const before = workspace.dependents(file);
        if (type === FileChangeType.Deleted) workspace.setFile(file, null);
        else await files.reload(file);
        publisher.around([file, ...before, ...workspace.dependents(file)]);
      }
    }),
  );
  connection.onDidChangeConfiguration(({ settings }) =>
    guard.run('changed settings', () => {
      session.settings = reconfigured(session.settings, settings);
      session.everywhere = session.settings.options.check === 'workspace';
      refreshAll(session);
    }),
  );
  connection.onNotification('workspace/didChangeWorkspaceFolders', () =>
    guard.run('changed folders', async () => {
      const folders = (await connection.workspace.getWorkspaceFolders()) ?? [];
      await files.load(folders.map(({ uri }) => uri));
      refreshAll(session);
    }),
  );
}

/** Findings of every file that shows some, or should. */
export function refreshAll({ workspace, documents, publisher }: Session): void {
  publisher.around(new Set([...documents.files(), ...workspace.files()]));
}
