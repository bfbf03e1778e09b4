import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { lacedSpokes } from '../../../server/analysis/wheel/laced-spokes.ts';
import { spokeCrossings } from '../../../server/analysis/wheel/spoke-crossings.ts';
import { createWorkspace } from '../../../server/workspace/workspace.ts';

const samples = join(import.meta.dirname, '../../../client/samples');
const names = readdirSync(samples);
const workspace = createWorkspace();
workspace.setRoots(['/w']);
for (const name of names) workspace.setFile(`/w/${name}`, readFileSync(join(samples, name), 'utf8'));
const wheels = names.filter((name) => name.endsWith('.wheel.yaml'));

function laced(name: string) {
  const wheel = workspace.snapshot(`/w/${name}`)?.analysis.wheel();
  const found = wheel && lacedSpokes(wheel);
  if (!wheel || !found) throw new Error(name);
  return { wheel, ...found };
}

// The meaning of "X crossings" (common practice): between hub and rim each spoke meets X spokes of its own side.
test.each(wheels)(
  '%s: every spoke meets as many of its side as its lacing says, every hole is used once',
  (name) => {
    const { wheel, spokes } = laced(name);
    expect(spokes.map(({ rimHole }) => rimHole)).toEqual(spokes.map((_, at) => at + 1));
    for (const { side, count, lacing, flange } of wheel.sides) {
      const own = spokes.filter((spoke) => spoke.side === side);
      expect(own).toHaveLength(count);
      const crossings = spokeCrossings(own, true);
      // Heads of straight-pull spokes have no pattern of holes to keep to.
      if (flange.straightPull) continue;
      for (const spoke of own)
        expect(crossings.filter(({ outer, inner }) => outer === spoke || inner === spoke)).toHaveLength(
          lacing.crosses,
        );
      const turns = own
        .map(({ hubTurn }) => ((hubTurn % 6.283185307) + 6.283185307) % 6.283185307)
        .sort((a, b) => a - b);
      for (const [at, turn] of turns.entries())
        if (at > 0) expect(turn - (turns[at - 1] ?? 0)).toBeCloseTo((2 * Math.PI) / count, 6);
    }
  },
);

// Common practice: the valve stands where the spokes beside it lean away from it, so that a pump has room.
test.each(wheels)('%s: no spoke leans over the valve', (name) => {
  const { spokes } = laced(name);
  expect(spokes[0]?.direction).not.toBe('leading');
  expect(spokes.at(-1)?.direction).not.toBe('trailing');
});

test('interlaced spokes with their heads inwards pass behind at their last crossing and nowhere else', () => {
  const { spokes } = laced('plover-touring.wheel.yaml');
  const right = spokes.filter(({ side }) => side === 'right');
  const crossings = spokeCrossings(right, true);
  expect(crossings.filter(({ under }) => under).map(({ order }) => order)).toEqual(Array(8).fill(3));
  expect(crossings.every(({ outer, inner }) => outer.head === 'head-in' && inner.head === 'head-out')).toBe(
    true,
  );
  expect(spokeCrossings(right, false).some(({ under }) => under)).toBe(false);
});
