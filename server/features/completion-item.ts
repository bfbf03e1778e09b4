import {
  type CompletionItem,
  CompletionItemKind,
  InsertTextFormat,
  InsertTextMode,
  MarkupKind,
} from 'vscode-languageserver-types';
import type { Span } from '../spec/place.ts';
import type { Positions } from './positions.ts';
import { withoutStops } from './text-edits.ts';

/** What may be written at the cursor, before it is put in the protocol's shape. */
export interface Suggestion {
  readonly label: string;
  /** What is written in place of the word; a snippet when it holds `$`. */
  readonly text: string;
  readonly kind: 'key' | 'value' | 'part' | 'name' | 'code' | 'file' | 'skeleton';
  /** On the same line, in a few words: sizes, limits. */
  readonly detail?: string;
  readonly documentation?: string;
  /** What typed letters are compared with, where it is not the label. */
  readonly filter?: string;
  /** The one most likely meant. */
  readonly usual?: boolean;
  /** The value comes next: the list opens again. */
  readonly more?: boolean;
  /** What it replaces, where that is not the word at the cursor. */
  readonly replace?: Span;
}

export interface ItemOptions {
  readonly snippets: boolean;
  readonly suggestAgain: boolean;
}

const kinds = {
  key: CompletionItemKind.Property,
  value: CompletionItemKind.Value,
  part: CompletionItemKind.Module,
  name: CompletionItemKind.Reference,
  code: CompletionItemKind.Constant,
  file: CompletionItemKind.File,
  skeleton: CompletionItemKind.Snippet,
} as const;

/** Suggestions as completion items, in the order given: the best first. */
export function completionItems(
  suggestions: readonly Suggestion[],
  replace: Span,
  positions: Positions,
  options: ItemOptions,
): CompletionItem[] {
  const range = positions.range(replace);
  return suggestions.map((suggestion, index) => {
    const { label, text, kind, detail, documentation, filter, usual, more, replace: own } = suggestion;
    const snippet = options.snippets && /(?<!\\)\$/.test(text);
    return {
      label,
      kind: kinds[kind],
      sortText: String(index).padStart(4, '0'),
      ...(detail ? { detail } : {}),
      ...(documentation ? { documentation: { kind: MarkupKind.Markdown, value: documentation } } : {}),
      ...(filter ? { filterText: filter } : {}),
      ...(usual ? { preselect: true } : {}),
      insertTextFormat: snippet ? InsertTextFormat.Snippet : InsertTextFormat.PlainText,
      // Lines carry their own indentation.
      insertTextMode: InsertTextMode.asIs,
      textEdit: {
        range: own ? positions.range(own) : range,
        newText: snippet ? text : withoutStops(text),
      },
      ...(more && options.suggestAgain
        ? { command: { title: 'Suggest', command: 'editor.action.triggerSuggest' } }
        : {}),
    };
  });
}

/** Text that means nothing else in a snippet. */
export function literal(text: string): string {
  return text.replace(/[\\$}]/g, '\\$&');
}
