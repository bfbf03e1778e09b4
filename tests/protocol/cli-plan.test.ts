import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { hubwright, hubwrightJson, projectFolder, withFiles } from '../support/command-line.ts';
import { planShape } from '../support/plan-shape.ts';
import { lockedHub } from '../support/random-hub.ts';

const folders = ['client/samples', 'tests/drawing/hubs'];
const samples = folders.flatMap((folder) =>
  readdirSync(join(projectFolder, folder))
    .filter((name) => name.endsWith('.hub.yaml'))
    .map((name) => `${folder}/${name}`),
);

test('plan gives the documented shape for every sample', () => {
  expect(samples.length).toBeGreaterThan(10);
  for (const path of samples) {
    const { exit, json } = hubwrightJson(['plan', path]);
    expect(exit).toBe(0);
    expect(planShape.parse(json).file).toBe(path);
  }
});

test('plan tells the steps in order, and what locks the parts of a hub that has none', async () => {
  const { exit, out } = hubwright(['plan', 'client/samples/plover-rear.hub.yaml']);
  expect(exit).toBe(0);
  expect(out.indexOf('Slide freehub off')).toBeLessThan(out.indexOf('Take the retaining ring out'));
  expect(out).toContain('ring 28 from the wall');
  await withFiles({ 'a.hub.yaml': lockedHub(1) }, (folder) => {
    const called = hubwright(['plan', 'a.hub.yaml'], folder);
    expect(called.exit).toBe(1);
    expect(called.out).toContain('hold each other both ways');
    expect(hubwright(['plan'], folder).exit).toBe(2);
    expect(hubwright(['plan', 'b.hub.yaml'], folder).exit).toBe(2);
  });
});
