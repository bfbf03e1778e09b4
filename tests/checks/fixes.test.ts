import { describe, expect, test } from 'vitest';
import type { Finding } from '../../server/checks/check.ts';
import { checks } from '../../server/checks/registry.ts';
import { commentsIn } from '../../server/spec/comments.ts';
import type { Fix } from '../../server/spec/problem.ts';
import { applied, isAllowance, mending } from './apply.ts';
import { type Fixture, hasFixture, inspect, readFixture } from './fixture.ts';

const reason = 'the drawing of this hub asks for it';
const fixtures = checks
  .map(({ code }) => code)
  .filter(hasFixture)
  .map(readFixture);
const offered = fixtures.flatMap((fixture) => {
  const { findings } = inspect(fixture, fixture.invalid).findings;
  return findings.flatMap((finding) =>
    finding.fixes.map((fix) => ({
      name: `${fixture.code} at ${finding.span.start}: ${fix.title}`,
      fixture,
      finding,
      fix,
    })),
  );
});

const after = (fixture: Fixture, fix: Fix, typed: string) =>
  inspect(fixture, fixture.invalid, applied(fixture.invalid.text, fix, typed));
const codes = (list: readonly Finding[]): string[] => list.map(({ code }) => code);

test('fixes are offered for most checks', () => {
  const mended = new Set(offered.filter(({ fix }) => !isAllowance(fix)).map(({ fixture }) => fixture.code));
  expect(mended.size).toBeGreaterThan(fixtures.length / 2);
});

describe.each(offered.filter(({ fix }) => !isAllowance(fix) && !fix.snippet))(
  '$name',
  ({ fixture, finding, fix }) => {
    const { findings } = after(fixture, fix, '').findings;

    test('silences its finding', () => {
      const still = findings.filter((other) => other.code === finding.code);
      const before = inspect(fixture, fixture.invalid).findings.findings.filter(
        (other) => other.code === finding.code,
      );
      expect(still.length).toBeLessThan(before.length);
    });

    test('keeps every comment', () => {
      expect(commentsOf(applied(fixture.invalid.text, fix))).toEqual(
        expect.arrayContaining(keptComments(fixture, finding)),
      );
    });

    test('breaks nothing in the text', () => {
      const before = codes(inspect(fixture, fixture.invalid).findings.findings);
      const broken = findings.filter(({ group, code }) => group === 'text' && !before.includes(code));
      expect(broken).toEqual([]);
    });

    test('brings no new fault when it is the preferred one', () => {
      const before = codes(inspect(fixture, fixture.invalid).findings.findings);
      const fresh = findings.filter(
        ({ code }) => fix.preferred && !before.includes(code) && code !== 'allow-unused',
      );
      expect(fresh).toEqual([]);
    });
  },
);

describe.each(offered.filter(({ fix }) => isAllowance(fix)))('$name', ({ fixture, finding, fix }) => {
  test('silences its finding with a reason, and keeps it on the sheets', () => {
    const { findings, allowed } = after(fixture, fix, reason).findings;
    expect(allowed.map((item) => [item.finding.code, item.reason])).toContainEqual([finding.code, reason]);
    expect(codes(findings)).not.toContain('allow-unused');
    expect(commentsOf(applied(fixture.invalid.text, fix, reason))).toEqual(
      expect.arrayContaining(commentsOf(fixture.invalid.text)),
    );
  });
});

test('at most one fix of a finding is preferred, and it comes first', () => {
  for (const { finding } of offered) {
    const preferred = finding.fixes.filter((fix) => fix.preferred);
    expect(preferred.length, finding.message).toBeLessThanOrEqual(1);
    if (preferred[0]) expect(mending(finding)[0]?.title).toBe(preferred[0].title);
  }
});

test('the changes of one fix never overlap and stay inside the text', () => {
  for (const { fixture, fix, name } of offered) {
    const spans = fix.changes.map(({ span }) => span).sort((a, b) => a.start - b.start);
    for (const [i, span] of spans.entries()) {
      expect(span.start, name).toBeLessThanOrEqual(span.end);
      expect(span.end, name).toBeLessThanOrEqual(fixture.invalid.text.length);
      const next = spans[i + 1];
      if (next) expect(span.end, name).toBeLessThanOrEqual(next.start);
    }
  }
});

const commentsOf = (text: string): string[] =>
  commentsIn(text).map(({ start, end }) => text.slice(start, end).trim());

/** A fix of an allowance changes or removes that one comment; keeping one side of a merge drops those of the other. */
function keptComments(fixture: Fixture, finding: Finding): string[] {
  if (finding.code === 'conflict-markers') return [];
  const { text } = fixture.invalid;
  const own = finding.code.startsWith('allow-') ? text.slice(finding.span.start, finding.span.end) : null;
  return commentsOf(text).filter((comment) => comment !== own);
}
