import type { Session } from './session.ts';

/** Keeps the texts in editors in step, and answers each change with findings. */
export function listenToDocuments(session: Session): void {
  const { connection, documents, workspace, publisher, uris, guard } = session;
  connection.onDidOpenTextDocument((params) =>
    guard.run('an opened file', async () => {
      const uri = params?.textDocument?.uri;
      if (typeof uri === 'string') uris.named(uri, params.textDocument.languageId);
      const file = typeof uri === 'string' ? uris.file(uri) : null;
      const document = file === null ? null : documents.open(file, params.textDocument);
      if (file === null || !document) return;
      workspace.open(file, document.getText());
      await session.files.loadBeside(file);
      publisher.edited(file);
    }),
  );
  connection.onDidChangeTextDocument((params) =>
    guard.run('an edit', () => {
      const uri = params?.textDocument?.uri;
      const file = typeof uri === 'string' ? uris.file(uri) : null;
      if (file === null) return;
      const document = documents.change(file, params.textDocument.version, params.contentChanges);
      if (!document) return;
      workspace.open(file, document.getText());
      publisher.edited(file);
    }),
  );
  connection.onDidCloseTextDocument((params) =>
    guard.run('a closed file', () => {
      const uri = params?.textDocument?.uri;
      const file = typeof uri === 'string' ? uris.file(uri) : null;
      if (file === null || !documents.close(file)) return;
      const dependents = workspace.dependents(file);
      workspace.close(file);
      publisher.clear(file);
      publisher.around(dependents);
    }),
  );
}
