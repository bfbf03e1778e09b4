import { expect, test } from 'vitest';
import { CodeActionKind } from 'vscode-languageserver-types';
import { withCode } from '../../server/analysis/exchange/exchanged.ts';
import { codeActions } from '../../server/features/code-actions.ts';
import { createWorkspace } from '../../server/workspace/workspace.ts';
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

test('an action keeps class and cage as written, and leaves a bearing with another cage alone', () => {
  const fine = hub
    .replace('code: 6803$0-2RS', 'code: 6803$0-2RS TN9 P5')
    .replace(/code: 6803-2RS,/, 'code: 6803-2RS P5,');
  const shields = offered(fine).find(({ title }) => title.includes('with shields'));
  expect(shields?.title).toMatch(/^Use 6803-2Z TN9 P5, with shields/);
  expect(shields?.text).toContain('code: 6803-2RS P5,');
});

test('a house code gives way to the code that is used instead', () => {
  const text = hub.replace('bearing: right, code: 6803-2RS', 'bearing: right, house-code: DB-17');
  const workshop = 'bearings: { DB-17: { code: 6803-2RS } }\n';
  const workspace = createWorkspace();
  workspace.setRoots(['/w']);
  workspace.setFile('/w/house.workshop.yaml', workshop);
  workspace.setFile('/w/a.hub.yaml', text.replace('$0', ''));
  const analysis = workspace.snapshot('/w/a.hub.yaml')?.analysis;
  if (!analysis) throw new Error('no snapshot');
  const changed = withCode(analysis, ['bearing.left', 'bearing.right'], '6803-2RS C3');
  expect(changed?.spec.problems).toEqual([]);
  expect(changed?.spec.text).toContain('bearing: right, code: 6803-2RS C3');
  expect(changed?.variants[0]?.assembly.bearings.map(({ bearing }) => bearing?.clearance.group)).toEqual([
    'C3',
    'C3',
  ]);
});

/* Martensitic stainless rings are softer than 100Cr6 and are rated lower: common practice, by how much differs by maker. */
test('stainless steel is never said to live as long as bearing steel', () => {
  const stainless = offered(hub).find(({ title }) => title.includes('of stainless steel'));
  expect(stainless?.title).toMatch(/life, for comparison, .* → not known/);
});
