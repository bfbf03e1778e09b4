import type { CompletionList, Position } from 'vscode-languageserver-types';
import { cursorAt } from '../spec/cursor.ts';
import type { Snapshot } from '../workspace/workspace.ts';
import { allowSuggestions } from './complete-allowance.ts';
import { keySuggestions } from './complete-keys.ts';
import { kindSuggestions, nameSuggestions } from './complete-kinds.ts';
import { skeletonSuggestions } from './complete-skeleton.ts';
import { valueSuggestions } from './complete-values.ts';
import { completionItems, type ItemOptions, type Suggestion } from './completion-item.ts';
import { positionsOf } from './positions.ts';

export interface CompletionOptions extends ItemOptions {
  /** Every file of the workspace, for keys that name one. */
  readonly files: readonly string[];
}

/**
 * What may be written at a place: keys, kinds, names, values; from the text before it, broken or not. Values are
 * asked for anew with every letter: what fits depends on the number that is typed, and codes are many.
 */
export function completion(
  snapshot: Snapshot,
  at: Position,
  options: CompletionOptions,
): CompletionList | null {
  const { document } = snapshot;
  const positions = positionsOf(document);
  const offset = positions.offset(at);
  const comment = allowSuggestions(snapshot, offset);
  if (comment) {
    const items = completionItems(comment.suggestions, comment.replace, positions, options);
    return { isIncomplete: false, items };
  }
  const cursor = cursorAt(document.text, offset, document.kind);
  const all = suggestionsAt(snapshot, cursor, options);
  const suggestions = cursor.role !== 'key' && isDone(all, cursor.typed.trim()) ? [] : all;
  // `code:` without its space gets it with the value.
  const glued = cursor.role !== 'key' && document.text[cursor.replace.start - 1] === ':';
  const spaced = glued ? suggestions.map((item) => ({ ...item, text: ` ${item.text}` })) : suggestions;
  const items = completionItems(spaced, cursor.replace, positions, options);
  return { isIncomplete: cursor.role === 'value' || cursor.role === 'name', items };
}

/** Once it is written out there is nothing to suggest, and Enter is a new line again; a code may still get a suffix. */
function isDone(suggestions: readonly Suggestion[], typed: string): boolean {
  if (!suggestions.some(({ label }) => label === typed)) return false;
  return !suggestions.some(
    ({ kind, label }) => kind === 'code' && label !== typed && label.startsWith(typed),
  );
}

function suggestionsAt(
  snapshot: Snapshot,
  cursor: ReturnType<typeof cursorAt>,
  { files }: CompletionOptions,
): readonly Suggestion[] {
  switch (cursor.role) {
    case 'key':
      return [...skeletonSuggestions(snapshot), ...keySuggestions(snapshot, cursor)];
    case 'item-kind':
      return kindSuggestions(snapshot, cursor);
    case 'name':
      return nameSuggestions(snapshot, cursor);
    case 'value':
      return valueSuggestions(snapshot, cursor, files);
  }
}
