import { expect, test } from 'vitest';
import { checks } from '../../server/checks/registry.ts';
import { explanation, explanationJson, findingCodes } from '../../server/report/explain.ts';

test('every finding there is has its page: why, a bad and a good example, sources', () => {
  for (const { code, page } of checks) {
    const text = explanation(code) ?? '';
    expect(text).toMatch(new RegExp(`^# ${code}\n`));
    for (const part of [page.why, page.bad.trim(), page.good.trim(), ...page.sources])
      expect(text).toContain(part);
    expect(text.match(/^```/gm)).toHaveLength(4);
  }
});

test('a code there is not has no page, and its nearest is named', () => {
  expect(explanation('widht-off')).toBeNull();
  expect(explanationJson('widht-off')).toMatchObject({ didYouMean: ['width-off'] });
});

test('the list names each finding once', () => {
  const codes = findingCodes().map(({ code }) => code);
  expect(codes).toHaveLength(checks.length);
  expect(new Set(codes).size).toBe(codes.length);
});
