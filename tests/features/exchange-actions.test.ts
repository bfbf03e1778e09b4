import { expect, test } from 'vitest';
import { CodeActionKind } from 'vscode-languageserver-types';
import { codeActions } from '../../server/features/code-actions.ts';
import { sanderling } from '../support/sanderling.ts';
import { edited, specAtCursor, testFile } from '../support/spec-at-cursor.ts';

const options = {
  uri: testFile,
  pageOf: null,
  version: 3,
  snippets: true,
  only: [CodeActionKind.Refactor],
  explain: null,
};

function offered(text: string) {
  const at = specAtCursor(text);
  return codeActions(at.snapshot, { start: at.position, end: at.position }, options).map((action) => {
    const change = action.edit?.documentChanges?.[0];
    const edits = change && 'edits' in change ? change.edits : [];
    return { title: action.title, text: edited(at.text, edits as never) };
  });
}

const hub = sanderling({ clamp: '5 kN', code: '6803-2RS' }).replace('code: 6803-2RS', 'code: 6803$0-2RS');

/** Mounted clearance of the first bearing, µm. */
function mountedOf(text: string): number {
  const [bearing] = specAtCursor(text).snapshot.analysis.variants[0]?.mechanics('built').bearings ?? [];
  return Math.round((bearing?.mounted?.mean ?? Number.NaN) * 1000);
}

test('on the code of a bearing stands what fits instead, in all its places, with what it does here', () => {
  const found = offered(hub);
  const wide = found.find(({ title }) =>
    title.startsWith('Use 6803-2RS C3 in 2 places, with more clearance'),
  );
  expect(wide?.text.match(/code: 6803-2RS C3/g)).toHaveLength(2);
  const [, was, is] = /mounted clearance (−?\d+) µm → (−?\d+) µm/.exec(wide?.title ?? '') ?? [];
  const number = (text: string | undefined) => Number(text?.replace('−', '-'));
  expect(mountedOf(hub)).toBe(number(was));
  expect(mountedOf(wide?.text ?? '')).toBe(number(is));
  expect(found.map(({ title }) => title).join('\n')).toMatch(/with shields[\s\S]*with ceramic balls/);
});

test('elsewhere nothing of the kind is offered, and no kind that wants more than another code', () => {
  expect(offered(hub).some(({ title }) => title.includes('of another kind'))).toBe(false);
  const width = sanderling({ clamp: '5 kN' }).replace('width: ', 'width: $0');
  expect(offered(width).filter(({ title }) => title.startsWith('Use'))).toEqual([]);
});
