import { expect, test } from 'vitest';
import { isWorked } from '../../server/analysis/mechanics/pair-mechanics.ts';
import { asWritten } from '../support/analyze-text.ts';
import { sanderling } from '../support/sanderling.ts';

/** Printed expansions, 1/K: 6061 and 7075 (Aluminum Association, typical properties); bearing steel (KOYO 203E, fits). */
const expansion = { shell: 23.6e-6, spacer: 23.4e-6, axle: 23.4e-6, ring: 12.5e-6 };

function at(text: string, inner: number, outer: number) {
  const { bearings, pairs } = asWritten(text).mechanics('drawn', {
    temperature: 20,
    inner,
    outer,
    clampForce: null,
  });
  const [bearing] = bearings;
  const [pair] = pairs;
  if (!bearing || !pair || !isWorked(pair)) throw new Error('the hub could not be worked out');
  return { bearing, pair };
}

test('one temperature for both is the temperature of the whole hub', () => {
  const variant = asWritten(sanderling({ clamp: '3 kN' }));
  const apart = variant.mechanics('drawn', { temperature: 20, inner: -5, outer: -5, clampForce: null });
  const whole = variant.mechanics('drawn', { temperature: -5, clampForce: null });
  expect(apart.bearings).toEqual(whole.bearings);
  expect(apart.pairs).toEqual(whole.pairs);
});

test('a warm inside grows the inner line by its own material and leaves the housing as it is', () => {
  const [cool, warm, hotShell] = [
    at(sanderling(), 20, 20),
    at(sanderling(), 50, 20),
    at(sanderling(), 20, 50),
  ];
  // δ = P − S: the sleeve of 62.06 of 7075 grows, the shell of 62.05 of 6061 does not; and the other way round.
  expect(warm.pair.input.mismatch - cool.pair.input.mismatch).toBeCloseTo(62.06 * expansion.spacer * 30, 9);
  expect(hotShell.pair.input.mismatch - cool.pair.input.mismatch).toBeCloseTo(
    -62.05 * expansion.shell * 30,
    9,
  );
});

test('a ring warmer than the other takes the clearance that its growth at the ball circle takes', () => {
  const loose = sanderling().replace('17 h6', '17 f6');
  const [cool, warm] = [at(loose, 20, 20), at(loose, 50, 20)];
  // Δ = α·Δt·(d + D)/2 to within the balls' own growth: NTN CAT. No. 2203/E, operating clearance.
  const taken = expansion.ring * 30 * 21.5;
  expect(warm.bearing.thermalLoss).toBeCloseTo(taken, 8);
  // f6 of 17 mm is −16/−27 µm (ISO 286-2): loose however warm, so nothing else takes or gives.
  expect((cool.bearing.mounted?.mean ?? 0) - (warm.bearing.mounted?.mean ?? 0)).toBeCloseTo(taken, 8);
});

test('each fit has the warmth of its own side', () => {
  const [cool, warm] = [at(sanderling(), 20, 20), at(sanderling(), 60, -10)];
  const change = (fit: 'outerFit' | 'innerFit') =>
    (warm.bearing[fit]?.taker.interference.mean ?? 0) - (cool.bearing[fit]?.taker.interference.mean ?? 0);
  expect(change('outerFit')).toBeCloseTo(26 * (expansion.ring - expansion.shell) * -30, 9);
  expect(change('innerFit')).toBeCloseTo(17 * (expansion.axle - expansion.ring) * 40, 9);
});

test('ceramic balls grow less than their rings, so that an evenly warm bearing gains clearance', () => {
  const text = sanderling({ code: '6803-2RS HC5' });
  const { bearing } = at(text, 60, 60);
  // Two balls across the circle; makers print 3.0 to 3.2 µm/m·K for silicon nitride, 12.5 for bearing steel (from memory).
  const gain = (ceramic: number) => 2 * 2.778 * (12.5e-6 - ceramic) * 40;
  expect(-bearing.thermalLoss).toBeGreaterThan(gain(3.3e-6));
  expect(-bearing.thermalLoss).toBeLessThan(gain(2.9e-6));
});
