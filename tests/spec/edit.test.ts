import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { commentsIn } from '../../server/spec/comments.ts';
import {
  allowLine,
  insertItem,
  insertKey,
  removeItem,
  removeKey,
  renameKey,
  setValue,
  swapItems,
} from '../../server/spec/edit.ts';
import type { SpecPath } from '../../server/spec/place.ts';
import type { TextChange } from '../../server/spec/problem.ts';
import { readHub } from '../../server/spec/read-hub.ts';
import { apply } from './apply.ts';
import { dunlin } from './sample.ts';

type Tree = Record<string, unknown> | unknown[];

/** The text as the yaml library alone sees it, every scalar a string: a judge beside our own reader. */
const treeOf = (text: string): Tree =>
  parse(text.replace(/^\ufeff/, '').replace(/\r\n?/g, '\n'), { schema: 'failsafe' }) as Tree;
const comments = (text: string): string[] =>
  commentsIn(text)
    .map(({ start, end }) => text.slice(start, end))
    .toSorted();

const variants: readonly [string, (text: string) => string][] = [
  ['line feeds', (t) => t],
  ['carriage returns', (t) => t.replaceAll('\n', '\r\n')],
  ['a byte order mark', (t) => `\ufeff${t}`],
  ['no final line break', (t) => t.trimEnd()],
];

/** The tree with a change made by hand. */
function changed(tree: Tree, path: SpecPath, make: (parent: Tree, key: string | number) => void): Tree {
  const copy = structuredClone(tree);
  let parent = copy as Record<string | number, unknown>;
  for (const step of path.slice(0, -1)) parent = parent[step] as Record<string | number, unknown>;
  make(parent as Tree, path.at(-1) ?? '');
  return copy;
}

const set = (value: unknown) => (parent: Tree, key: string | number) => {
  (parent as Record<string | number, unknown>)[key] = value;
};

/** Paths of every plain value of the sample. */
function leaves(node: unknown, path: SpecPath = []): SpecPath[] {
  if (typeof node !== 'object' || node === null) return [path];
  const entries = Array.isArray(node) ? [...node.entries()] : Object.entries(node);
  return entries.flatMap(([key, value]) => leaves(value, [...path, key as string | number]));
}

describe.each(variants)('with %s', (_, vary) => {
  const text = vary(dunlin);
  const document = readHub(text);
  const tree = treeOf(text);
  const newline = text.includes('\r\n') ? '\r\n' : '\n';

  function edited(changes: readonly TextChange[], wanted: Tree): string {
    expect(changes.length).toBeGreaterThan(0);
    const after = apply(text, changes);
    expect(treeOf(after)).toEqual(wanted);
    expect(comments(after)).toEqual(comments(text));
    if (newline === '\r\n') expect(after.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
    else expect(after).not.toContain('\r');
    expect(after.startsWith('\ufeff')).toBe(text.startsWith('\ufeff'));
    return after;
  }

  const paths = leaves(tree);
  test('a value is set, and nothing else', () => {
    for (const path of paths) {
      edited(setValue(document, path, '13.91 ±0.02'), changed(tree, path, set('13.91 ±0.02')));
    }
  });

  test('a key is renamed in its place', () => {
    for (const path of paths.filter((p) => typeof p.at(-1) === 'string')) {
      const wanted = changed(tree, path, (parent, key) => {
        const record = parent as Record<string, unknown>;
        const pairs = Object.entries(record).map(([k, v]) => [k === key ? 'renamed' : k, v]);
        for (const k of Object.keys(record)) delete record[k];
        Object.assign(record, Object.fromEntries(pairs));
      });
      edited(renameKey(document, path, 'renamed'), wanted);
    }
  });

  test('a key is removed, its comment stays', () => {
    for (const path of paths.filter((p) => typeof p.at(-1) === 'string')) {
      const parent = path
        .slice(0, -1)
        .reduce((node, step) => (node as Record<string | number, unknown>)[step], tree as unknown);
      if (Object.keys(parent as object).length === 1) continue;
      edited(
        removeKey(document, path),
        changed(tree, path, (p, key) => delete (p as Record<string, unknown>)[key]),
      );
    }
  });

  test.each([
    ['a section in block style', ['shell']],
    ['a section in braces', ['axle']],
    ['an item', ['stack', 0]],
    ['an item in braces', ['variants', 'thru-15', 'add', 0]],
    ['a seat', ['shell', 'seats', 'left']],
    ['the file', []],
    ['a section that is not there', ['freehub']],
    ['a section two steps away', ['freehub', 'seats', 'left']],
  ] as const)('a key is added to %s', (__, section) => {
    const wanted = structuredClone(tree);
    let node = wanted as Record<string | number, unknown>;
    for (const step of section) {
      node[step] ??= {};
      node = node[step] as Record<string | number, unknown>;
    }
    node['fillet'] = '0.2';
    edited(insertKey(document, section, 'fillet', '0.2'), wanted);
  });

  test('a key is added behind the one named', () => {
    const after = edited(
      insertKey(document, ['stack', 0], 'bore', '12.1', { after: 'end-cap' }),
      changed(tree, ['stack', 0, 'bore'], set('12.1')),
    );
    expect(after).toContain(`  - end-cap: left${newline}    bore: 12.1${newline}    length`);
  });

  test('items are removed, inserted and swapped with their comments', () => {
    const stack = (tree as { stack: unknown[] }).stack;
    for (let i = 0; i < stack.length; i++) {
      edited(removeItem(document, ['stack', i]), changed(tree, ['stack'], set(stack.toSpliced(i, 1))));
      const inserted = stack.toSpliced(i, 0, { shim: 'left', length: '0.1' });
      edited(
        insertItem(document, ['stack'], i, ['shim: left', 'length: 0.1']),
        changed(tree, ['stack'], set(inserted)),
      );
      for (let j = i + 1; j < stack.length; j++) {
        const swapped = stack.with(i, stack[j]).with(j, stack[i]);
        edited(swapItems(document, ['stack', i], ['stack', j]), changed(tree, ['stack'], set(swapped)));
      }
    }
    const end = [...stack, { shim: 'left', length: '0.1' }];
    edited(
      insertItem(document, ['stack'], 99, ['shim: left', 'length: 0.1']),
      changed(tree, ['stack'], set(end)),
    );
    const add = ['variants', 'thru-15', 'add'];
    edited(
      insertItem(document, add, 0, ['washer: left', 'length: 1']),
      changed(tree, [...add, 0], (p) => (p as unknown[]).unshift({ washer: 'left', length: '1' })),
    );
  });

  test('a comment moves with the item below it', () => {
    const after = apply(text, swapItems(document, ['stack', 1], ['stack', 3]));
    expect(after.indexOf('# the bearings come')).toBeGreaterThan(after.indexOf('spacer: centre'));
    expect(after).toContain(`  # the bearings come from one lot${newline}  - bearing: left`);
  });

  test('an allowance goes on the line above, as far in', () => {
    for (const path of paths) {
      const after = apply(text, allowLine(document, path, 'width-off', 'agreed'));
      expect(treeOf(after)).toEqual(tree);
      const read = readHub(after);
      expect(read.problems).toEqual([]);
      expect(read.allowances).toHaveLength(1);
      const { target } = read.allowances[0] ?? { target: { start: 0, end: 0 } };
      const place = read.span(path, 'key');
      expect(target.start <= place.start && place.end <= target.end, path.join('.')).toBe(true);
    }
  });
});

test('an empty value is written behind its colon, before the comment', () => {
  const text = 'hub:   # its name\nwidth:\n';
  const document = readHub(text);
  expect(apply(text, setValue(document, ['hub'], 'Knot'))).toBe('hub: Knot   # its name\nwidth:\n');
});

test('a value keeps its quotes, and is quoted where it would not read back', () => {
  const text = 'hub: \'Knot\'\nrevision: "A"\nnotes: x\nclamp: { torque: 1 }\n';
  const document = readHub(text);
  expect(apply(text, setValue(document, ['hub'], "Knot's"))).toContain("hub: 'Knot''s'");
  expect(apply(text, setValue(document, ['revision'], 'B"'))).toContain('revision: "B\\""');
  fc.assert(
    fc.property(
      fc.string({ unit: fc.constantFrom(...'ab1 :#-,{}[]&*!|>\'"%@`?.±'), maxLength: 12 }),
      (value) => {
        for (const path of [['notes'], ['clamp', 'torque']]) {
          const after = treeOf(apply(text, setValue(document, path, value)));
          const read = path.reduce((node, step) => (node as Record<string, unknown>)[step], after as unknown);
          expect(read).toBe(value);
        }
      },
    ),
    { seed: 7, numRuns: 500 },
  );
});

test('a value with a decimal comma in braces is replaced whole', () => {
  const text = 'shell: { seats: { left: { bore: 26,01 +0,05/0, depth: 5 } } }\n';
  const after = apply(text, setValue(readHub(text), ['shell', 'seats', 'left', 'bore'], '26 N7'));
  expect(after).toBe('shell: { seats: { left: { bore: 26 N7, depth: 5 } } }\n');
});

test('what cannot be edited gives no change', () => {
  const document = readHub(dunlin);
  expect(setValue(document, ['shell'], '1')).toEqual([]);
  expect(insertKey(document, ['clamp'], 'torque', '12 N·m')).toEqual([]);
  expect(removeKey(document, ['freehub'])).toEqual([]);
  expect(removeItem(document, ['stack', 9])).toEqual([]);
  expect(swapItems(document, ['stack', 0], ['beside', 0])).toEqual([]);
  expect(allowLine(readHub(''), [], 'a-b', 'c')).toEqual([]);
});

test('a key with a stray sign before it on its line is left, and nothing before it is taken', () => {
  for (const sign of ['&', '!!binary']) {
    const document = readHub(`hub: Knot\nposition: front\n ${sign} face: 19.4\n`);
    for (const { span } of removeKey(document, ['face'])) expect(span.start).toBeLessThanOrEqual(span.end);
  }
});
