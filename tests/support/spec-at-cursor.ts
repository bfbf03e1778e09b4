import type { Position } from 'vscode-languageserver-types';
import { positionsIn } from '../../server/features/positions.ts';
import { createWorkspace, type Snapshot } from '../../server/workspace/workspace.ts';

export const testFile = 'file:///saltmarsh/dunlin-front.hub.yaml';

/** A file with `$0` where the cursor is, read and worked out; files around it by name. */
export function specAtCursor(
  marked: string,
  around: Readonly<Record<string, string>> = {},
  file = testFile,
): {
  readonly snapshot: Snapshot;
  readonly position: Position;
  readonly text: string;
  readonly offset: number;
} {
  const offset = Math.max(marked.indexOf('$0'), 0);
  const text = marked.replace('$0', '');
  const workspace = createWorkspace();
  workspace.setRoots(['file:///saltmarsh']);
  for (const [name, content] of Object.entries(around))
    workspace.setFile(`file:///saltmarsh/${name}`, content);
  workspace.open(file, text);
  const snapshot = workspace.snapshot(file);
  if (!snapshot) throw new Error(`${file} is no spec file`);
  return { snapshot, position: positionsIn(text).position(offset), text, offset };
}

/** A text after edits of the protocol, the snippets among them with their stops left empty. */
export function edited(
  text: string,
  edits: readonly {
    range: { start: Position; end: Position };
    newText?: string;
    snippet?: { value: string };
  }[],
): string {
  const { offset } = positionsIn(text);
  return edits
    .map(({ range, newText, snippet }) => ({
      start: offset(range.start),
      end: offset(range.end),
      text: newText ?? snippet?.value ?? '',
    }))
    .toSorted((a, b) => b.start - a.start)
    .reduce((result, edit) => result.slice(0, edit.start) + edit.text + result.slice(edit.end), text);
}

/** The sound hub of most tests: a front hub on 6803 bearings. Demo data. */
export const soundHub = `hub: Dunlin front
position: front
width: 100 ±0.2
axle: { diameter: 17 h6, bore: 15.05, length: 80 ±0.1 }
shell:
  between-shoulders: 62.05 ±0.01
  seats:
    left: { bore: 26 N7, depth: 5.1 ±0.02 }
    right: { bore: 26 N7, depth: 5.1 ±0.02 }
stack:
  - end-cap: left
    length: 14.03 ±0.02
    face: 19.4
  - bearing: left
    code: 6803-2RS
    seat: shell.left
  - spacer: centre
    length: 62.06 ±0.01
    inside: 17.1
    outside: 19.6
  - bearing: right
    code: 6803-2RS
    seat: shell.right
  - end-cap: right
    length: 14.03 ±0.02
    face: 19.4
`;

/** The sound hub with some words changed. */
export function hubWith(...changes: readonly (readonly [from: string, to: string])[]): string {
  return changes.reduce((text, [from, to]) => {
    if (!text.includes(from)) throw new Error(`the sound hub has no ${from}`);
    return text.replace(from, () => to);
  }, soundHub);
}
