import { readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { hubwright, hubwrightJson, projectFolder, withFiles } from '../support/command-line.ts';
import { mountShape, solveShape, stackShape, traceShape } from '../support/json-shapes.ts';
import { sanderling } from '../support/sanderling.ts';

const samples = readdirSync(join(projectFolder, 'client/samples'))
  .filter((name) => name.endsWith('.hub.yaml'))
  .map((name) => `client/samples/${name}`);

test('stack, mount and solve give the documented shape for every sample', () => {
  expect(samples.length).toBeGreaterThan(4);
  for (const path of samples) {
    expect(stackShape.parse(hubwrightJson(['stack', path]).json).file).toBe(path);
    expect(mountShape.parse(hubwrightJson(['mount', path]).json).file).toBe(path);
    expect(solveShape.parse(hubwrightJson(['solve', path, '--for', 'play']).json).file).toBe(path);
  }
});

test('mount prints what the bearings come to, at the temperature and clamp asked for', async () => {
  await withFiles({ 'a.hub.yaml': sanderling({ clamp: '5 kN' }) }, (folder) => {
    const { exit, out } = hubwright(['mount', 'a.hub.yaml'], folder);
    expect(exit).toBe(0);
    expect(out).toContain('Sanderling — a.hub.yaml, at 20 °C, clamp 5 kN');
    expect(out).toMatch(/axial force through each bearing +1\d\.\d N/);
    const json = (...given: string[]) =>
      mountShape.parse(hubwrightJson(['mount', 'a.hub.yaml', ...given], folder).json).variants[0];
    expect(json('--clamp', '1 kN')).toMatchObject({ clampForce: 1000 });
    expect(json('--clamp=800')).toMatchObject({ clampForce: 800 });
    expect(json('--temperature', '-10')).toMatchObject({ temperature: -10, clampForce: 5000 });
    const [cold, warm] = [json('--temperature', '-10'), json('--temperature', '45 °C')];
    const mean = (of: typeof cold) => of?.bearings[0]?.mountedClearanceUm?.mean ?? Number.NaN;
    expect(mean(cold)).toBeLessThan(mean(warm));
  });
});

test('options that cannot be followed end with 2 and say what would be', async () => {
  await withFiles({ 'a.hub.yaml': sanderling() }, (folder) => {
    const called = (...given: string[]) => hubwright(given, folder);
    expect(called('mount', 'a.hub.yaml', '--temperature', 'cold')).toMatchObject({ exit: 2, out: '' });
    expect(called('mount', 'a.hub.yaml', '--temperature', 'cold').err).toContain('--temperature -10');
    expect(called('mount', 'a.hub.yaml', '--clamp', '5 N·m').err).toContain('a force is wanted here');
    expect(called('solve', 'a.hub.yaml', '--yield', '1.5').err).toContain('--yield 0.9973');
    expect(called('solve', 'a.hub.yaml', '--for', 'width').err).toContain('--for takes play');
    expect(called('mount').exit).toBe(2);
    expect(called('solve').exit).toBe(2);
    expect(called('mount', 'b.hub.yaml').exit).toBe(2);
  });
});

test('solve prints the spacer to write, and ends with 1 where no spacer gives the yield', async () => {
  const text = sanderling({ clamp: '5 kN', code: '6803-2RS C3' });
  await withFiles({ 'a.hub.yaml': text }, (folder) => {
    const enough = hubwright(['solve', 'a.hub.yaml', '--for', 'play', '--yield', '90 %'], folder);
    expect(enough.exit).toBe(0);
    expect(enough.out).toMatch(/write +spacer\.centre 62\.\d+ ±0\.01/);
    const never = hubwright(['solve', 'a.hub.yaml', '--yield', '0.99999'], folder);
    expect(never.exit).toBe(1);
    expect(never.out).toMatch(/best +spacer\.centre 62\.\d+ ±0\.01/);
    expect(never.out).toContain('what would bring more');
  });
});

test('explain tells the chain of a number at an address, and which addresses there are', async () => {
  await withFiles({ 'a.hub.yaml': sanderling({ clamp: '5 kN' }) }, (folder) => {
    const { json } = hubwrightJson(['explain', 'a.hub.yaml', 'spacer.centre'], folder);
    const { steps } = traceShape.parse(json);
    expect(steps.map(({ unit }) => unit)).toContain('N');
    expect(steps.some(({ source }) => source !== null)).toBe(true);
    const { out } = hubwright(['explain', 'a.hub.yaml', 'bearing.left'], folder);
    expect(out).toContain('Ga = √(4·m0·G − G²)');
    expect(out).toContain('source: ');
    const near = hubwright(['explain', 'a.hub.yaml', 'spacer.center'], folder);
    expect(near).toMatchObject({ exit: 2, out: '' });
    expect(near.err).toContain('nearest is spacer.centre');
    expect(hubwright(['explain', 'a.hub.yaml'], folder).err).toContain('bearing.left');
  });
});

test('stack tells play and load for people', async () => {
  await withFiles({ 'a.hub.yaml': sanderling({ clamp: '5 kN' }), 'b.hub.yaml': sanderling() }, (folder) => {
    const play = (name: string) =>
      hubwright(['stack', name], folder)
        .out.split('\n')
        .find((line) => line.startsWith('  bearing.left and bearing.right'));
    expect(play('a.hub.yaml')).toMatch(/µm +none +1\d\.\d N +6\d µm/);
    expect(play('b.hub.yaml')).toMatch(/µm +needs clamp/);
  });
});

test('sheet writes a page to print or Markdown, and says what it cannot write', async () => {
  await withFiles({ 'a.hub.yaml': sanderling({ clamp: '5 kN' }) }, (folder) => {
    const called = (...given: string[]) => hubwright(['sheet', 'a.hub.yaml', ...given], folder);
    expect(called().out).toMatch(/^# Sanderling\n/);
    expect(called('-o', 'a.html')).toMatchObject({ exit: 0, out: 'Sanderling: written to a.html\n' });
    expect(readdirSync(folder)).toContain('a.html');
    expect(called('-o', 'a.pdf').err).toContain('.html nor in .md');
    expect(called('-o', 'no/a.html').err).toContain('its folder is not there');
    expect(called('--variant', 'wide').err).toContain('it has no variants');
    const { sheet } = hubwrightJson(['sheet', 'a.hub.yaml'], folder).json as {
      sheet: { apart: { number: number }[] };
    };
    expect(sheet.apart.length).toBeGreaterThan(3);
  });
});

test('order lists a folder as text, csv, markdown or json, and ends with 2 where a path is not there', async () => {
  await withFiles({ 'a.hub.yaml': sanderling(), 'c.hub.yaml': sanderling() }, (folder) => {
    const called = (...given: string[]) => hubwright(['order', ...given], folder);
    expect(called('.').out).toMatch(/^what +size, mm/);
    expect(called('.', '--format', 'csv').out).toMatch(/^what,"size, mm",code/);
    expect(called('.', '--format', 'markdown').out).toMatch(/^# To order/);
    const { lines } = hubwrightJson(['order', '.', '--sets', '3'], folder).json as {
      lines: { kind: string; count: number }[];
    };
    expect(lines.find(({ kind }) => kind === 'bearing')?.count).toBe(12);
    expect(called('no.hub.yaml', 'a.hub.yaml')).toMatchObject({ exit: 2 });
    expect(called('no.hub.yaml', 'a.hub.yaml').out).toContain('bearing');
    expect(called('.', '--sets', '0').err).toContain('--sets 10');
    writeFileSync(join(folder, 'd.hub.yaml'), 'hub: [broken');
    expect(called('.')).toMatchObject({ exit: 1, out: expect.stringContaining('d.hub.yaml') });
    const { unread } = hubwrightJson(['order', '.'], folder).json as { unread: { path: string }[] };
    expect(unread.map(({ path }) => path)).toEqual(['d.hub.yaml']);
    expect(called().exit).toBe(2);
  });
});

test('interchange says what fits instead, and in a hub what that does', async () => {
  await withFiles({ 'a.hub.yaml': sanderling({ clamp: '5 kN' }) }, (folder) => {
    const called = (...given: string[]) => hubwright(['interchange', ...given], folder);
    const { out } = called('6804-2RS', '--in', 'a.hub.yaml');
    expect(out).toContain('the same under another name: 61804-2RS');
    expect(out).toMatch(/6804-2Z, with shields/);
    expect(called('6804-2RS').out).not.toContain('here bearing');
    expect(out).toContain('The hub holds no 6804-2RS');
    expect(called('6803-2RS', '--in', 'a.hub.yaml').out).toContain('here bearing.left: mounted clearance');
    const sized = sanderling({ clamp: '5 kN' }).replaceAll('code: 6803-2RS', 'size: 17x26x5');
    writeFileSync(join(folder, 'b.hub.yaml'), sized);
    const bySize = called('6803-2RS', '--in', 'b.hub.yaml').out;
    expect(bySize).toContain('bearing.left and bearing.right are written by their size alone');
    expect(bySize).toContain('here bearing.right');
    expect(called('6804-2RS', '--in', 'c.hub.yaml').exit).toBe(2);
    expect(called('QX9').exit).toBe(1);
    const { alternatives } = hubwrightJson(['interchange', '6804-2RS'], folder).json as {
      alternatives: { code: string; exchange: string }[];
    };
    expect(alternatives.map(({ exchange }) => exchange)).toContain('hybrid');
  });
});

test('new takes piped answers, writes the file once and never over another', async () => {
  await withFiles({ 'there.hub.yaml': sanderling() }, (folder) => {
    const answers = 'Whinchat\n'.concat('\n'.repeat(60));
    const called = (path: string, input: string) => hubwright(['new', path], folder, input);
    expect(called('a.hub.yaml', answers)).toMatchObject({ exit: 0 });
    expect(readdirSync(folder)).toContain('a.hub.yaml');
    const again = called('c.hub.yaml', answers).out;
    expect(again).toMatch(/not checked: clamped width; it takes length of end-cap\.left/);
    // The same file checked by hand gives the same number.
    const findings = (
      hubwrightJson(['check', 'c.hub.yaml'], folder).json as { files: { findings: unknown[] }[] }
    ).files[0]?.findings;
    expect(again).toContain(`its checks find ${findings?.length} faults`);
    expect(called('there.hub.yaml', answers).err).toContain('is there already');
    expect(called('b.hub.yaml', 'Whinchat\n')).toMatchObject({ exit: 1 });
    expect(readdirSync(folder)).not.toContain('b.hub.yaml');
    expect(called('b.yaml', answers).exit).toBe(2);
  });
});
