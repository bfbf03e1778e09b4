import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { checks } from '../../server/checks/registry.ts';

const root = join(import.meta.dirname, '..', '..', 'server', 'checks');
const groups = readdirSync(root, { withFileTypes: true }).filter((entry) => entry.isDirectory());

test('there are at least thirty checks', () => {
  expect(checks.length).toBeGreaterThanOrEqual(30);
});

test('codes are unique and written in small letters with hyphens', () => {
  const codes = checks.map(({ code }) => code);
  expect(new Set(codes).size).toBe(codes.length);
  for (const code of codes) expect(code).toMatch(/^[a-z]+(?:-[a-z]+)*$/);
});

test('the code of a check is the name of its file, its group the folder', () => {
  for (const { code, group } of checks) expect(existsSync(join(root, group, `${code}.ts`)), code).toBe(true);
});

test('every file that holds a check is registered', async () => {
  const registered = new Set(checks.map(({ code }) => code));
  for (const group of groups) {
    for (const name of readdirSync(join(root, group.name))) {
      const module: Record<string, unknown> = await import(join(root, group.name, name));
      for (const value of Object.values(module)) {
        if (isCheck(value)) expect(registered.has(value.code), `${group.name}/${name}`).toBe(true);
      }
    }
  }
});

test('a fixture folder belongs to a check', () => {
  const codes = new Set<string>(checks.map(({ code }) => code));
  const folders = readdirSync(import.meta.dirname, { withFileTypes: true })
    .filter((entry) => entry.isDirectory() && !entry.name.startsWith('__'))
    .map(({ name }) => name);
  expect(folders.filter((name) => !codes.has(name))).toEqual([]);
});

const isCheck = (value: unknown): value is { code: string } =>
  typeof value === 'object' && value !== null && 'code' in value && 'run' in value && 'page' in value;
