import { expect, test } from 'vitest';
import { ballContact, ballForceAtStress, DENT_STRESS } from '../../../server/engine/contact/ball-contact.ts';
import { grooveCurvature } from '../../../server/engine/contact/curvature.ts';
import { contactModulus } from '../../../server/engine/contact/elasticity.ts';
import { ellipticIntegrals } from '../../../server/engine/contact/elliptic-integrals.ts';
import { forceAtStress, pointContact, pressContact } from '../../../server/engine/contact/point-contact.ts';

test('complete elliptic integrals agree with the handbook', () => {
  // Abramowitz and Stegun, Handbook of Mathematical Functions, table 17.1.
  for (const [m, first, second] of [
    [0, 1.570796326794897, 1.570796326794897],
    [0.1, 1.612441348720219, 1.530757636897763],
    [0.5, 1.854074677301372, 1.350643881047675],
    [0.9, 2.578092113348173, 1.104774732704073],
    [0.99, 3.695637362989875, 1.015993545025224],
  ] as const) {
    const found = ellipticIntegrals(m);
    expect(found.first).toBeCloseTo(first, 10);
    expect(found.second).toBeCloseTo(second, 10);
  }
  expect(ellipticIntegrals(1).first).toBeNaN();
});

test('two spheres press as in the textbook', () => {
  // Johnson, Contact Mechanics, section 4.2 (from memory): a³ = 3PR/4E*, δ = a²/R, p0 = 3P/2πa².
  const modulus = contactModulus({ E: 208_000, nu: 0.3 }, { E: 208_000, nu: 0.3 });
  const radius = 5;
  const contact = pointContact({ sum: 2 / radius, difference: 0 }, modulus);
  const a = Math.cbrt((3 * 100 * radius) / (4 * modulus));
  const pressed = pressContact(contact, 100);
  expect(pressed.semiMajor).toBeCloseTo(a, 10);
  expect(pressed.semiMinor).toBeCloseTo(a, 10);
  expect(pressed.approach).toBeCloseTo((a * a) / radius, 10);
  expect(pressed.maxStress).toBeCloseTo((3 * 100) / (2 * Math.PI * a * a), 6);
});

test('the exact integrals lie within one per cent, the ellipse within three, of the published approximation', () => {
  // Brewe and Hamrock 1977 (from memory): κ = 1.0339·r^0.636, E = 1.0003 + 0.5968/r, K = 1.5277 + 0.6023·ln r.
  for (const conformity of [0.515, 0.52, 0.53, 0.56]) {
    for (const side of ['inner', 'outer'] as const) {
      const geometry = {
        count: 9,
        diameter: 3.969,
        pitch: 19,
        innerConformity: conformity,
        outerConformity: conformity,
      };
      const curvature = grooveCurvature(geometry, side, 0);
      const ratio = (1 + curvature.difference) / (1 - curvature.difference);
      const exact = pointContact(curvature, 114_286);
      expect(exact.ratio / (1.0339 * ratio ** 0.636)).toBeGreaterThan(0.97);
      expect(exact.ratio / (1.0339 * ratio ** 0.636)).toBeLessThan(1.03);
      expect(exact.second / (1.0003 + 0.5968 / ratio)).toBeCloseTo(1, 1.7);
      expect(exact.first / (1.5277 + 0.6023 * Math.log(ratio))).toBeCloseTo(1, 1.7);
    }
  }
});

test('the force at a stress gives that stress', () => {
  const contact = ballContact(
    { count: 9, diameter: 3.969, pitch: 19, innerConformity: 0.52, outerConformity: 0.53 },
    0,
  );
  for (const one of [contact.inner, contact.outer]) {
    expect(pressContact(one, forceAtStress(one, 2000)).maxStress).toBeCloseTo(2000, 6);
  }
  const force = ballForceAtStress(contact);
  expect(pressContact(contact.inner, force).maxStress).toBeCloseTo(DENT_STRESS, 6);
});

test('units scale: twice the size at four times the force presses as hard and gives twice the approach', () => {
  const small = { count: 9, diameter: 3, pitch: 18, innerConformity: 0.52, outerConformity: 0.53 };
  const big = { ...small, diameter: 6, pitch: 36 };
  const one = pressContact(ballContact(small, 0.2).inner, 100);
  const two = pressContact(ballContact(big, 0.2).inner, 400);
  expect(two.maxStress).toBeCloseTo(one.maxStress, 6);
  expect(two.approach).toBeCloseTo(2 * one.approach, 10);
  expect(two.semiMajor).toBeCloseTo(2 * one.semiMajor, 10);
});

test('a groove as close as its ball is no point contact and says so', () => {
  const contact = ballContact(
    { count: 9, diameter: 4, pitch: 20, innerConformity: 0.5, outerConformity: 0.52 },
    0,
  );
  expect(contact.inner.valid).toBe(false);
  expect(contact.outer.valid).toBe(true);
});
