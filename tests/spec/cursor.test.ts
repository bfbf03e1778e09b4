import { expect, test } from 'vitest';
import { cursorAt, keysAt } from '../../server/spec/cursor.ts';
import type { SpecKind } from '../../server/spec/document.ts';
import { dunlin } from './sample.ts';

const knot = `hub: Knot
position: rear
stack:
  - end-cap: left
    length: 14
  - bearing: left
    code: 6803
shell:
  seats:
    left: { bore: 26 N7 }
`;

/** The cursor at the `|` of a text. */
function cursor(marked: string, kind: SpecKind = 'hub') {
  const at = marked.indexOf('|');
  const text = marked.slice(0, at) + marked.slice(at + 1);
  const found = cursorAt(text, at, kind);
  return { ...found, replaced: text.slice(found.replace.start, found.replace.end) };
}

test.each([
  ['an empty file', '|', 'hub', [], 'key', ''],
  ['a first word', 'hu|', 'hub', [], 'key', 'hu'],
  ['a key at the end of a file', `${knot}wid|`, 'hub', [], 'key', 'wid'],
  [
    'a key of an item',
    knot.replace('    code: 6803', '    co|de: 6803'),
    'part:bearing',
    ['stack', 1],
    'key',
    'code',
  ],
  [
    'an empty line of an item',
    knot.replace('shell:', '    |\nshell:'),
    'part:bearing',
    ['stack', 1],
    'key',
    '',
  ],
  [
    'an empty line in the middle of an item',
    knot.replace('    code', '    |\n    code'),
    'part:bearing',
    ['stack', 1],
    'key',
    '',
  ],
  [
    'a half-typed key of an item',
    knot.replace('length: 14', 'len|'),
    'part:end-cap',
    ['stack', 0],
    'key',
    'len',
  ],
  ['a dash', knot.replace('shell:', '  - |\nshell:'), 'stack', ['stack', 2], 'item-kind', ''],
  [
    'a dash between items',
    knot.replace('  - bearing', '  - |\n  - bearing'),
    'stack',
    ['stack', 1],
    'item-kind',
    '',
  ],
  ['a kind', knot.replace('- bearing', '- bea|ring'), 'stack', ['stack', 1], 'item-kind', 'bearing'],
  ['the place of a dash', knot.replace('shell:', '  |\nshell:'), 'stack', ['stack'], 'item-kind', ''],
  ['braces', knot.replace('{ bore', '{ |bore'), 'seat', ['shell', 'seats', 'left'], 'key', 'bore'],
  [
    'braces after a comma',
    knot.replace('N7 }', 'N7, st| }'),
    'seat',
    ['shell', 'seats', 'left'],
    'key',
    'st',
  ],
  ['open braces', knot.replace('N7 }', 'N7, |'), 'seat', ['shell', 'seats', 'left'], 'key', ''],
  [
    'braces in braces',
    `${knot.replace('N7 }', 'N7, retaining-ring: { si|')}`,
    'retaining-ring',
    ['shell', 'seats', 'left', 'retaining-ring'],
    'key',
    'si',
  ],
  [
    'a seat over several lines',
    knot.replace('{ bore: 26 N7 }', '\n      |'),
    'seat',
    ['shell', 'seats', 'left'],
    'key',
    '',
  ],
  ['the names of seats', `${knot}    |`, 'seats', ['shell', 'seats'], 'key', ''],
  ['a section', `${knot}  |`, 'housing:shell', ['shell'], 'key', ''],
  ['a variant', `${knot}variants:\n  quick:\n    |`, 'variant', ['variants', 'quick'], 'key', ''],
  [
    'a changed part',
    `${knot}variants:\n  quick:\n    change:\n      end-cap.left: { bo| }`,
    'part:end-cap',
    ['variants', 'quick', 'change', 'end-cap.left'],
    'key',
    'bo',
  ],
  [
    'a changed seat',
    `${knot}variants:\n  quick:\n    change:\n      shell.left:\n        |`,
    'seat',
    ['variants', 'quick', 'change', 'shell.left'],
    'key',
    '',
  ],
  [
    'addresses',
    `${knot}variants:\n  quick:\n    change:\n      |`,
    'change',
    ['variants', 'quick', 'change'],
    'key',
    '',
  ],
  [
    'an added part in braces',
    `${knot}variants:\n  quick:\n    add: [{ | }]`,
    'add',
    ['variants', 'quick', 'add', 0],
    'item-kind',
    '',
  ],
  [
    'keys of an added part in braces',
    `${knot}variants:\n  quick:\n    add: [{ shim: left, le| }]`,
    'part:shim',
    ['variants', 'quick', 'add', 0],
    'key',
    'le',
  ],
  [
    'keys of an added part',
    `${knot}variants:\n  quick:\n    add:\n      - shim: left\n        |`,
    'part:shim',
    ['variants', 'quick', 'add', 0],
    'key',
    '',
  ],
  ['what stands beside', `${knot}beside:\n  - seal: left\n    g|`, 'beside:seal', ['beside', 0], 'key', 'g'],
  ['a list without indentation', 'stack:\n- end-cap: left\n  |', 'part:end-cap', ['stack', 0], 'key', ''],
] as const)('a key is written in %s', (_, text, section, path, role, replaced) => {
  expect(cursor(text)).toMatchObject({ section, path, role, replaced });
});

test.each([
  ['a value', 'hub: Kn|ot\n', 'hub', 'value', 'hub', 'Kn', 'Knot'],
  ['an empty value', 'position: |', 'hub', 'value', 'position', '', ''],
  [
    'a value behind a bare colon',
    knot.replace('length: 14', 'length:|'),
    'part:end-cap',
    'value',
    'length',
    '',
    '',
  ],
  [
    'a value before a comment',
    knot.replace('code: 6803', 'code: 68|03 # x'),
    'part:bearing',
    'value',
    'code',
    '68',
    '6803',
  ],
  ['a value in braces', knot.replace('bore: 26', 'bore: |26'), 'seat', 'value', 'bore', '', '26 N7'],
  [
    'a name',
    knot.replace('bearing: left', 'bearing: le|ft'),
    'part:bearing',
    'name',
    'bearing',
    'le',
    'left',
  ],
  ['a name in brackets', `${knot}variants:\n  q:\n    remove: [was|]`, 'remove', 'value', null, 'was', 'was'],
  [
    'an item of a list of names',
    `${knot}variants:\n  q:\n    remove:\n      - wa|`,
    'remove',
    'value',
    null,
    'wa',
    'wa',
  ],
  ['a clamp', `${knot}clamp: |`, 'hub', 'value', 'clamp', '', ''],
] as const)('%s is written', (_, text, section, role, key, typed, replaced) => {
  expect(cursor(text)).toMatchObject({ section, role, key, typed, replaced });
});

test('the keys that stand already are known', () => {
  expect(cursor(`${knot}wid|`).present).toEqual(['hub', 'position', 'stack', 'shell']);
  expect(cursor(knot.replace('    code', '    |\n    code')).present).toEqual(['bearing', 'code']);
  expect(cursor(knot.replace('N7 }', 'N7, | }')).present).toEqual(['bore']);
  expect(cursor(`${knot}    |`).present).toEqual(['left']);
});

test('the kind and the indentation of an item are known', () => {
  expect(cursor(knot.replace('shell:', '    |\nshell:'))).toMatchObject({
    kind: 'bearing',
    indent: '    ',
    flow: false,
  });
  expect(cursor(knot.replace('shell:', '  - |\nshell:'))).toMatchObject({ dash: true });
  expect(cursor(knot.replace('shell:', '  |\nshell:'))).toMatchObject({ dash: false });
  expect(cursor(knot.replace('{ bore', '{ |bore')).flow).toBe(true);
});

test('workshop and wheel files have sections of their own', () => {
  expect(cursor('limits:\n  |', 'workshop').section).toBe('workshop:limits');
  expect(cursor('stock:\n  sh|', 'workshop').section).toBe('workshop:stock');
  expect(cursor('drivers:\n  - { out| }', 'workshop').section).toBe('workshop:driver');
  expect(cursor('rim: { e|', 'wheel').section).toBe('wheel:rim');
  expect(cursor('lacing:\n  left: { cro|', 'wheel').section).toBe('wheel:lacing-side');
  expect(keysAt(cursor('seats|'))).toContain('stack');
});

test('carriage returns and a byte order mark change nothing', () => {
  for (let at = 0; at <= dunlin.length; at += 7) {
    const plain = cursorAt(dunlin, at, 'hub');
    const before = dunlin.slice(0, at).replaceAll('\n', '\r\n');
    const text = `\ufeff${dunlin.replaceAll('\n', '\r\n')}`;
    const other = cursorAt(text, before.length + 1, 'hub');
    expect(
      { ...other, replace: text.slice(other.replace.start, other.replace.end) },
      JSON.stringify(dunlin.slice(at - 10, at + 10)),
    ).toEqual({
      ...plain,
      replace: dunlin.slice(plain.replace.start, plain.replace.end),
    });
  }
});
