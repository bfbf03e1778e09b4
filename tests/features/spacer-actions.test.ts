import { expect, test } from 'vitest';
import { CodeActionKind } from 'vscode-languageserver-types';
import { codeActions } from '../../server/features/code-actions.ts';
import { stackJson } from '../../server/report/stack/stack-json.ts';
import { sanderling } from '../support/sanderling.ts';
import { edited, specAtCursor, testFile } from '../support/spec-at-cursor.ts';

const options = { uri: testFile, pageOf: null, version: 3, snippets: true, only: null, explain: null };

/** What is offered with the cursor in the spacer's length, with the text each leaves behind. */
function offered(text: string, only: readonly string[] | null = [CodeActionKind.Refactor]) {
  const at = specAtCursor(text);
  const actions = codeActions(at.snapshot, { start: at.position, end: at.position }, { ...options, only });
  return actions.map((action) => {
    const change = action.edit?.documentChanges?.[0];
    const edits = change && 'edits' in change ? change.edits : [];
    return { title: action.title, kind: action.kind, text: edited(at.text, edits as never) };
  });
}

/** Share of builds right, in %, as `stack` tells it of the file. */
function rightOf(text: string): number {
  const { analysis } = specAtCursor(text).snapshot;
  const pair = stackJson('x', analysis.variants, analysis.limits).variants[0]?.pairs[0];
  return 100 * (pair?.yield ?? Number.NaN);
}

const codes = (text: string): readonly string[] =>
  specAtCursor(text).snapshot.findings.findings.map(({ code }) => code);
const hub = (spacer: string) => sanderling({ clamp: '5 kN', code: '6803-2RS C3', spacer });

test('in the length of a spacer stands what could be written, and each keeps what its title says', () => {
  const before = hub('62.0$06 ±0.02');
  const found = offered(before);
  expect(found.length).toBeGreaterThan(1);
  for (const { title, text, kind } of found) {
    expect(kind).toBe(CodeActionKind.RefactorRewrite);
    const [, written, then, now] =
      /^Write (.+?) for spacer\.centre: ([\d.]+) % of builds come right, now ([\d.]+) %$/.exec(title) ?? [];
    expect(text).toContain(`length: ${written}`);
    // The sleeve gives way a little differently once it is longer or shorter.
    expect(Math.abs(rightOf(text) - Number(then))).toBeLessThan(1);
    expect(Math.abs(rightOf(before.replace('$0', '')) - Number(now))).toBeLessThan(0.6);
    expect(rightOf(text)).toBeGreaterThan(rightOf(before.replace('$0', '')));
    expect(codes(text)).toEqual([]);
  }
});

test('the closer spacer that is offered gives more than the length alone', () => {
  const [length, closer] = offered(hub('62.0$06 ±0.02'));
  expect(length?.text).toMatch(/length: 62\.\d+ ±0\.02/);
  expect(closer?.text).toMatch(/length: 62\.\d+ ±0\.0[01]\d*/);
  expect(rightOf(closer?.text ?? '')).toBeGreaterThan(rightOf(length?.text ?? '') + 0.2);
});

test('nothing is offered elsewhere, without a clamp, for a part that is measured, or when fixes alone are asked for', () => {
  const text = hub('62.09 ±0.02');
  expect(offered(text.replace('14.03', '14.$003'))).toEqual([]);
  expect(offered(text.replace('62.09', '62.$009').replace('clamp: 5 kN\n', ''))).toEqual([]);
  expect(offered(hub('62.$009 ±0.02 measured 62.09 ±0.003'))).toEqual([]);
  expect(offered(hub('62.$009 ±0.02'), [CodeActionKind.QuickFix]).map(({ kind }) => kind)).not.toContain(
    CodeActionKind.RefactorRewrite,
  );
});

test('what a finding offers at the place is not offered twice', () => {
  const all = offered(hub('62.$009 ±0.02'), null).map(({ text }) => text);
  expect(new Set(all).size).toBe(all.length);
});
