import { expect, test } from 'vitest';
import { isWorked } from '../../server/analysis/mechanics/pair-mechanics.ts';
import { mountAnswer } from '../../server/report/mount/mount-answer.ts';
import { mountText } from '../../server/report/mount/mount-text.ts';
import { analyzeText, asWritten } from '../support/analyze-text.ts';
import { sanderling } from '../support/sanderling.ts';

const loose = (bore: string, more = '') =>
  sanderling({ bore: `${bore}${more}`, spacer: '62.20 ±0.01', clamp: '5 kN' });

function pairOf(text: string) {
  const [pair] = asWritten(text).mechanics('drawn').pairs;
  if (!pair || !isWorked(pair)) throw new Error('the pair could not be worked out');
  return pair;
}

test('a compound adds the shear of its film to what the press holds', () => {
  const [bare, held] = [pairOf(loose('26 N7')), pairOf(loose('26 N7', ', compound: yes'))];
  // τ·π·D·B with 10 MPa, 5 to 20 (ISO 10123 pin and collar, on light alloy; from memory) on 26 × 5 mm.
  const film = 10 * Math.PI * 26 * 5;
  expect(held.left.grip - bare.left.grip).toBeCloseTo(film, 6);
  expect(held.left.compound?.least).toBeCloseTo(film / 2, 6);
  expect(held.left.compound?.most).toBeCloseTo(film * 2, 6);
  expect(bare.left.compound).toBeNull();
});

test('a long spacer slides a loose ring out of a bare seat and loads one that a compound holds', () => {
  const bare = pairOf(loose('26 H7')).result;
  expect(bare.slid).not.toBe('no');
  expect(bare.ballLoad).toBe(0);
  const held = pairOf(loose('26 H7', ', compound: yes')).result;
  expect(held.slid).toBe('no');
  expect(held.ballLoad).toBeGreaterThan(0);
});

test('mount says what the compound holds and that it alone centres a loose ring', () => {
  const { variants, workshop, limits } = analyzeText(loose('26 H7', ', compound: yes'));
  const [variant] = variants;
  if (!variant) throw new Error('the text is no hub');
  const conditions = { temperature: 20, clampForce: null };
  const answer = mountAnswer(variant, 'drawn', { workshop, limits, conditions });
  const text = mountText('x.hub.yaml', 'Sanderling', answer);
  expect(text).toMatch(/its retaining compound holds +2\.04 kN +4\.08 kN +8\.17 kN/);
  expect(text).toContain('its retaining compound alone holds and centres it');
  expect(text).toMatch(/bearing\.left taken as held with .* 10 MPa in shear/);
  expect(text).not.toContain('turns with the wheel');
});
