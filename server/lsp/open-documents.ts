import type { TextDocumentContentChangeEvent } from 'vscode-languageserver';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { isObject } from './settings.ts';

/** The texts in editors, kept in step by increments. Keys are the names of files in the workspace. */
export interface OpenDocuments {
  /** Null where the item has no text. */
  open(file: string, item: unknown): TextDocument | null;
  /** Null where the file is not open or the change says nothing that can be done. */
  change(file: string, version: unknown, changes: unknown): TextDocument | null;
  close(file: string): boolean;
  get(file: string): TextDocument | null;
  files(): readonly string[];
}

export function createOpenDocuments(): OpenDocuments {
  const documents = new Map<string, TextDocument>();
  return {
    open: (file, item) => {
      if (!isObject(item) || typeof item.uri !== 'string' || typeof item.text !== 'string') return null;
      const { uri, languageId, version, text } = item;
      const document = TextDocument.create(
        uri,
        typeof languageId === 'string' ? languageId : '',
        typeof version === 'number' ? version : 0,
        text,
      );
      documents.set(file, document);
      return document;
    },
    change: (file, version, changes) => {
      const document = documents.get(file);
      if (!document || !Array.isArray(changes)) return null;
      const sound = changes.filter(isChange);
      const next = typeof version === 'number' ? version : document.version + 1;
      const updated = TextDocument.update(document, sound, next);
      documents.set(file, updated);
      return updated;
    },
    close: (file) => documents.delete(file),
    get: (file) => documents.get(file) ?? null,
    files: () => [...documents.keys()],
  };
}

function isChange(change: unknown): change is TextDocumentContentChangeEvent {
  if (!isObject(change) || typeof change.text !== 'string') return false;
  const { range } = change;
  return range === undefined || (isObject(range) && isPlace(range.start) && isPlace(range.end));
}

export function isPlace(value: unknown): value is { line: number; character: number } {
  return isObject(value) && Number.isInteger(value.line) && Number.isInteger(value.character);
}
