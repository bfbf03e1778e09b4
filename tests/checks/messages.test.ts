import { expect, test } from 'vitest';
import type { Finding } from '../../server/checks/check.ts';
import { checks } from '../../server/checks/registry.ts';
import { hasFixture, inspect, readFixture } from './fixture.ts';

const found = checks
  .map(({ code }) => code)
  .filter(hasFixture)
  .sort()
  .map((code) => {
    const fixture = readFixture(code);
    const { findings } = inspect(fixture, fixture.invalid).findings;
    return { code, findings: findings.filter((finding) => finding.code === code) };
  });

/** Everything a person reads of a finding. */
function words(finding: Finding): readonly string[] {
  const related = finding.related.map(({ message }) => `    | ${message}`);
  const fixes = finding.fixes.map(({ title, preferred }) => `    ${preferred ? '*' : '-'} ${title}`);
  return [`  ${finding.severity}: ${finding.message}`, ...related, ...fixes];
}

test('the messages are those that were read and agreed on', async () => {
  const lines = found.flatMap(({ code, findings }) => [code, ...findings.flatMap(words), '']);
  await expect(`${lines.join('\n')}`).toMatchFileSnapshot('__snapshots__/messages.txt');
});

test.each(found.map(({ code, findings }) => [code, findings] as const))(
  '%s is said in words a person would use',
  (_, findings) => {
    for (const text of findings.flatMap(words)) {
      expect(text).not.toMatch(/undefined|NaN|\[object|Infinity|\bnull\b|Invalid input|!|\d{1,3}\.\d{6,}/);
      expect(text).not.toMatch(/\n/);
    }
    for (const { message } of findings) {
      // The files of a fixture are called so.
      expect(message.replaceAll('invalid.wheel.yaml', '')).not.toMatch(/\.$|\binvalid\b|\billegal\b/i);
      expect(message.length).toBeLessThan(320);
    }
  },
);
