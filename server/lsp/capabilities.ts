import { CodeActionKind, type ServerCapabilities, TextDocumentSyncKind } from 'vscode-languageserver';
import type { Settings } from './settings.ts';

/** What the server offers. */
export function capabilities({ workspaceFolders }: Settings): ServerCapabilities {
  return {
    positionEncoding: 'utf-16',
    textDocumentSync: { openClose: true, change: TextDocumentSyncKind.Incremental },
    hoverProvider: true,
    completionProvider: { triggerCharacters: [' ', '-', '.', '{', '#'] },
    codeActionProvider: { codeActionKinds: [CodeActionKind.QuickFix, CodeActionKind.RefactorRewrite] },
    documentSymbolProvider: true,
    documentLinkProvider: {},
    definitionProvider: true,
    referencesProvider: true,
    renameProvider: { prepareProvider: true },
    inlayHintProvider: true,
    ...(workspaceFolders
      ? { workspace: { workspaceFolders: { supported: true, changeNotifications: true } } }
      : {}),
  };
}
