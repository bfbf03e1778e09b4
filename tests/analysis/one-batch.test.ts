import { expect, test } from 'vitest';
import { shareOutsideOneBatch } from '../../server/analysis/one-batch.ts';
import { asWritten } from '../support/analyze-text.ts';
import { sanderling } from '../support/sanderling.ts';

const { loop, drawn } = asWritten(sanderling().replace('width: 100 ±0.2', 'width: 100 ±0.06')).width;

test('two rings of one batch add up their widths, which puts more builds outside the width', () => {
  // By hand: end caps and rings as written, a ring 0/−0.12 (ISO 492, class Normal, bores to 30 mm) straying 0.02 mm.
  // Apart √(2·0.02² + …), alike 2 · 0.02 and …; the rest is the spacer's 0.01/3.
  const alike = Math.hypot(2 * 0.02, 0.01 / 3);
  const apart = Math.hypot(Math.SQRT2 * 0.02, 0.01 / 3);
  const mean = drawn?.mean ?? Number.NaN;
  const outside = (sigma: number): number => 1 - integral((99.94 - mean) / sigma, (100.06 - mean) / sigma);
  expect(shareOutsideOneBatch(loop, 'drawn')).toBeCloseTo(outside(alike), 5);
  expect(drawn?.shareOutside).toBeCloseTo(outside(apart), 2);
});

test('one ring alone is no batch', () => {
  const [ring] = loop.terms.filter(({ address }) => address.startsWith('bearing.'));
  const other = { ...loop, terms: loop.terms.filter((item) => item !== ring) };
  expect(shareOutsideOneBatch(other, 'drawn')).toBeNull();
});

/** Normal density summed by Simpson's rule, another road than the error function. */
function integral(from: number, to: number): number {
  const steps = 2000;
  const width = (to - from) / steps;
  const density = (x: number): number => Math.exp((-x * x) / 2) / Math.sqrt(2 * Math.PI);
  let sum = density(from) + density(to);
  for (let i = 1; i < steps; i++) sum += density(from + i * width) * (i % 2 === 1 ? 4 : 2);
  return (sum * width) / 3;
}
