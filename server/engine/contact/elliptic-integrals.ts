/** Complete elliptic integrals of the first and second kind. */
export interface EllipticIntegrals {
  readonly first: number;
  readonly second: number;
}

/**
 * Complete elliptic integrals K and E for a parameter m = modulus², 0 ≤ m < 1, by the arithmetic-geometric
 * mean (source `abramowitz-stegun`, 17.6). Full double accuracy in about six steps. Outside the range NaN.
 */
export function ellipticIntegrals(m: number): EllipticIntegrals {
  if (!(0 <= m && m < 1)) return { first: Number.NaN, second: Number.NaN };
  let a = 1;
  let b = Math.sqrt(1 - m);
  let weight = 0.5;
  let sum = weight * m;
  for (let step = 0; step < 40; step++) {
    const c = (a - b) / 2;
    const mean = (a + b) / 2;
    b = Math.sqrt(a * b);
    a = mean;
    weight *= 2;
    sum += weight * c * c;
    if (Math.abs(c) < 1e-16 * a) break;
  }
  const first = Math.PI / (2 * a);
  return { first, second: first * (1 - sum) };
}
