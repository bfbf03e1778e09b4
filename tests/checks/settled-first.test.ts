import { expect, test } from 'vitest';
import type { Finding, Severity } from '../../server/checks/check.ts';
import { settledFirst } from '../../server/checks/settled-first.ts';
import type { SpecPath } from '../../server/spec/place.ts';

const at = (
  code: string,
  severity: Severity,
  path: SpecPath,
  doubts: readonly SpecPath[] = [],
  rests: readonly SpecPath[] = [],
): Finding => ({
  code,
  group: 'bearing',
  severity,
  message: code,
  path,
  span: { start: 0, end: 0 },
  related: rests.map((place) => ({ path: place, span: { start: 0, end: 0 }, message: '' })),
  data: {},
  fixes: [],
  doubts,
  variants: [],
});
const codes = (list: readonly Finding[]): string[] => list.map(({ code }) => code);

test('what rests on a doubtful value is left out, what does not stays', () => {
  const doubter = at('doubter', 'error', ['size'], [['size']]);
  const resting = at('resting', 'error', ['width'], [], [['size']]);
  expect(codes(settledFirst([doubter, resting, at('other', 'hint', ['notes'])]))).toEqual([
    'doubter',
    'other',
  ]);
});

test('a graver finding is never left out for a lesser doubt', () => {
  const doubter = at('doubter', 'warning', ['size'], [['size']]);
  const graver = at('graver', 'error', ['width'], [], [['size']]);
  expect(codes(settledFirst([doubter, graver]))).toEqual(['doubter', 'graver']);
});

test('of two that doubt each other one stays', () => {
  const one = at('one', 'error', ['size'], [['size']], [['code']]);
  const other = at('other', 'error', ['code'], [['code']], [['size']]);
  expect(codes(settledFirst([one, other]))).toEqual(['one']);
});
