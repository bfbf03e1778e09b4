import { expect, test } from 'vitest';
import { checks } from '../../server/checks/registry.ts';
import { hasFixture, inspect, readFixture } from './fixture.ts';

const fixtures = checks
  .map(({ code }) => code)
  .filter((code) => code !== 'file-too-large' && hasFixture(code))
  .map(readFixture);

/** The files are alike for most of their lines: each takes a third of them, and every line has its turn. */
const isOther = (index: number, line: number): boolean => (index + line) % 3 !== 0;

test('no check breaks when a line of a file is not there yet', () => {
  for (const [index, fixture] of fixtures.entries()) {
    const lines = fixture.invalid.text.split('\n');
    for (const at of lines.keys()) {
      if (isOther(index, at)) continue;
      const text = lines.toSpliced(at, 1).join('\n');
      const { broken, findings } = inspect(fixture, fixture.invalid, text).findings;
      expect(broken, `${fixture.code} without line ${at + 1}`).toEqual([]);
      for (const { message } of findings) expect(message).not.toMatch(/undefined|NaN|\[object|Infinity/);
    }
  }
});

test('no check breaks when a line is written to its middle', () => {
  for (const [index, fixture] of fixtures.entries()) {
    const lines = fixture.invalid.text.split('\n');
    for (const [at, line] of lines.entries()) {
      if (isOther(index, at)) continue;
      const text = lines.with(at, line.slice(0, line.length >> 1)).join('\n');
      expect(
        inspect(fixture, fixture.invalid, text).findings.broken,
        `${fixture.code} line ${at + 1}`,
      ).toEqual([]);
    }
  }
});
