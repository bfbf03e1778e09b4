import fc from 'fast-check';
import { expect, test } from 'vitest';
import { closeLoop, type Term } from '../../../server/engine/stack/loop.ts';
import { histogram, normalShareOutside, shareOutside } from '../../../server/engine/stack/monte-carlo.ts';
import { arbitraryTerms, term } from './terms.ts';

const front = [
  term('end-cap.left', 14.03, -0.02, 0.02),
  term('bearing.left', 5, -0.12, 0),
  term('spacer.centre', 62.06, -0.01, 0.01),
  term('bearing.right', 5, -0.12, 0),
  term('end-cap.right', 14.03, -0.02, 0.02),
];

const standardError = (p: number, builds: number): number => Math.sqrt((p * (1 - p)) / builds);

test.each([
  [99.95, 100.05],
  [99.98, 100.02],
  [99.9, 100.1],
  [100, 100.1],
  [99.97, 200],
])('limits %d to %d give the closed-form share within its standard error', (lo, hi) => {
  const exact = normalShareOutside(front, [lo, hi]);
  const drawn = shareOutside(front, [lo, hi]);
  expect(Math.abs(drawn - exact)).toBeLessThan(4 * standardError(exact, 20_000) + 1 / 20_000);
});

test('the closed form is the normal table: limits at three standard deviations leave 0.27 %', () => {
  // Standard normal table, two tails beyond 3 and beyond 2.
  const { mean, sigma } = closeLoop(front);
  expect(normalShareOutside(front, [mean - 3 * sigma, mean + 3 * sigma])).toBeCloseTo(0.0027, 4);
  expect(normalShareOutside(front, [mean - 2 * sigma, mean + 2 * sigma])).toBeCloseTo(0.0455, 4);
});

/** Another way to the same share: another generator, another normal method, each part built on its own. */
function bruteForce(terms: readonly Term[], [lo, hi]: readonly [number, number], builds: number): number {
  let state = 12345;
  const uniform = (): number => {
    // Lehmer's generator with the multiplier 48271 (Park and Miller 1993).
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
  const normal = (): number => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
  let outside = 0;
  for (let build = 0; build < builds; build++) {
    let length = 0;
    for (const { sign, count, nominal, lower, upper } of terms) {
      for (let part = 0; part < count; part++) {
        length += sign * (nominal + (lower + upper) / 2 + ((upper - lower) / 6) * normal());
      }
    }
    if (length < lo || hi < length) outside++;
  }
  return outside / builds;
}

test('a loop built part by part with another generator has the same share outside', () => {
  const shims = term('shim.left', 0.1, -0.03, 0.03, { count: 3 });
  const gap = [...front, shims, term('width', 100.3, 0, 0, { sign: -1 })];
  const limits = [-0.05, 0.06] as const;
  const [a, b] = [shareOutside(gap, limits), bruteForce(gap, limits, 40_000)];
  expect(b).toBeGreaterThan(0.01);
  expect(Math.abs(a - b)).toBeLessThan(4 * Math.hypot(standardError(b, 20_000), standardError(b, 40_000)));
});

test('the drawn share keeps to the closed form on any loop', () => {
  fc.assert(
    fc.property(arbitraryTerms, fc.double({ min: -3, max: 3, noNaN: true }), (terms, at) => {
      const { mean, sigma } = closeLoop(terms);
      const limits = [mean + at * sigma, Number.POSITIVE_INFINITY] as const;
      const exact = normalShareOutside(terms, limits);
      const drawn = shareOutside(terms, limits);
      if (sigma < 1e-9) return;
      expect(Math.abs(drawn - exact)).toBeLessThan(5 * standardError(exact, 20_000) + 2 / 20_000);
    }),
    { numRuns: 60, seed: 4 },
  );
});

test('the same seed builds the same hubs, another seed others, and the share differs by chance only', () => {
  const limits = [99.95, 100.05] as const;
  expect(shareOutside(front, limits, { seed: 5 })).toBe(shareOutside(front, limits, { seed: 5 }));
  const shares = [1, 2, 3, 4, 5, 6].map((seed) => shareOutside(front, limits, { seed }));
  expect(new Set(shares).size).toBeGreaterThan(1);
  const exact = normalShareOutside(front, limits);
  for (const share of shares) expect(Math.abs(share - exact)).toBeLessThan(5 * standardError(exact, 20_000));
});

test('a part that does not vary changes nothing but the mean', () => {
  const limits = [99.95, 100.05] as const;
  const moved = [term('washer', 2, 0, 0), ...front];
  expect(shareOutside(moved, [limits[0] + 2, limits[1] + 2])).toBe(shareOutside(front, limits));
});

test('an exact loop is inside or outside as a whole, the limits themselves being inside', () => {
  const exact = [term('a', 10, 0, 0)];
  for (const share of [shareOutside, normalShareOutside]) {
    expect(share(exact, [9, 11])).toBe(0);
    expect(share(exact, [10, 11])).toBe(0);
    expect(share(exact, [10.01, 11])).toBe(1);
  }
});

test('a histogram counts every build once, around the mean', () => {
  const builds = 5000;
  const { from, step, counts } = histogram(front, 24, { builds });
  expect(counts.reduce((sum, count) => sum + count, 0)).toBe(builds);
  const average = counts.reduce((sum, count, i) => sum + count * (from + (i + 0.5) * step), 0) / builds;
  const { mean, sigma } = closeLoop(front);
  expect(Math.abs(average - mean)).toBeLessThan(4 * (sigma / Math.sqrt(builds)) + step / 10);
  expect(from).toBeLessThan(mean - 2.5 * sigma);
  expect(from + 24 * step).toBeGreaterThan(mean + 2.5 * sigma);
});

test('an exact loop has one bin', () => {
  expect(histogram([term('a', 10, 0, 0)], 24, { builds: 100 })).toEqual({ from: 10, step: 0, counts: [100] });
});
