/**
 * Share of a normal quantity that falls below `z` standard deviations from its mean, 0 to 1.
 * Through the complementary error function, so the far tails keep their relative accuracy.
 */
export function normalBelow(z: number): number {
  return erfc(-z / Math.SQRT2) / 2;
}

/** Share of a normal quantity outside `limits` (both in the quantity's unit), 0 to 1; sigma 0 gives 0 or 1. */
export function normalOutside(mean: number, sigma: number, limits: readonly [number, number]): number {
  const [lo, hi] = limits;
  if (sigma <= 0) return lo <= mean && mean <= hi ? 0 : 1;
  return Math.min(1, normalBelow((lo - mean) / sigma) + normalBelow((mean - hi) / sigma));
}

/**
 * Complementary error function. Near zero the power series of erf, beyond it the continued fraction of erfc
 * (source `abramowitz-stegun`, 7.1.5 and 7.1.14), each summed until it stops changing.
 */
export function erfc(x: number): number {
  if (Number.isNaN(x)) return Number.NaN;
  if (x < 0) return 2 - erfc(-x);
  return x < 2 ? 1 - erfSeries(x) : erfcFraction(x);
}

function erfSeries(x: number): number {
  let term = x;
  let sum = x;
  for (let n = 1; n < 100; n++) {
    term *= (-x * x) / n;
    const next = sum + term / (2 * n + 1);
    if (next === sum) break;
    sum = next;
  }
  return (2 / Math.sqrt(Math.PI)) * sum;
}

function erfcFraction(x: number): number {
  if (x > 27) return 0;
  let f = x;
  for (let n = 60; n >= 1; n--) f = x + n / 2 / f;
  return Math.exp(-x * x) / (Math.sqrt(Math.PI) * f);
}
