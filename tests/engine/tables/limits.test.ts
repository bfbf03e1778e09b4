import { expect, test } from 'vitest';
import { sources } from '../../../server/engine/base/sources.ts';
import { defaultLimits } from '../../../server/engine/tables/limits.ts';

test('every limit has a kebab-case key, a meaning and a source of the bibliography', () => {
  for (const [key, limit] of Object.entries(defaultLimits)) {
    expect(key).toMatch(/^[a-z]+(-[a-z]+)*$/);
    expect(limit.value).toBeGreaterThanOrEqual(0);
    expect(limit.meaning).toMatch(/^[a-z].*[^.]$/);
    expect(sources[limit.source]).toBeDefined();
  }
});

test('the share of builds allowed outside is what a normal spread leaves beyond three sigma', () => {
  // Standard normal table: 0.99730 lies within ±3σ.
  expect(defaultLimits['share-outside'].value).toBeCloseTo(1 - 0.9973, 6);
});

test('limits that a document states are the stated ones', () => {
  // ISO 76: 4200 MPa for ball bearings. NTN CAT. 2203/E 7.3: interference to a thousandth, hoop stress to 127 MPa.
  expect(defaultLimits['contact-stress'].value).toBe(4200);
  expect(defaultLimits['seat-interference-per-diameter'].value).toBe(0.001);
  expect(defaultLimits['ring-stress'].value).toBe(127);
});
