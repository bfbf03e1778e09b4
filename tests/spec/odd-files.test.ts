import { expect, test } from 'vitest';
import { cursorAt } from '../../server/spec/cursor.ts';
import type { SpecDocument } from '../../server/spec/document.ts';
import { readSpec } from '../../server/spec/read-spec.ts';
import { dunlin } from './sample.ts';

const faulty = dunlin
  .replace('face: 19.4', 'fcae: 19.4')
  .replace('width: 100 ±0.1 ', 'width: 100 ±0,1 ')
  .replace('outside: 19.6 ', 'outside: 19,6 ')
  .replace('stop: shoulder', 'stop: sholder')
  .replace('clamp: 5 kN', 'clamp: 5')
  .replace('{ shim: left,', '{ shmi: left,');

/** What was found, each with the line it is on and the words it marks. */
function found(document: SpecDocument): readonly string[] {
  return document.problems.map(({ code, message, span }) => {
    const line = document.text.slice(0, span.start).split(/\r\n|\r|\n/).length;
    return `${line} ${code} ${JSON.stringify(document.text.slice(span.start, span.end))} ${message}`;
  });
}

const plain = found(readSpec(faulty, 'hub'));

test('the faults of the sample are found', () => {
  expect(plain.map((line) => line.split(' ').slice(0, 3).join(' '))).toEqual([
    '5 decimal-comma "0,1"',
    '10 unknown-key "fcae"',
    '18 decimal-comma "19,6"',
    '29 value-not-understood "sholder"',
    '42 wrong-unit "5"',
    '56 unknown-kind "shmi"',
  ]);
});

test.each([
  ['line feeds and carriage returns', (t: string) => t.replaceAll('\n', '\r\n')],
  ['lone carriage returns', (t: string) => t.replaceAll('\n', '\r')],
  ['a byte order mark', (t: string) => `\ufeff${t}`],
  ['a byte order mark and carriage returns', (t: string) => `\ufeff${t.replaceAll('\n', '\r\n')}`],
  ['no final line break', (t: string) => t.trimEnd()],
  ['letters beyond the basic plane', (t: string) => t.replace('Dunlin', '🐦'.repeat(9))],
])('%s change nothing about what is found or where', (_, change) => {
  expect(found(readSpec(change(faulty), 'hub'))).toEqual(plain);
});

test('non-breaking spaces are spaces', () => {
  const document = readSpec(faulty.replace(/: (?=[\w{])/g, ':\u00a0'), 'hub');
  expect(document.problems.map((p) => p.code)).toEqual(readSpec(faulty, 'hub').problems.map((p) => p.code));
});

test('tabs for indentation are one finding beside the others, and its fix leaves those', () => {
  const tabbed = faulty.replace(/^(?: {2})+/gm, (blanks) => '\t'.repeat(blanks.length / 2));
  const document = readSpec(tabbed, 'hub');
  const [tabs, ...others] = [...document.problems].toSorted((a, b) =>
    a.code === 'tab-indentation' ? -1 : b.code === 'tab-indentation' ? 1 : 0,
  );
  expect(tabs?.code).toBe('tab-indentation');
  expect(others.map((p) => p.code)).toEqual(readSpec(faulty, 'hub').problems.map((p) => p.code));
  expect(document.hub?.stack).toHaveLength(5);
});

function sane(document: SpecDocument): void {
  expect(document.problems.length).toBeLessThanOrEqual(100);
  for (const { span, message, fixes } of document.problems) {
    expect(0 <= span.start && span.start <= span.end && span.end <= document.text.length).toBe(true);
    expect(document.text.slice(span.start, span.end)).not.toMatch(/[\r\n]/);
    expect(message).not.toMatch(/undefined|NaN|\[object|[\r\n]/);
    for (const { changes } of fixes) {
      for (const change of changes) expect(change.span.end).toBeLessThanOrEqual(document.text.length);
    }
  }
}

test('a file cut off anywhere is read as far as it goes', () => {
  for (let i = 0; i <= dunlin.length; i++) {
    const text = dunlin.slice(0, i);
    const document = readSpec(text, 'hub');
    sane(document);
    // What is missing at the end is at most the required keys, the half-typed line and what it belongs to.
    expect(document.problems.length, JSON.stringify(text.slice(-40))).toBeLessThanOrEqual(5);
    cursorAt(text, i, 'hub');
  }
});

/** A small generator of its own, so that a failure comes back (Numerical Recipes, ranqd1 constants). */
function numbers(seed: number): (below: number) => number {
  let state = seed >>> 0;
  return (below) => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return Math.floor((state / 2 ** 32) * below);
  };
}

test('nothing that can be done to a file makes reading or the cursor fail', () => {
  const next = numbers(11);
  const bits = [
    '{',
    '}',
    '[',
    ']',
    '"',
    "'",
    ':',
    '- ',
    '\t',
    '\n',
    '#',
    '&a',
    '*a',
    '|',
    '>',
    '?',
    '!',
    '%',
    '---\n',
    '<<<<<<< x\n',
    '=======\n',
    '>>>>>>> y\n',
    '\u00a0',
    '\r',
    ',',
    '  ',
    'é',
    '😀',
    '@',
    '`',
    '<<: *a\n',
    '...\n',
    '\\',
    '\0',
  ];
  for (let i = 0; i < 1500; i++) {
    let text = dunlin;
    for (let k = next(4); 0 <= k; k--) {
      const at = next(text.length);
      const how = next(3);
      if (how === 0) text = text.slice(0, at) + text.slice(at + next(12));
      else if (how === 1) text = text.slice(0, at) + (bits[next(bits.length)] ?? '') + text.slice(at);
      else text = text.slice(0, at) + dunlin.slice(next(dunlin.length)).slice(0, next(40)) + text.slice(at);
    }
    const kind = (['hub', 'hub', 'wheel', 'workshop'] as const)[i % 4] ?? 'hub';
    sane(readSpec(text, kind));
    cursorAt(text, next(text.length), kind);
  }
});

test.each([
  [
    'references that multiply',
    `a: &a [x]\n${Array.from({ length: 20 }, (_, i) => `b${i}: &b${i} [*a,*a,*a]`).join('\n')}`,
  ],
  ['a reference to itself', 'a: &a { b: *a }\nc: *nowhere\n'],
  ['brackets without end', '['.repeat(100_000)],
  ['dashes without end', '- '.repeat(5000)],
  ['question marks without end', '? '.repeat(400)],
  ['one slip two thousand times', '  - end-cap: left\n   length: 1\n'.repeat(2000)],
  ['quotes never closed', "a: 'x\n".repeat(2000)],
  ['one key ten thousand times', 'k: 1\n'.repeat(10_000)],
  ['tabs alone', '\t'.repeat(100_000)],
])(
  '%s end soon',
  (_, text) => {
    sane(readSpec(text, 'hub'));
  },
  5000,
);
