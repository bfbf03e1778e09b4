import {
  LSPErrorCodes,
  ResponseError,
  type TextDocumentPositionParams,
  type WorkspaceEdit,
} from 'vscode-languageserver';
import { codeActions } from '../features/code-actions.ts';
import { completion } from '../features/completion.ts';
import { definition } from '../features/definition.ts';
import { documentLinks } from '../features/document-links.ts';
import { documentSymbols } from '../features/document-symbols.ts';
import { hover } from '../features/hover.ts';
import { inlayHints } from '../features/inlay-hints.ts';
import { references } from '../features/references.ts';
import { rename, renameRange } from '../features/rename.ts';
import { explainCommand } from '../protocol/requests.ts';
import type { Snapshot } from '../workspace/workspace.ts';
import { isPlace } from './open-documents.ts';
import { pageOf, type Session } from './session.ts';

/** Answers what editors ask of a file: each handler is one feature over one snapshot. */
export function answerLanguageRequests(session: Session): void {
  const { connection, guard, documents, uris } = session;
  const at = <T>(params: TextDocumentPositionParams, empty: T, feature: (snapshot: Snapshot) => T): T => {
    const snapshot = session.snapshot(params?.textDocument?.uri);
    return snapshot && isPlace(params.position) ? feature(snapshot) : empty;
  };

  connection.onHover((params, token) =>
    guard.request(token, null, () => at(params, null, (snapshot) => hover(snapshot, params.position))),
  );
  connection.onCompletion((params, token) =>
    guard.request(token, null, () => {
      const { snippetCompletions: snippets, options } = session.settings;
      return at(params, null, (snapshot) =>
        completion(snapshot, params.position, {
          snippets,
          suggestAgain: options.suggestAgain,
          files: session.workspace.files(),
        }),
      );
    }),
  );
  connection.onCodeAction((params, token) =>
    guard.request(token, [], () => {
      const snapshot = session.snapshot(params?.textDocument?.uri);
      const { range } = params;
      if (!snapshot || !isPlace(range?.start) || !isPlace(range?.end)) return [];
      return codeActions(snapshot, range, {
        uri: uris.uri(snapshot.file),
        pageOf: pageOf(session),
        version: documents.get(snapshot.file)?.version ?? null,
        snippets: session.settings.snippetEdits,
        only: params.context?.only ?? null,
        explain: session.settings.options.explain ? explainCommand : null,
      });
    }),
  );
  connection.onDocumentSymbol((params, token) =>
    guard.request(token, [], () => {
      const snapshot = session.snapshot(params?.textDocument?.uri);
      return snapshot ? documentSymbols(snapshot) : [];
    }),
  );
  connection.languages.inlayHint.on((params, token) =>
    guard.request(token, [], () => {
      const snapshot = session.snapshot(params?.textDocument?.uri);
      const { range } = params;
      if (!snapshot || !isPlace(range?.start) || !isPlace(range?.end)) return [];
      return inlayHints(snapshot, range);
    }),
  );
  const around = {
    snapshot: (file: string) => session.workspace.snapshot(file),
    dependents: session.workspace.dependents,
    uriOf: uris.uri,
    versionOf: (file: string) => documents.get(file)?.version ?? null,
  };
  connection.onDefinition((params, token) =>
    guard.request(token, [], () =>
      at(params, [], (snapshot) => definition(snapshot, params.position, around)),
    ),
  );
  connection.onReferences((params, token) =>
    guard.request(token, [], () =>
      at(params, [], (snapshot) =>
        references(snapshot, params.position, around, params.context?.includeDeclaration !== false),
      ),
    ),
  );
  connection.onPrepareRename((params, token) =>
    guard.request(token, null, () => at(params, null, (snapshot) => renameRange(snapshot, params.position))),
  );
  connection.onRenameRequest((params, token) =>
    guard.request<WorkspaceEdit | ResponseError<void> | null>(token, null, () =>
      at<WorkspaceEdit | ResponseError<void> | null>(params, null, (snapshot) => {
        const edit = rename(snapshot, params.position, String(params.newName), around);
        if (!edit || !('refused' in edit)) return edit;
        return new ResponseError<void>(LSPErrorCodes.RequestFailed, edit.refused);
      }),
    ),
  );
  connection.onDocumentLinks((params, token) =>
    guard.request(token, [], () => {
      const snapshot = session.snapshot(params?.textDocument?.uri);
      return snapshot ? documentLinks(snapshot, uris.uri) : [];
    }),
  );
}
