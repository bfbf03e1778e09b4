/** Elastic constants of one body. */
export interface Elastic {
  /** Modulus of elasticity, MPa. */
  readonly E: number;
  /** Poisson's ratio. */
  readonly nu: number;
}

/** Through-hardened bearing steel as the conventions of this engine take it: 208 GPa, 0.30 (source `ntn-2203e`). */
export const bearingSteel: Elastic = { E: 208_000, nu: 0.3 };

/** Contact modulus of two bodies, 1 / [(1 − ν1²)/E1 + (1 − ν2²)/E2], MPa (Hertz). */
export function contactModulus(one: Elastic, other: Elastic): number {
  return 1 / ((1 - one.nu * one.nu) / one.E + (1 - other.nu * other.nu) / other.E);
}
