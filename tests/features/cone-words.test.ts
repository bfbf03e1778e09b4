import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { trace } from '../../server/analysis/trace/trace.ts';
import { mechanicsWords } from '../../server/features/hover-mechanics.ts';
import { inlayHints } from '../../server/features/inlay-hints.ts';
import { newConeHub } from '../../server/features/new-cone-hub.ts';
import { playTable } from '../../server/report/mechanics-table.ts';
import { coneLines } from '../../server/report/mount/cone-lines.ts';
import { specAtCursor } from '../support/spec-at-cursor.ts';

const sample = readFileSync(
  join(import.meta.dirname, '..', '..', 'client', 'samples', 'avocet-cone.hub.yaml'),
  'utf8',
);
const { snapshot } = specAtCursor(sample);
const whole = { start: { line: 0, character: 0 }, end: { line: 1000, character: 0 } };

/*
 * By hand: 4000 N · 77 mm / (200 GPa · π/4 · ((9 − 0.9382)² − 5.2²) mm²) = 0.0517 mm, which on a pitch of 1 mm is
 * 0.0517 · 360° = 18.6°; of 0.06 mm set on the bench 8 µm are left.
 */
test('the play that is set says what is left of it, and the clamp what to leave', () => {
  const labels = inlayHints(snapshot, whole).map(({ label }) => label);
  expect(labels).toContain('clamped 8 µm');
  expect(labels).toContain('leave 52 µm on the bench, 19° of the cone on a pitch of 1.00 mm');
});

test('hover on balls says how they lie on their circle, on the set play what becomes of it', () => {
  // 17.4·(π − 10·asin(4.7625/17.4)) = 6.42 mm left of the circle.
  expect(mechanicsWords(snapshot, ['stack', 2, 'balls']).join()).toContain('6.42 mm left, 11 fill it');
  expect(mechanicsWords(snapshot, ['stack', 3, 'set']).join()).toContain('leave 52 µm');
});

test('the table beside the drawing, the report and the chain of formulas tell the same play', () => {
  const [variant] = snapshot.analysis.variants;
  if (!variant) throw new Error('the sample has no variant');
  const row = playTable(variant, snapshot.analysis.limits).rows.at(-1);
  expect(row?.cells).toEqual([
    'cone.left to cone.right',
    'the balls run free',
    '60 µm',
    '8 µm',
    '52 µm',
    'none',
    '',
  ]);
  const { cups, clamp } = variant.mechanics('built');
  expect(coneLines(cups, clamp, 0.05).join('\n')).toMatch(/in the frame +clamped 8 µm/);
  const steps = trace(variant, 'cone.right', 'drawn') ?? [];
  expect(steps.find(({ name }) => name.startsWith('turn'))?.value).toBeCloseTo(18.6, 1);
  expect(steps.find(({ name }) => name.startsWith('play once'))?.value).toBeCloseTo(0.0083, 4);
});

test('the cup-and-cone hub that completion starts with is sound', () => {
  const text = newConeHub('Avocet')
    .replace(/\$\{\d+:([^}]*)\}/g, '$1')
    .replace('$0', '');
  const { snapshot: fresh } = specAtCursor(text);
  expect(fresh.findings.findings.map(({ message }) => message)).toEqual([]);
  expect(fresh.analysis.variants[0]?.mechanics('built').cups).toMatchObject({ missing: [] });
});
