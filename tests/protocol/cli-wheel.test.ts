import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { hubwright, hubwrightJson, projectFolder, withFiles } from '../support/command-line.ts';
import { wheelShape } from '../support/wheel-shape.ts';

const hub = readFileSync(join(projectFolder, 'client/samples/plover-rear.hub.yaml'), 'utf8');
const rim =
  'rim: { erd: 596.5 ±0.5, erd-to: slot-bottom, holes: 32, area: 82, radial-stiffness: 110 N·m², lateral-stiffness: 200 N·m², torsional-stiffness: 25 N·m² }\n';
const head = 'wheel: Plover touring rear\nhub: ./plover-rear.hub.yaml\n';
const wheel = `${head}${rim}lacing: { left: { crosses: 3 }, right: { crosses: 3 } }
spokes: { right: { length: 291, profile: 2.0/1.8/2.0 } }
tension: { side: right, value: 1100 N, measured: { left: [550, 700], right: [1100] } }
tyre: { width: 32 }
`;

test('wheel --json has the documented shape, for a whole wheel and for one with nothing but its hub', async () => {
  const files = {
    'plover-rear.hub.yaml': hub,
    'a.wheel.yaml': wheel,
    'b.wheel.yaml': head,
    'c.wheel.yaml': 'wheel: C\n',
  };
  await withFiles(files, (folder) => {
    const whole = hubwrightJson(['wheel', 'a.wheel.yaml'], folder);
    expect(whole.exit).toBe(0);
    const json = wheelShape.parse(whole.json);
    expect(json.groups.map(({ side, group, count }) => [side, group, count])).toEqual([
      ['left', 'head-in', 8],
      ['left', 'head-out', 8],
      ['right', 'head-in', 8],
      ['right', 'head-out', 8],
    ]);
    expect(json.hub).toEqual({ file: './plover-rear.hub.yaml', name: 'Plover rear', variant: null });
    // Flanges 36 and 18 from the middle: about half the tension on the left (a simple ratio of the trade).
    expect(Math.abs((json.tension?.ratio ?? 0) - 0.5)).toBeLessThan(0.02);
    expect(json.groups[2]?.length?.written).toBe(291);
    for (const name of ['b.wheel.yaml', 'c.wheel.yaml']) {
      const bare = hubwrightJson(['wheel', name], folder);
      expect(bare.exit).toBe(1);
      expect(wheelShape.parse(bare.json).groups).toEqual([]);
    }
  });
});

test('wheel prints lengths, tensions, readings and strength for people, and what is to change', async () => {
  await withFiles({ 'plover-rear.hub.yaml': hub, 'a.wheel.yaml': wheel }, (folder) => {
    const { exit, out } = hubwright(['wheel', 'a.wheel.yaml'], folder);
    expect(exit).toBe(0);
    expect(out).toContain('Plover touring rear — a.wheel.yaml');
    expect(out).toMatch(/right, head in: 291 mm is 3\.\d mm too long; 28\d mm fits/);
    expect(out).toMatch(/balance: left 50\.\d % of right/);
    expect(out).toMatch(/spoke 2 700 N, \+12 %: loosen/);
    expect(out).toContain('compare, do not predict');
    expect(out).toContain('2 of 16 spokes');
  });
});

test('wheel wants one wheel file', async () => {
  await withFiles({ 'plover-rear.hub.yaml': hub, 'a.wheel.yaml': wheel }, (folder) => {
    for (const given of [
      ['wheel'],
      ['wheel', 'plover-rear.hub.yaml'],
      ['wheel', 'none.wheel.yaml'],
      ['wheel', '.'],
    ]) {
      const called = hubwright(given, folder);
      expect(called.exit).toBe(2);
      expect(called.err).not.toBe('');
    }
    expect(hubwright(['wheel', 'plover-rear.hub.yaml'], folder).err).toContain('NAME.wheel.yaml');
  });
});

test('a wheel file is drawn, gets its build sheet and stands in the order; one with too little says what to ask', async () => {
  const files = { 'plover-rear.hub.yaml': hub, 'a.wheel.yaml': wheel, 'b.wheel.yaml': head };
  await withFiles(files, (folder) => {
    const drawn = hubwright(['draw', 'a.wheel.yaml'], folder);
    expect([drawn.exit, drawn.out.slice(0, 4)]).toEqual([0, '<svg']);
    const sheet = hubwright(['sheet', 'a.wheel.yaml'], folder);
    expect([sheet.exit, sheet.out.split('\n')[0]]).toEqual([0, '# Plover touring rear']);
    expect(hubwright(['order', 'a.wheel.yaml'], folder).out).toMatch(/^spoke +291 +2\.0\/1\.8\/2\.0/m);
    const little = hubwright(['draw', 'b.wheel.yaml'], folder);
    expect(little.exit).toBe(1);
    expect(little.err).toContain('hubwright wheel b.wheel.yaml says what is missing');
    expect(hubwright(['sheet', 'b.wheel.yaml'], folder).out).toContain('rim.erd');
    expect(hubwright(['sheet', 'a.wheel.yaml', '--variant', 'x'], folder).exit).toBe(2);
  });
});
