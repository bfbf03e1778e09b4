import { expect, test } from 'vitest';
import { trace } from '../../server/analysis/trace/trace.ts';
import { hover } from '../../server/features/hover.ts';
import { inlayHints } from '../../server/features/inlay-hints.ts';
import { asWritten } from '../support/analyze-text.ts';
import { hubWith, specAtCursor } from '../support/spec-at-cursor.ts';

const beside = (part: string): string =>
  `${hubWith(['  - end-cap: right', `${part}  - end-cap: right`]).replace(
    / {2}- spacer: centre\n(?: {4}.*\n)+/,
    '',
  )}clamp: 2 kN\n`;
const adjuster = beside('  - adjuster: ring\n    length: 6\n    thread: M20x1\n    set: 0.0$03\n');
const washer = beside('  - wave-washer: ring\n    length: 1.$02\n    free: 1.8\n    rate: 80 N/mm\n');

const hoverAt = (marked: string): string => {
  const { snapshot, position } = specAtCursor(marked);
  return (hover(snapshot, position)?.contents as { value: string } | undefined)?.value ?? '';
};

const hintsIn = (marked: string): readonly string[] => {
  const { snapshot } = specAtCursor(marked);
  const whole = { start: { line: 0, character: 0 }, end: { line: 1000, character: 0 } };
  return inlayHints(snapshot, whole).map(({ label }) => String(label));
};

test('what an adjuster is set to says the play it leaves, and what becomes of it under the clamp', () => {
  const text = hoverAt(adjuster);
  expect(text).toContain('adjuster.ring set to 30 µm of play');
  expect(text).toContain('on the bench 30 µm of play');
  expect(text).toContain('clamped with 2 kN');
  expect(hintsIn(adjuster).some((label) => label.startsWith('play 30 µm, clamped'))).toBe(true);
});

test('a wave washer says its force, (1.8 − 1.2) · 80 N/mm, and that it is soft', () => {
  const text = hoverAt(washer);
  expect(text).toContain('holds the inner rings together with 48 N, axially soft: 80 N/mm');
  expect(hintsIn(washer)).toContain('preload 48 N by spring, axially soft');
});

test('the number of an adjuster can be asked where it came from', () => {
  const steps = trace(asWritten(adjuster.replace('$0', '')), 'adjuster.ring', 'drawn') ?? [];
  const set = steps.find(({ name }) => name.includes('as set on the bench'));
  expect(set?.inputs.map(({ value }) => value)).toEqual([0.03]);
});
