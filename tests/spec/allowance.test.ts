import { expect, test } from 'vitest';
import { readHub } from '../../server/spec/read-hub.ts';
import { dunlin } from './sample.ts';

function allowances(text: string) {
  const document = readHub(text);
  return document.allowances.map(({ code, reason, target }) => ({
    code,
    reason,
    target: text.slice(target.start, target.end),
  }));
}

test('an allowance speaks of the line below it', () => {
  const text = dunlin.replace('width: 100', '# allow width-off because the fork is the odd one\nwidth: 100');
  expect(allowances(text)).toEqual([
    {
      code: 'width-off',
      reason: 'the fork is the odd one',
      target: 'width: 100 ±0.1            # face to face over the end caps',
    },
  ]);
});

test('above an item or a section it speaks of all of it', () => {
  const item = dunlin.replace(
    '  - spacer: centre',
    '  # allow spacer-short because checked on the bench\n  - spacer: centre',
  );
  expect(allowances(item)[0]?.target).toMatch(/^- spacer: centre[\s\S]*outside: 19\.6$/);
  const section = dunlin.replace('\nshell:', '\n# allow seat-loose because bonded\nshell:');
  expect(allowances(section)[0]?.target).toMatch(/^shell:[\s\S]*from-centre: 35 \}$/);
});

test('several stand above one line, with other comments and blanks between', () => {
  const text = dunlin.replace(
    'clamp: 5',
    '# allow a-b because one\n\n# said twice\n# allow c-d because two\nclamp: 5',
  );
  expect(allowances(text).map((a) => [a.code, a.reason, a.target])).toEqual([
    ['a-b', 'one', 'clamp: 5 kN'],
    ['c-d', 'two', 'clamp: 5 kN'],
  ]);
});

test('behind a value it speaks of its own line', () => {
  const text = dunlin.replace('clamp: 5 kN', 'clamp: 5 kN # allow width-off because agreed');
  expect(allowances(text)[0]).toMatchObject({ code: 'width-off', reason: 'agreed' });
  expect(allowances(text)[0]?.target).toContain('clamp: 5 kN');
});

test('inside a text it is text', () => {
  expect(allowances(dunlin.replace('  see the drawing', '  # allow width-off because no'))).toEqual([]);
  expect(allowances(dunlin.replace('Dunlin front\n', '"Dunlin # allow a-b because no"\n'))).toEqual([]);
});

test.each(['# allow width-off', '# allow width-off because', '# allow'])('%s gives no reason', (comment) => {
  const document = readHub(dunlin.replace('clamp: 5', `${comment}\nclamp: 5`));
  expect(document.problems.map((p) => p.code)).toEqual(['allow-without-reason']);
  expect(document.allowances[0]?.reason).toBe('');
});
