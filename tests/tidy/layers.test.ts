import { posix } from 'node:path';
import { expect, test } from 'vitest';
import { importsOf, sourceFiles, sourceText } from './source-files.ts';

/**
 * Who may import whom. The longest row that begins a file's folder holds for it; a folder is always allowed
 * itself. Anything that is not listed is not allowed, and a folder without a row fails.
 */
const rows: Readonly<
  Record<string, { readonly folders: readonly string[]; readonly packages: readonly string[] }>
> = {
  'server/engine/base': { folders: [], packages: [] },
  'server/engine/tables': { folders: ['server/engine/base'], packages: [] },
  'server/engine/bearings': { folders: ['server/engine/base', 'server/engine/tables'], packages: [] },
  'server/engine/fits': { folders: ['server/engine/base', 'server/engine/tables'], packages: [] },
  'server/engine/stack': { folders: ['server/engine/base', 'server/engine/tables'], packages: [] },
  'server/engine/contact': { folders: ['server/engine/base', 'server/engine/tables'], packages: [] },
  'server/engine/seats': {
    folders: ['server/engine/base', 'server/engine/tables', 'server/engine/fits'],
    packages: [],
  },
  'server/engine/play': {
    folders: ['server/engine/base', 'server/engine/tables', 'server/engine/contact', 'server/engine/seats'],
    packages: [],
  },
  'server/engine/life': {
    folders: ['server/engine/base', 'server/engine/tables', 'server/engine/contact'],
    packages: [],
  },
  'server/engine/wheel': { folders: ['server/engine/base', 'server/engine/tables'], packages: [] },
  'server/spec': { folders: ['server/engine/base'], packages: ['yaml', 'zod'] },
  'server/assembly': { folders: ['server/engine', 'server/spec'], packages: [] },
  'server/analysis': { folders: ['server/engine', 'server/assembly', 'server/spec'], packages: [] },
  'server/service': {
    folders: ['server/engine', 'server/analysis', 'server/assembly', 'server/spec'],
    packages: [],
  },
  'server/checks': {
    folders: ['server/engine', 'server/analysis', 'server/assembly', 'server/spec', 'server/service'],
    packages: [],
  },
  'server/drawing': {
    folders: ['server/engine/base', 'server/assembly', 'server/analysis', 'server/service'],
    packages: [],
  },
  'server/report': {
    folders: [
      'server/engine',
      'server/checks',
      'server/analysis',
      'server/assembly',
      'server/spec',
      'server/service',
      'server/drawing',
      'server/workspace',
    ],
    packages: [],
  },
  'server/workspace': {
    folders: ['server/spec', 'server/assembly', 'server/analysis', 'server/checks'],
    packages: [],
  },
  'server/features': {
    folders: [
      'server/engine',
      'server/workspace',
      'server/analysis',
      'server/assembly',
      'server/spec',
      'server/checks',
    ],
    packages: ['vscode-languageserver-types'],
  },
  'server/protocol': { folders: [], packages: [] },
  'server/lsp': {
    folders: [
      'server/features',
      'server/workspace',
      'server/drawing',
      'server/report',
      'server/protocol',
      'server/checks',
      'server/analysis',
      'server/spec',
    ],
    packages: ['vscode-languageserver', 'vscode-languageserver-textdocument', 'vscode-languageserver-types'],
  },
  'server/node': {
    folders: [
      'server/lsp',
      'server/workspace',
      'server/report',
      'server/checks',
      'server/drawing',
      'server/engine',
      'server/spec',
      'server/analysis',
      'server/protocol',
    ],
    packages: ['vscode-languageserver/node', 'node:'],
  },
  'server/browser': {
    folders: ['server/lsp', 'server/protocol'],
    packages: ['vscode-languageserver/browser'],
  },
  client: { folders: ['server/protocol'], packages: ['vscode', 'vscode-languageclient', 'node:'] },
};

const rowFor = (path: string): string | undefined =>
  Object.keys(rows)
    .filter((folder) => path.startsWith(`${folder}/`))
    .sort((a, b) => b.length - a.length)[0];

function offences(path: string): readonly string[] {
  const row = rowFor(path);
  if (row === undefined) return [`${path} lies in a folder without a row`];
  const allowed = rows[row] as (typeof rows)[string];
  return importsOf(sourceText(path)).flatMap((wanted) => {
    if (!wanted.startsWith('.')) {
      const known = allowed.packages.some((name) =>
        name.endsWith(':') ? wanted.startsWith(name) : wanted === name || wanted.startsWith(`${name}/`),
      );
      return known ? [] : [`${path} imports ${wanted}`];
    }
    const target = posix.join(posix.dirname(path), wanted);
    const inside = [row, ...allowed.folders].some((folder) => target.startsWith(`${folder}/`));
    return inside ? [] : [`${path} imports ${target}`];
  });
}

const files = sourceFiles('server', 'client');

test('there are files to look at', () => {
  expect(files.length).toBeGreaterThan(100);
});

test('a forbidden import would be seen', () => {
  expect(importsOf("import { a } from '../lsp/server.ts';\nimport type { B } from 'zod';")).toEqual([
    '../lsp/server.ts',
    'zod',
  ]);
  expect(importsOf("export { a } from './x.ts';\nimport './y.ts';\nawait import('./z.ts');")).toEqual([
    './x.ts',
    './y.ts',
    './z.ts',
  ]);
});

test('every file imports only from the folders and packages of its row', () => {
  expect(files.flatMap(offences)).toEqual([]);
});

test('no two folders import each other', () => {
  const edges = new Map<string, Set<string>>();
  for (const path of files) {
    const from = rowFor(path) ?? '';
    for (const wanted of importsOf(sourceText(path)).filter((name) => name.startsWith('.'))) {
      const to = rowFor(posix.join(posix.dirname(path), wanted)) ?? '';
      if (to !== from) edges.set(from, (edges.get(from) ?? new Set()).add(to));
    }
  }
  const circles = [...edges].flatMap(([from, targets]) =>
    [...targets].filter((to) => edges.get(to)?.has(from)).map((to) => `${from} ↔ ${to}`),
  );
  expect(circles).toEqual([]);
});
