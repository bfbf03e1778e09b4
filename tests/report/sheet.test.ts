import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { serviceSheet } from '../../server/report/sheet/service-sheet.ts';
import { sheetHtml } from '../../server/report/sheet/sheet-html.ts';
import { sheetMarkdown } from '../../server/report/sheet/sheet-markdown.ts';
import { planOf } from '../../server/service/plan.ts';
import { createWorkspace, type Snapshot } from '../../server/workspace/workspace.ts';

const samples = join(import.meta.dirname, '../../client/samples');
const hubs = readdirSync(samples).filter((name) => name.endsWith('.hub.yaml'));

function snapshotOf(text: string, workshop?: string): Snapshot {
  const workspace = createWorkspace();
  workspace.setRoots(['/w']);
  if (workshop !== undefined) workspace.setFile('/w/house.workshop.yaml', workshop);
  workspace.setFile('/w/a.hub.yaml', text);
  const snapshot = workspace.snapshot('/w/a.hub.yaml');
  if (!snapshot) throw new Error('no hub');
  return snapshot;
}

const sheetsOf = (text: string, workshop?: string) => {
  const snapshot = snapshotOf(text, workshop);
  return snapshot.analysis.variants.map((variant) => serviceSheet(snapshot, variant));
};

const small = `hub: Dunlin front
position: front
width: 100
stack:
  - end-cap: left
    length: 14
  - bearing: left
    code: 6803-2RS
    seat: shell.left
  - spacer: centre
  - bearing: right
    code: 6803-2RS
    seat: shell.right
  - end-cap: right
    length: 14
`;

test.each(hubs)('the sheet of %s has every step of the plan in order, with its figures beside it', (name) => {
  const snapshot = snapshotOf(readFileSync(join(samples, name), 'utf8'));
  for (const variant of snapshot.analysis.variants) {
    const sheet = serviceSheet(snapshot, variant);
    const plan = planOf(variant, snapshot.analysis);
    expect(sheet.apart.map(({ number }) => number)).toEqual(plan.apart.map((_, i) => i + 1));
    for (const [steps, said] of [
      [plan.apart, sheet.apart],
      [plan.together, sheet.together],
    ] as const) {
      for (const [i, step] of steps.entries()) {
        const shown = said[i];
        expect(shown?.head).toContain(step.part.replace(/\.retaining-ring$/, ''));
        if (step.kind !== 'press-in') continue;
        expect(shown?.picture?.svg).toContain('<svg');
        for (const one of step.pressed) {
          const lines = shown?.brief.join('\n') ?? '';
          expect(lines).toContain(one.driver.outside.nominal.toFixed(1));
          expect(lines).toContain(one.driver.inside.nominal.toFixed(1));
          expect(lines).toMatch(/about|by hand|force not known/);
          expect(lines).toMatch(/stop (when|softly|against)/);
        }
      }
    }
  }
});

test.each(hubs)('the sheet of %s tells nobody to do what harms', (name) => {
  for (const sheet of sheetsOf(readFileSync(join(samples, name), 'utf8'))) {
    const text = sheetMarkdown(sheet);
    const page = sheetHtml(sheet);
    for (const said of [text, page]) {
      // Whatever is driven or drawn through its balls is scrap, and that stands at the step.
      for (const step of sheet.apart) {
        const lines = [...step.details, ...step.brief].join('\n');
        if (/drift .*inner ring|collet/.test(lines)) expect(lines).toMatch(/scrap/);
      }
      for (const [, degrees] of said.matchAll(/(\d+)\s*°C/g)) expect(Number(degrees)).toBeLessThanOrEqual(80);
      expect(said).toMatch(/checked on the stand before it is ridden/);
      expect(said).toMatch(/maker(&apos;|')s own instructions come first/);
      expect(said).not.toMatch(/\b(safe to ride|fit to ride)\b/i);
    }
  }
});

test('a torque is told only where the spec writes one, and never made from a force', () => {
  const torques = (text: string): readonly string[] =>
    sheetsOf(text)[0]?.care.find(({ title }) => title === 'Torque')?.lines ?? [];
  expect(torques(`${small}clamp: 5 kN\n`).join()).not.toMatch(/\d+ ?N·?m/);
  expect(torques(`${small}clamp: { torque: 12 N·m, thread: M12x1.5 }\n`)).toEqual([
    'axle: 12 N·m, as the spec writes it',
  ]);
});

test('what is not written is asked for, and the sheet is made all the same', () => {
  const [sheet] = sheetsOf(small);
  expect(sheet?.parts.find(({ part }) => part === 'spacer.centre')?.size).toBe(
    'length not written: measure it',
  );
  expect(sheet?.measure.join('\n')).toContain('length of spacer.centre');
  expect(sheet?.readings.find(({ what }) => what === 'length of spacer.centre')?.wanted).toBe('not written');
});

test('what stands in the file is text in the page, never markup', () => {
  const hostile = small.replace('Dunlin front', '<script>alert(1)</script> & "x" | *y* `z`');
  const [sheet] = sheetsOf(hostile);
  if (!sheet) throw new Error('no sheet');
  expect(sheetHtml(sheet)).not.toContain('<script');
  expect(sheetMarkdown(sheet)).toContain('\\<script\\>');
  expect(sheetMarkdown(sheet)).toContain('\\| \\*y\\* \\`z\\`');
});

test('the page loads nothing and every drawing in it has an id of its own', () => {
  for (const name of hubs) {
    for (const sheet of sheetsOf(readFileSync(join(samples, name), 'utf8'))) {
      const page = sheetHtml(sheet);
      expect(page).not.toMatch(/<(link|script|img)|url\(|@import|https?:\/\/(?!www\.w3\.org)/);
      const ids = [...page.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id);
      expect(new Set(ids).size).toBe(ids.length);
    }
  }
});

test('what is on the shelf stands beside the bearing', () => {
  const [sheet] = sheetsOf(small, 'stock: { bearings: { 6803-2RS: 4 } }\n');
  expect(sheet?.parts.find(({ part }) => part === 'bearing.left')?.note).toBe('4 in stock');
});

/* Worn cones are found by play and drag in the hand, a cartridge bearing is filled by its maker: common practice. */
test('the sheet of a hub with cones counts its balls, asks for the bench play and speaks of no sealed bearing', () => {
  const [sheet] = sheetsOf(readFileSync(join(samples, 'avocet-cone.hub.yaml'), 'utf8'));
  // 3/16 in is 4.7625 mm at 25.4 mm an inch.
  expect(sheet?.parts.find(({ address }) => address === 'cone.left')?.what).toContain('10 balls ⌀4.7625');
  expect(sheet?.readings).toContainEqual({
    what: 'play the cones are set to on the bench',
    wanted: '0.06 ±0.015 mm',
  });
  expect(JSON.stringify(sheet?.care)).not.toContain('sealed bearings');
});

test('a part that was only measured is told once', () => {
  const [sheet] = sheetsOf(
    small
      .replace('spacer: centre', 'spacer: centre\n    length: measured 62.05')
      .replace('end-cap: right\n    length: 14', 'end-cap: right\n    length: 14 measured 14.03'),
  );
  const note = (address: string) => sheet?.parts.find((part) => part.address === address)?.note;
  expect(note('spacer.centre')).toBe('as measured');
  expect(note('end-cap.right')).toBe('measured 14.03');
});

test('play that the clamp takes whole has its limit on the sheet and is never about none', () => {
  const [sheet] = sheetsOf(readFileSync(join(samples, 'redshank-clamp.hub.yaml'), 'utf8'));
  const clamped = sheet?.readings.find(({ what }) => what.startsWith('play clamped'))?.wanted;
  expect(clamped).toBe('at most 0.05 mm; none left as it stands: see the findings');
});
