import { execFileSync } from 'node:child_process';
import { basename } from 'node:path';
import { expect, test } from 'vitest';
import { projectFolder, sourceFiles, sourceText } from './source-files.ts';

const server = sourceFiles('server', 'client');
const lines = (path: string): number => sourceText(path).split('\n').length;

test('no file passes 300 lines, tables apart', () => {
  const long = server.filter((path) => !path.includes('/tables/') && 300 < lines(path));
  expect(long.map((path) => `${path}: ${lines(path)}`)).toEqual([]);
});

test('files are named in kebab-case and say what is in them', () => {
  const drawers = ['utils', 'helpers', 'common', 'core', 'shared', 'manager', 'index', 'misc'];
  const odd = server.filter((path) => {
    const name = basename(path, '.ts');
    return !/^[a-z0-9]+(-[a-z0-9]+)*$/.test(name) || drawers.includes(name);
  });
  expect(odd).toEqual([]);
});

test('the engine has no clock, no chance, no waiting and no exceptions', () => {
  const forbidden =
    /\bMath\.random\b|\bDate\b|\basync\b|\bawait\b|\bthrow\b|\bconsole\b|\bsetTimeout\b|\bprocess\b/;
  const code = (path: string) =>
    sourceText(path).replace(/\/\*[\s\S]*?\*\/|\/\/[^\n]*|'[^'\n]*'|`[^`]*`/g, '');
  const engine = sourceFiles('server/engine');
  expect(engine.length).toBeGreaterThan(20);
  expect(engine.filter((path) => forbidden.test(code(path)))).toEqual([]);
});

test('the top level holds only what was agreed', () => {
  const tracked = execFileSync('git', ['ls-files'], { cwd: projectFolder, encoding: 'utf8' });
  const top = new Set(tracked.split('\n').map((path) => path.split('/')[0] ?? ''));
  const agreed = new Set([
    'README.md',
    'DEVELOPERS.md',
    'CHANGELOG.md',
    'LICENSE',
    'package.json',
    'package-lock.json',
    'tsconfig.json',
    'client',
    'server',
    'grammars',
    'tests',
  ]);
  expect([...top].filter((name) => name !== '' && !name.startsWith('.') && !agreed.has(name))).toEqual([]);
});

test('every exported function and constant of the engine says what it means', () => {
  const bare = sourceFiles('server/engine').flatMap((path) => {
    const text = sourceText(path);
    const exports = [...text.matchAll(/(^|\n)export (?:function\*?|const) (\w+)/g)];
    return exports
      .filter((match) => !/\*\/\s*$/.test(text.slice(0, (match.index ?? 0) + (match[1] ?? '').length)))
      .map((match) => `${path}: ${match[2]}`);
  });
  expect(bare).toEqual([]);
});
