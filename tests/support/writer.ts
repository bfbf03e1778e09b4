import type { CompletionItem } from 'vscode-languageserver-types';
import { completion } from '../../server/features/completion.ts';
import { positionsIn } from '../../server/features/positions.ts';
import { createWorkspace } from '../../server/workspace/workspace.ts';
import { testFile } from './spec-at-cursor.ts';

/** Somebody who writes a file with the list of suggestions: types, takes suggestions, and sees what comes of it. */
export interface Writer {
  type(text: string): void;
  /** What is offered at the cursor, best first. */
  offered(): readonly CompletionItem[];
  /** Takes the suggestion of that label, its stops left as they are; the cursor goes to the last one. */
  take(label: string): void;
  /** The key Enter: the next line is indented like this one, further in behind a colon. */
  enter(): void;
  text(): string;
}

export function writer(start = '', file = testFile, around: Readonly<Record<string, string>> = {}): Writer {
  let cursor = start.includes('$0') ? start.indexOf('$0') : start.length;
  let text = start.replace('$0', '');
  const offered = (): readonly CompletionItem[] => {
    const workspace = createWorkspace();
    for (const [name, content] of Object.entries(around)) workspace.setFile(name, content);
    workspace.open(file, text);
    const snapshot = workspace.snapshot(file);
    if (!snapshot) throw new Error(`${file} is no spec file`);
    const options = { snippets: true, suggestAgain: true, files: workspace.files() };
    return completion(snapshot, positionsIn(text).position(cursor), options)?.items ?? [];
  };
  return {
    type: (typed) => {
      text = text.slice(0, cursor) + typed + text.slice(cursor);
      cursor += typed.length;
    },
    offered,
    take: (label) => {
      const item = offered().find((other) => other.label === label);
      if (!item?.textEdit || !('range' in item.textEdit)) {
        throw new Error(`${label} is not offered, but ${offered().map((other) => other.label)}`);
      }
      const { offset } = positionsIn(text);
      const { range, newText } = item.textEdit;
      const [start, end] = [offset(range.start), offset(range.end)];
      const filled = newText.replace(/\$\{\d+:((?:\\.|[^}])*)\}/g, '$1').replace(/\$[1-9]/g, '');
      const stop = filled.includes('$0') ? filled.indexOf('$0') : filled.length;
      const written = filled.replace('$0', '').replace(/\\([\\$}])/g, '$1');
      text = text.slice(0, start) + written + text.slice(end);
      cursor = start + stop;
    },
    enter: () => {
      const line = text.slice(0, cursor).split('\n').at(-1) ?? '';
      const indent = /^[ ]*/.exec(line)?.[0] ?? '';
      const deeper = /:\s*$/.test(line) ? '  ' : '';
      text = `${text.slice(0, cursor)}\n${indent}${deeper}${text.slice(cursor)}`;
      cursor += 1 + indent.length + deeper.length;
    },
    text: () => text,
  };
}
