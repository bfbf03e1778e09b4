import { expect, test } from 'vitest';
import { pageHub } from '../../server/checks/page-hub.ts';
import { pageFlanges } from '../../server/checks/page-wheel.ts';
import { checks } from '../../server/checks/registry.ts';
import { createWorkspace } from '../../server/workspace/workspace.ts';

/** Eight holes on the left and sixteen on the right, for a 2:1 wheel. */
const ruffFlanges: readonly [string, string] = [
  pageFlanges[0],
  pageFlanges[1].replace('left: { holes: 16', 'left: { holes: 8'),
];

/** A page cannot print a million characters. */
const untold = new Set(['file-too-large']);

test.each(checks.filter(({ code }) => !untold.has(code)).map((check) => [check.code, check] as const))(
  'the page of %s shows the fault and the same lines mended',
  (code, { page }) => {
    expect(codesIn(page.bad)).toContain(code);
    expect(codesIn(page.good)).not.toContain(code);
  },
);

test.each(checks.map((check) => [check.code, check] as const))(
  'the page of %s says why, with its sources',
  (_, { page, summary }) => {
    expect(summary).toMatch(/^[A-Z][^!]*\.$/);
    expect(page.why).toMatch(/^[A-Z][^!]*\.$/);
    const sentences = page.why.split(/(?<=\.)\s+(?=[A-Z])/).length;
    expect(sentences).toBeGreaterThanOrEqual(2);
    expect(sentences).toBeLessThanOrEqual(6);
    expect(page.sources.length).toBeGreaterThan(0);
  },
);

/** What is found in an example, with a sound hub and a workshop beside it. */
function codesIn(text: string): readonly string[] {
  const workspace = createWorkspace();
  workspace.setRoots(['/bench/pages']);
  workspace.setFile('/bench/pages/dunlin-front.hub.yaml', pageHub(pageFlanges));
  workspace.setFile('/bench/pages/ruff-rear.hub.yaml', pageHub(ruffFlanges));
  workspace.setFile(
    '/bench/pages/saltmarsh.workshop.yaml',
    'workshop: Saltmarsh\nbearings:\n  DB-17: { code: 6803-2RS }\ndrivers:\n  - { name: ring 26, outside: 25.7, inside: 24.2 }\n',
  );
  const kind = text.startsWith('wheel:') ? 'wheel' : text.startsWith('workshop:') ? 'workshop' : 'hub';
  const file = `/bench/pages/example.${kind}.yaml`;
  workspace.setFile(file, text);
  return workspace.snapshot(file)?.findings.findings.map((finding) => finding.code) ?? [];
}
