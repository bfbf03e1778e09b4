import { describe, expect, test } from 'vitest';
import { checks } from '../../server/checks/registry.ts';
import { applied, mending } from './apply.ts';
import { type FixtureFile, hasFixture, inspect, readFixture } from './fixture.ts';
import { compare, markOf } from './marks.ts';

/** Where the cursor goes in a fix, as it stands in a text that is compared with the mended one. */
const cursor = '\u0001';

test.each(checks.map(({ code }) => code))('%s has a fixture folder', (code) => {
  expect(hasFixture(code)).toBe(true);
});

describe.each(checks.map(({ code }) => code).filter(hasFixture))('%s', (code) => {
  const fixture = readFixture(code);
  const found = (file: FixtureFile, text = file.text) => {
    const { findings } = inspect(fixture, file, text);
    expect(findings.broken).toEqual([]);
    return findings.findings;
  };
  const marksOf = (text: string) => found(fixture.invalid, text).map((finding) => markOf(finding, text));

  const firstFixed = (text: string): string => {
    const finding = found(fixture.invalid, text).find((item) => item.code === code);
    const fix = finding && mending(finding)[0];
    return fix ? applied(text, fix, cursor) : text;
  };

  test('everything found is marked and everything marked is found', () => {
    const marks = compare(marksOf(fixture.invalid.text), fixture.invalid.marks);
    expect(marks.found).toEqual(marks.stated);
    expect(fixture.invalid.marks.some((mark) => mark.code === code)).toBe(true);
  });

  test('the first fix gives the mended file', () => {
    const finding = found(fixture.invalid).find((item) => item.code === code);
    const fix = finding && mending(finding)[0];
    if (!fix) return expect(fixture.fixed.text).not.toBe(fixture.invalid.text);
    const text = applied(fixture.invalid.text, fix, cursor);
    const typed = text.includes(cursor) ? typedAt(text, fixture.fixed.text) : '';
    expect(text.replace(cursor, () => typed)).toBe(fixture.fixed.text);
  });

  test('the mended file is clean', () => {
    expect(found(fixture.fixed).filter((item) => item.code === code)).toEqual([]);
  });

  test('the valid file is clean', () => {
    expect(found(fixture.valid).filter((item) => item.code === code)).toEqual([]);
  });

  test('a fix keeps line endings, byte order mark and a missing last line break', () => {
    const { text } = fixture.invalid;
    const plain = firstFixed(text);
    const crlf = (lines: string): string => lines.replaceAll('\n', '\r\n');
    expect(firstFixed(crlf(text))).toBe(crlf(plain));
    expect(firstFixed(`\ufeff${text}`)).toBe(`\ufeff${plain}`);
    expect(firstFixed(text.trimEnd()).trimEnd()).toBe(plain.trimEnd());
  });

  test('carriage returns and a byte order mark change nothing', () => {
    const { text } = fixture.invalid;
    const plain = marksOf(text);
    const crlf = text.replaceAll('\n', '\r\n');
    expect(marksOf(crlf)).toEqual(plain);
    expect(marksOf(`\ufeff${text}`)).toEqual(plain);
    expect(marksOf(`\ufeff${crlf}`)).toEqual(plain);
  });
});

/** What the mended file has where the cursor stands. */
function typedAt(text: string, mended: string): string {
  const at = text.indexOf(cursor);
  return mended.slice(at, mended.length - (text.length - at - 1));
}
