import { expect, test } from 'vitest';
import { checks } from '../../server/checks/registry.ts';
import { explanation, explanationJson, findingCodes } from '../../server/report/explain.ts';

test('every finding there is has its page: why, a bad and a good example, sources', () => {
  for (const { code, page } of checks) {
    const text = explanation(code) ?? '';
    expect(text).toMatch(new RegExp(`^# ${code}\n`));
    for (const part of [page.why, page.bad.trim(), page.good.trim(), ...page.sources])
      expect(text).toContain(part);
    expect(text.match(/^```yaml$/gm)).toHaveLength(2);
    expect(text.match(/^```$/gm)).toHaveLength(text.includes('```diff') ? 3 : 2);
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

test('a page shows first the lines in which its examples differ', () => {
  expect(explanation('spacer-off-axle')).toMatch(
    /## The difference\n\n```diff\n- {4}inside: 1\d(\.\d)?\n\+ {4}inside: 17\.1\n```\n\n## Reported/,
  );
  // An example that is nothing differs in everything.
  expect(explanation('empty-file')).not.toContain('## The difference');
});
