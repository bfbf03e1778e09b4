import { expect, test } from 'vitest';
import { type CodeActionOptions, codeActions } from '../../server/features/code-actions.ts';
import { edited, hubWith, specAtCursor, testFile } from '../support/spec-at-cursor.ts';

const options: CodeActionOptions = {
  uri: testFile,
  pageOf: null,
  version: 7,
  snippets: true,
  only: null,
  explain: null,
};

function actionsAt(marked: string, changed: Partial<CodeActionOptions> = {}) {
  const { snapshot, position, text } = specAtCursor(marked);
  const actions = codeActions(snapshot, { start: position, end: position }, { ...options, ...changed });
  return { actions, text };
}

const changeOf = (action: ReturnType<typeof codeActions>[number] | undefined) => {
  const change = action?.edit?.documentChanges?.[0];
  if (!change || !('edits' in change)) throw new Error(`${action?.title} changes nothing`);
  return change;
};

test('a strange code is offered the one it is a slip of, first and preferred', () => {
  const { actions, text } = actionsAt(hubWith(['code: 6803-2RS', 'code: 68$093-2RS']));
  expect(actions[0]?.title).toContain('6803-2RS');
  expect(actions[0]?.isPreferred).toBe(true);
  expect(edited(text, changeOf(actions[0]).edits as never)).toBe(hubWith());
});

test('a fix holds for the version it was worked out for', () => {
  const { actions } = actionsAt(hubWith(['code: 6803-2RS', 'code: 68$093-2RS']));
  expect(changeOf(actions[0]).textDocument).toEqual({ uri: testFile, version: 7 });
});

test('an allowance leaves the cursor where the reason goes', () => {
  const { actions } = actionsAt(hubWith(['code: 6803-2RS', 'code: 68$093-2RS']));
  const allow = actions.find(({ title }) => title.startsWith('Allow'));
  expect(changeOf(allow).edits[0]).toMatchObject({
    snippet: { value: expect.stringMatching(/# allow [a-z-]+ because \$0\n/) },
  });
});

test('a client without snippets gets the same text without the stop', () => {
  const { actions } = actionsAt(hubWith(['code: 6803-2RS', 'code: 68$093-2RS']), { snippets: false });
  const allow = actions.find(({ title }) => title.startsWith('Allow'));
  expect(changeOf(allow).edits[0]).toMatchObject({
    newText: expect.stringMatching(/# allow [a-z-]+ because \n/),
  });
});

test('a missing key is put in its place and the cursor into its value', () => {
  const { actions, text } = actionsAt(hubWith(['position: front\n', ''], ['hub: Dun', 'hu$0b: Dun']));
  const fix = actions.find(({ title }) => title.includes('position'));
  const result = edited(text, changeOf(fix).edits as never);
  expect(result).toMatch(/^position: \$0$/m);
  expect(result.replace('position: $0\n', '')).toBe(text);
});

test('nothing is offered away from a finding', () => {
  expect(actionsAt(hubWith(['hub: Dunlin', 'hub: Du$0nlin'])).actions).toEqual([]);
});

test('only quick fixes are offered, and only when asked for', () => {
  const strange = hubWith(['code: 6803-2RS', 'code: 68$093-2RS']);
  expect(actionsAt(strange, { only: ['refactor'] }).actions).toEqual([]);
  expect(actionsAt(strange, { only: ['quickfix'] }).actions.length).toBeGreaterThan(0);
});

test('the page of a finding is one of the offers where the client can open it', () => {
  const { actions } = actionsAt(hubWith(['code: 6803-2RS', 'code: 68$093-2RS']), { explain: 'x.explain' });
  expect(actions.at(-1)?.command).toMatchObject({ command: 'x.explain', arguments: ['bearing-not-decoded'] });
});
