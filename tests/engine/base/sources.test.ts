import { expect, test } from 'vitest';
import { type SourceKind, sources } from '../../../server/engine/base/sources.ts';

test('every source has a kebab-case id, a title of its own and a kind', () => {
  const entries = Object.entries(sources) as [string, { title: string; kind: SourceKind }][];
  for (const [id, { title }] of entries) {
    expect(id).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/);
    expect(title.length, id).toBeGreaterThan(10);
  }
  expect(new Set(entries.map(([, { title }]) => title)).size).toBe(entries.length);
});

test('a standard is cited by its number', () => {
  for (const { title, kind } of Object.values(sources) as { title: string; kind: SourceKind }[]) {
    if (kind === 'standard') expect(title).toMatch(/^(ISO|EN|DIN|GOST|JIS)\b.*\d/);
  }
});
