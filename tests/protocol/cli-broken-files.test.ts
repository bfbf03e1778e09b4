import { mkdirSync, symlinkSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { hubwright, hubwrightJson, withFiles } from '../support/command-line.ts';
import { checkShape, stackShape } from '../support/json-shapes.ts';

const sound = `hub: Dunlin front
position: front
width: 100 ±0.2
stack:
  - end-cap: left
    length: 14.03 ±0.02
  - bearing: left
    code: 6803-2RS
  - spacer: centre
    length: 62.06 ±0.01
  - bearing: right
    code: 6803-2RS
  - end-cap: right
    length: 14.03 ±0.02
`;
const noise = Uint8Array.from({ length: 4096 }, (_, at) => (at * 7919 + (at >> 3) * 31) % 256);

/** Each broken file with a code that must be among its findings. */
const broken: readonly (readonly [what: string, content: string | Uint8Array, code: string])[] = [
  ['an empty file', '', 'empty-file'],
  ['tabs before keys', sound.replace('    length: 14.03', '\tlength: 14.03'), 'tab-indentation'],
  [
    'conflict markers',
    sound.replace(
      'width: 100 ±0.2',
      '<<<<<<< ours\nwidth: 100 ±0.2\n=======\nwidth: 100 ±0.1\n>>>>>>> theirs',
    ),
    'conflict-markers',
  ],
  ['a second document', `${sound}---\nhub: Plover\n`, 'more-than-one-document'],
  ['a half-typed end', `${sound}  - bea`, 'unknown-kind'],
  ['a decimal comma', sound.replace('62.06', '62,06'), 'decimal-comma'],
  ['bytes that are no text', noise, 'yaml-syntax'],
];

for (const [what, content, code] of broken) {
  test(`check and stack answer with one JSON document for ${what}`, async () => {
    await withFiles({ 'dunlin.hub.yaml': content }, (folder) => {
      const checked = hubwrightJson(['check', 'dunlin.hub.yaml'], folder);
      const { files } = checkShape.parse(checked.json);
      expect(files).toHaveLength(1);
      expect(files[0]?.path).toBe('dunlin.hub.yaml');
      expect(files[0]?.findings.map((finding) => finding.code)).toContain(code);
      expect(checked.err).toBe('');
      const stacked = hubwrightJson(['stack', 'dunlin.hub.yaml'], folder);
      expect(stackShape.parse(stacked.json).file).toBe('dunlin.hub.yaml');
      expect(stacked.err).toContain('dunlin.hub.yaml');
    });
  });
}

test('a mistake leaves the rest of the stack alive', async () => {
  await withFiles({ 'dunlin.hub.yaml': `${sound}shell:\n  lenght: 72\n` }, (folder) => {
    const { variants } = stackShape.parse(hubwrightJson(['stack', 'dunlin.hub.yaml'], folder).json);
    // 14.03 + 5 + 62.06 + 5 + 14.03
    expect(variants[0]?.width.nominal).toBeCloseTo(100.12, 9);
  });
});

test('the same fault is reported at the same place with LF, with CRLF and after a byte order mark', async () => {
  const text = sound.replace('code: 6803-2RS', 'code: 6893-2RS');
  const files = {
    'lf.hub.yaml': text,
    'crlf.hub.yaml': text.replaceAll('\n', '\r\n'),
    'bom.hub.yaml': `\uFEFF${text}`,
  };
  await withFiles(files, (folder) => {
    const { files: checked } = checkShape.parse(hubwrightJson(['check', '.'], folder).json);
    expect(checked.map(({ path }) => path)).toEqual(['bom.hub.yaml', 'crlf.hub.yaml', 'lf.hub.yaml']);
    for (const { findings } of checked) {
      const found = findings.find(({ code }) => code === 'bearing-not-decoded');
      expect(found?.range).toEqual({ start: { line: 7, character: 10 }, end: { line: 7, character: 18 } });
    }
  });
});

test('a byte order mark in the first line does not move the place of a finding there', async () => {
  await withFiles({ 'bom.hub.yaml': `\uFEFFhobby: 1\n${sound}` }, (folder) => {
    const { files } = checkShape.parse(hubwrightJson(['check', 'bom.hub.yaml'], folder).json);
    const found = files[0]?.findings.find(({ code }) => code === 'unknown-key');
    expect(found?.range).toEqual({ start: { line: 0, character: 0 }, end: { line: 0, character: 5 } });
  });
});

test('no control characters of a file reach the terminal', async () => {
  await withFiles(
    { 'odd.hub.yaml': noise, 'bell.hub.yaml': `hub: a\n\u001b]0;owned\u0007: 1\n` },
    (folder) => {
      const { out } = hubwright(['check', '.'], folder);
      // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what must not be there.
      expect(out.replaceAll('\n', '')).not.toMatch(/[\u0000-\u001f\u007f-\u009f]/);
      expect(out).toContain('bell.hub.yaml:2');
    },
  );
});

test('a missing path ends with 2, is told on standard error, and the others are still checked', async () => {
  await withFiles({ 'dunlin.hub.yaml': sound }, (folder) => {
    const { exit, err, json } = hubwrightJson(['check', 'dunlin.hub.yaml', 'gone.hub.yaml'], folder);
    expect(exit).toBe(2);
    expect(err).toBe('hubwright: gone.hub.yaml is not there\n');
    const { files, unread } = checkShape.parse(json);
    expect(files.map(({ path }) => path)).toEqual(['dunlin.hub.yaml']);
    expect(unread).toEqual([{ path: 'gone.hub.yaml', message: 'gone.hub.yaml is not there' }]);
  });
});

test('a name too long for a file and a link that leads back to itself are not there, and are no fault', async () => {
  await withFiles({ 'dunlin.hub.yaml': sound }, (folder) => {
    const long = `${'a'.repeat(300)}.hub.yaml`;
    symlinkSync('circle.hub.yaml', join(folder, 'circle.hub.yaml'));
    for (const name of [long, 'circle.hub.yaml']) {
      const { exit, err } = hubwright(['check', name], folder);
      expect([exit, err]).toEqual([2, `hubwright: ${name} is not there\n`]);
    }
    expect(hubwright(['check', '.'], folder).exit).toBe(0);
  });
});

test('a folder without spec files is not a clean result', async () => {
  await withFiles({ 'notes.txt': 'nothing here' }, (folder) => {
    const { exit, err, json } = hubwrightJson(['check', '.'], folder);
    expect(exit).toBe(2);
    expect(err).toBe('hubwright: no spec files in .\n');
    expect(checkShape.parse(json).files).toEqual([]);
  });
});

test('a folder called like a hub file is looked into, and stack says that it wants a file', async () => {
  await withFiles({}, (folder) => {
    mkdirSync(join(folder, 'dunlin.hub.yaml'));
    expect(hubwright(['check', 'dunlin.hub.yaml'], folder).exit).toBe(2);
    const { exit, err } = hubwrightJson(['stack', 'dunlin.hub.yaml'], folder);
    expect(exit).toBe(2);
    expect(err).toBe('hubwright: dunlin.hub.yaml is a folder; one hub file is wanted\n');
  });
});
