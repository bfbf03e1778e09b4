import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { drawnSection } from '../../server/lsp/drawn-section.ts';
import { orderList } from '../../server/report/order/order-list.ts';
import { type BuildSheet, buildSheet } from '../../server/report/sheet/build-sheet.ts';
import { buildSheetHtml } from '../../server/report/sheet/build-sheet-html.ts';
import { buildSheetMarkdown } from '../../server/report/sheet/build-sheet-markdown.ts';
import { wheelDrawing } from '../../server/report/wheel/wheel-drawing.ts';
import { createWorkspace, type Snapshot } from '../../server/workspace/workspace.ts';

const samples = join(import.meta.dirname, '../../client/samples');
const names = readdirSync(samples);
const wheels = names.filter((name) => name.endsWith('.wheel.yaml'));

/** A wheel among the samples, with its own text where one is given. */
function snapshotOf(name: string, text?: string): Snapshot {
  const workspace = createWorkspace();
  workspace.setRoots(['/w']);
  for (const one of names) workspace.setFile(`/w/${one}`, readFileSync(join(samples, one), 'utf8'));
  if (text !== undefined) workspace.setFile(`/w/${name}`, text);
  const snapshot = workspace.snapshot(`/w/${name}`);
  if (!snapshot) throw new Error(name);
  return snapshot;
}

function sheetOf(name: string, text?: string): BuildSheet {
  const sheet = buildSheet(snapshotOf(name, text));
  if (!sheet) throw new Error(name);
  return sheet;
}

const textOf = (name: string): string => readFileSync(join(samples, name), 'utf8');

test.each(wheels)('the sheet of %s laces every rim hole once', (name) => {
  const { lacing, facts } = sheetOf(name);
  const holes = lacing.flatMap((step) =>
    [...step.matchAll(/to rim holes? ([\d, ]*\d)/g)].flatMap(([, list]) =>
      (list ?? '').split(', ').map(Number),
    ),
  );
  const count = Number(facts.find(([what]) => what === 'Holes')?.[1]);
  expect(holes.toSorted((a, b) => a - b)).toEqual(Array.from({ length: count }, (_, at) => at + 1));
});

// Common practice: 16 of 32 spokes a side, as many nipples as spokes.
test('a dished rear wheel has its spokes by length and a nipple for each', () => {
  expect(
    sheetOf('plover-touring.wheel.yaml').parts.rows.map(([count, part, what]) => `${count} ${part} ${what}`),
  ).toEqual([
    '1 hub Plover rear',
    '1 rim effective diameter 596.5 ±0.5 mm to the nipple seat',
    '16 spoke 2.0/1.8/2.0, 291 mm',
    '16 spoke 2.0, 289 mm',
    '32 nipple brass, 12 mm',
  ]);
});

test('three crossings go over two and under the last; without interlacing over all', () => {
  const text = textOf('plover-touring.wheel.yaml');
  expect(sheetOf('plover-touring.wheel.yaml').lacing.at(-1)).toMatch(
    /over at 2 crossings, then under at the last/,
  );
  const loose = text.replaceAll('interlaced: yes', 'interlaced: no');
  expect(sheetOf('plover-touring.wheel.yaml', loose).lacing.at(-1)).toMatch(/over all its 3 crossings/);
});

test('what is not written is asked for', () => {
  const sheet = sheetOf('plover-touring.wheel.yaml', 'wheel: Plover\nhub: ./plover-rear.hub.yaml\n');
  expect(sheet.measure.join()).toContain('rim.erd');
  expect(sheet.drawing).toBeNull();
  expect(sheet.lacing).toEqual([]);
  expect(buildSheetHtml(sheet)).toContain('Not known: measure');
});

test('words of a file are shown, not run', () => {
  const name = 'plover-touring.wheel.yaml';
  const sheet = sheetOf(
    name,
    textOf(name).replace('wheel: Plover touring rear', 'wheel: "<script>x</script> *a*"'),
  );
  expect(buildSheetHtml(sheet)).not.toContain('<script>');
  expect(buildSheetMarkdown(sheet)).toContain('\\*a\\*');
});

test.each(wheels)('%s is drawn: every spoke, every part with its words, nothing that runs', async (name) => {
  const drawn = wheelDrawing(snapshotOf(name), { standalone: true });
  expect(drawn?.svg).not.toMatch(/NaN|Infinity|undefined|<script/);
  for (const address of ['rim', 'hub', 'spokes.left', 'spokes.right'])
    expect(drawn?.svg).toContain(`data-address="${address}" tabindex="0" role="img" aria-label="`);
  expect(drawn?.description).toMatch(/left spokes.*right spokes/i);
  await expect(drawn?.svg).toMatchFileSnapshot(`../drawing/wheels/${name.replace('.wheel.yaml', '')}.svg`);
});

test('the page beside the text has tables of a wheel, and every part leads to its place', () => {
  const snapshot = snapshotOf('plover-touring.wheel.yaml');
  const answer = drawnSection(snapshot, null, 120);
  expect(answer?.tables.map(({ title, rows }) => [title, rows.length])).toEqual([
    ['Spokes', 4],
    ['Tension', 2],
    ['Measured', 2],
  ]);
  const lines = snapshot.document.text.split('\n');
  const addresses = [...(answer?.svg ?? '').matchAll(/data-address="([^"]+)"/g)].map(([, one]) => one ?? '');
  expect(new Set(addresses)).toEqual(new Set(Object.keys(answer?.places ?? {})));
  expect(lines[answer?.places['spokes.left']?.start.line ?? -1]).toContain('profile: 2.0/1.8/2.0');
});

test('the order has the spokes and nipples of wheels beside the parts of hubs', () => {
  const name = 'plover-touring.wheel.yaml';
  const { lines, unknown } = orderList([{ path: name, snapshot: snapshotOf(name) }], {
    variant: null,
    sets: 2,
  });
  expect(unknown).toEqual([]);
  expect(lines.map(({ kind, size, code, count }) => [kind, size, code, count])).toEqual([
    ['spoke', '289', '2.0', 32],
    ['spoke', '291', '2.0/1.8/2.0', 32],
    ['nipple', '12', null, 64],
  ]);
  const bare = snapshotOf(name, 'wheel: Plover\nhub: ./plover-rear.hub.yaml\n');
  expect(orderList([{ path: name, snapshot: bare }], { variant: null, sets: 1 }).unknown).toHaveLength(1);
});
