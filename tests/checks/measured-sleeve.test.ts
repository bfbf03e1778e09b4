import { expect, test } from 'vitest';
import { createWorkspace } from '../../server/workspace/workspace.ts';

const hub = `hub: Dunlin
position: front
width: 90.03
shell:
  outside: 36
  between-shoulders: measured 50.00
  seats:
    left: { bore: 28, depth: 7 }
    right: { bore: 28, depth: 7 }
axle: { diameter: 15 }
stack:
  - { end-cap: left, length: 13.06 ±0.02 }
  - { bearing: left, code: 6902-2RS, seat: shell.left }
  - { spacer: centre, length: measured 49.95, inside: 15.1, outside: 17.8 }
  - { bearing: right, code: 6902-2RS, seat: shell.right }
  - { end-cap: right, length: 13.06 ±0.02 }
clamp: 5 kN
`;

/* A sleeve that was only measured has no drawn length to rewrite; Young's modulus of steel is three times that of
   aluminium (common practice), so the clamp takes a third from a sleeve of steel. */
test('where the clamp takes the play of a measured sleeve, the message names the sleeve and both cures', () => {
  const workspace = createWorkspace();
  workspace.setFile('/dunlin.hub.yaml', hub);
  const { findings } = workspace.snapshot('/dunlin.hub.yaml')?.findings ?? { findings: [] };
  const found = findings.find(({ code }) => code === 'clamp-takes-play');
  expect(found?.message).toMatch(/— make spacer\.centre of steel, or longer$/);
  expect(found?.fixes.map(({ title }) => title).join()).toContain('Make spacer.centre of steel');
});
