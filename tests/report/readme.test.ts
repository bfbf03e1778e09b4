import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { checkedFile } from '../../server/report/findings/checked-file.ts';
import { findingsText } from '../../server/report/findings/findings-text.ts';
import { sectionKeys } from '../../server/spec/schema/catalogue.ts';
import { createWorkspace } from '../../server/workspace/workspace.ts';
import { hubwright, projectFolder } from '../support/command-line.ts';

const readme = readFileSync(join(projectFolder, 'README.md'), 'utf8');
const [, spec = ''] = /```yaml\n([\s\S]*?)```/.exec(readme) ?? [];
const [, shown = ''] = /```yaml\n[\s\S]*?```\n```\n([\s\S]*?)```/.exec(readme) ?? [];

test('the finding that the README shows is the one its spec gives, word for word', () => {
  const workspace = createWorkspace();
  workspace.setFile('/dunlin-front.hub.yaml', spec);
  const snapshot = workspace.snapshot('/dunlin-front.hub.yaml');
  const text = snapshot ? findingsText([checkedFile('dunlin-front.hub.yaml', snapshot)]) : '';
  expect(shown.trim()).not.toBe('');
  expect(text.startsWith(shown)).toBe(true);
  expect(snapshot?.findings.findings).toHaveLength(1);
});

test('the README names every command and every key of a hub, a seat, what stands beside the stack, a workshop and a wheel', () => {
  for (const name of [
    'check',
    'stack',
    'mount',
    'solve',
    'wheel',
    'plan',
    'bearing',
    'identify',
    'fit',
    'draw',
    'explain',
  ]) {
    expect(readme).toContain(`| \`hubwright ${name}`);
    expect(hubwright([name, '--help']).exit).toBe(0);
  }
  const keys = (
    [
      ...([
        'hub',
        'seat',
        'workshop',
        'axle',
        'clamp',
        'retaining-ring',
        'cup',
        'duty',
        'beside:cover',
      ] as const),
      ...([
        'flange',
        'wheel',
        'wheel:rim',
        'wheel:lacing-side',
        'wheel:spoke-side',
        'wheel:nipples',
      ] as const),
      ...(['wheel:tension', 'wheel:tyre', 'wheel:rider'] as const),
    ] as const
  ).flatMap((section) => sectionKeys(section));
  const missing = keys.filter(({ key }) => !new RegExp(`\`${key}[\`:]`).test(readme)).map(({ key }) => key);
  expect(missing).toEqual([]);
});

test('the README names every key that stack and mount write for the samples', () => {
  const shapes = readme.slice(readme.indexOf('### JSON'), readme.indexOf('## The spec language'));
  const named = new Set(shapes.match(/[A-Za-z]+/g));
  for (const command of ['stack', 'mount']) {
    for (const name of ['avocet-cone', 'plover-rear', 'turnstone-worn', 'whimbrel-short']) {
      const { out } = hubwright([command, `client/samples/${name}.hub.yaml`, '--json']);
      expect(keysOf(JSON.parse(out)).filter((key) => !named.has(key))).toEqual([]);
    }
  }
});

function keysOf(value: unknown): readonly string[] {
  if (Array.isArray(value)) return value.flatMap(keysOf);
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => [key, ...keysOf(inner)]);
}

test('the two commands stand before everything but the job', () => {
  const start = readme.indexOf('npm start');
  const intro = readme.slice(0, start);
  expect(intro.split(/\n\n/).filter((part) => /^[A-Z]/.test(part))).toHaveLength(1);
  expect(readme.indexOf('npm test')).toBeGreaterThan(start);
});
