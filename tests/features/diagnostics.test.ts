import { expect, test } from 'vitest';
import { DiagnosticSeverity } from 'vscode-languageserver-types';
import { diagnostics } from '../../server/features/diagnostics.ts';
import { hubWith, specAtCursor, testFile } from '../support/spec-at-cursor.ts';

const found = (text: string) =>
  diagnostics(specAtCursor(text).snapshot, { uri: testFile, pageOf: (code) => `page:/${code}.md` });

test('a sound hub has nothing to say', () => {
  expect(found(hubWith())).toEqual([]);
});

test('a stack that is too long names every part of the sum where it stands', () => {
  // 14.53 for 14.03: 0.5 mm more than the mean of 100.00, limits 100 ±0.2.
  const [finding] = found(hubWith(['length: 14.03', 'length: 14.53'])).filter(
    ({ code }) => code === 'width-off',
  );
  expect(finding).toMatchObject({
    severity: DiagnosticSeverity.Error,
    source: 'hubwright',
    codeDescription: { href: 'page:/width-off.md' },
  });
  expect(finding?.message).toContain('100.50 mm on average');
  // Five parts and the width wanted.
  expect(finding?.relatedInformation).toHaveLength(6);
  expect(finding?.relatedInformation?.every(({ location }) => location.uri === testFile)).toBe(true);
  expect(finding?.data).toMatchObject({ mean: 100.5 });
});

test('a file full of faults ends with how many are not shown', () => {
  const many = Array.from({ length: 99 }, (_, i) => `wrong-${i}: 1`).join('\n');
  const all = found(
    `${hubWith(['code: 6803-2RS', 'code: 6893-2RS'], ['seat: shell.right', 'seat: shell.rihgt'])}${many}\n`,
  );
  expect(all).toHaveLength(101);
  expect(all.at(-1)?.message).toMatch(
    /^[1-9]\d* more findings? (is|are) not shown — mend some of those above first$/,
  );
});
