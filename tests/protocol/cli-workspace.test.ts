import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { hubwright, hubwrightJson, withFiles } from '../support/command-line.ts';
import { bearingShape, checkShape, stackShape } from '../support/json-shapes.ts';

const hub = (code: string): string => `hub: Dunlin front
position: front
width: 100 ±0.2
stack:
  - end-cap: left
    length: 14.03
  - bearing: left
    code: ${code}
  - spacer: centre
    length: 62.06
  - bearing: right
    code: ${code}
  - end-cap: right
    length: 14.03
`;
const workshop = 'bearings:\n  SW-17: { code: 6803-2RS }\n';
const codesOf = (json: unknown): readonly string[] =>
  checkShape.parse(json).files.flatMap(({ findings }) => findings.map(({ code }) => code));

test('workshop files hold from the folder with the .git down to the file', async () => {
  await withFiles({ 'saltmarsh.workshop.yaml': workshop }, (folder) => {
    mkdirSync(join(folder, '.git'));
    mkdirSync(join(folder, 'hubs', 'front'), { recursive: true });
    writeFileSync(join(folder, 'hubs', 'front', 'dunlin.hub.yaml'), hub('SW-17'));
    const named = hubwrightJson(['check', 'hubs/front/dunlin.hub.yaml'], folder);
    expect(codesOf(named.json)).not.toContain('bearing-not-decoded');
    const { variants } = stackShape.parse(
      hubwrightJson(['stack', 'hubs/front/dunlin.hub.yaml'], folder).json,
    );
    expect(variants[0]?.width.nominal).toBeCloseTo(100.12, 9);
  });
});

test('without a .git above, the workspace is the folder of the file alone', async () => {
  await withFiles({ 'saltmarsh.workshop.yaml': workshop }, (folder) => {
    mkdirSync(join(folder, 'hubs'));
    writeFileSync(join(folder, 'hubs', 'dunlin.hub.yaml'), hub('SW-17'));
    const { exit, json } = hubwrightJson(['check', 'hubs/dunlin.hub.yaml'], folder);
    expect(exit).toBe(1);
    expect(codesOf(json)).toContain('bearing-not-decoded');
  });
});

test('a folder above the .git is not part of the workspace', async () => {
  await withFiles({ 'saltmarsh.workshop.yaml': workshop }, (folder) => {
    mkdirSync(join(folder, 'project', '.git'), { recursive: true });
    writeFileSync(join(folder, 'project', 'dunlin.hub.yaml'), hub('SW-17'));
    expect(codesOf(hubwrightJson(['check', 'project'], folder).json)).toContain('bearing-not-decoded');
  });
});

test('house codes are answered where their workshop file holds', async () => {
  await withFiles({ 'saltmarsh.workshop.yaml': workshop }, (folder) => {
    const { exit, json } = hubwrightJson(['bearing', 'SW-17'], folder);
    expect(exit).toBe(0);
    expect(bearingShape.parse(json)).toMatchObject({
      code: 'SW-17',
      houseCode: 'SW-17',
      normalised: '61803-2RS',
    });
  });
});

test('paths are reported as they were given, in one order, each file once', async () => {
  await withFiles({ 'b.hub.yaml': hub('6803-2RS'), 'a.hub.yaml': hub('6803-2RS') }, (folder) => {
    mkdirSync(join(folder, 'node_modules'));
    writeFileSync(join(folder, 'node_modules', 'c.hub.yaml'), '');
    const paths = (...given: readonly string[]) =>
      checkShape.parse(hubwrightJson(['check', ...given], folder).json).files.map(({ path }) => path);
    expect(paths('.')).toEqual(['a.hub.yaml', 'b.hub.yaml']);
    expect(paths('b.hub.yaml', '.')).toEqual(['a.hub.yaml', 'b.hub.yaml']);
    expect(paths(join(folder, 'a.hub.yaml'))).toEqual([join(folder, 'a.hub.yaml')]);
  });
});

test('a wheel file finds the hub it names, and misses the one that is not there', async () => {
  const wheel = (name: string): string => `wheel: Dunlin touring front\nhub: ./${name}.hub.yaml\n`;
  await withFiles(
    {
      'dunlin.hub.yaml': hub('6803-2RS'),
      'good.wheel.yaml': wheel('dunlin'),
      'bad.wheel.yaml': wheel('dunlim'),
    },
    (folder) => {
      expect(codesOf(hubwrightJson(['check', 'good.wheel.yaml'], folder).json)).not.toContain(
        'file-not-found',
      );
      expect(codesOf(hubwrightJson(['check', 'bad.wheel.yaml'], folder).json)).toContain('file-not-found');
      expect(hubwright(['check', 'bad.wheel.yaml'], folder).out).toContain('dunlin.hub.yaml');
    },
  );
});
