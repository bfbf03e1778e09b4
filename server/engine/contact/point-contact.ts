import type { Curvature } from './curvature.ts';
import { ellipticIntegrals } from './elliptic-integrals.ts';

/** What Hertz's theory knows of two bodies before a force presses them together. */
export interface PointContact {
  /** Sum of curvatures, 1/mm. */
  readonly curvatureSum: number;
  /** Contact modulus, MPa. */
  readonly modulus: number;
  /** Long over short semi-axis of the ellipse. */
  readonly ratio: number;
  /** Complete elliptic integrals of the ellipse, modulus² = 1 − 1/ratio². */
  readonly first: number;
  readonly second: number;
  /** Force over approach to the power 1.5, N/mm^1.5. */
  readonly stiffness: number;
  /** False where the bodies conform too closely for a point contact; the numbers are then NaN. */
  readonly valid: boolean;
}

/** One contact under a force. */
export interface PressedContact {
  /** Long semi-axis of the ellipse, across the rolling direction, mm. */
  readonly semiMajor: number;
  /** Short semi-axis, mm. */
  readonly semiMinor: number;
  /** Greatest pressure, in the middle, MPa. */
  readonly maxStress: number;
  /** Mean pressure, two thirds of the greatest, MPa. */
  readonly meanStress: number;
  /** Approach of the two bodies, mm. */
  readonly approach: number;
}

/**
 * Exact Hertz point contact: the ratio of the ellipse solves F(ρ) = [(κ²+1)E − 2K] / [(κ²−1)E]. Smooth
 * elastic half-spaces, contact small against the radii; no friction, no film.
 * `modulus` is the contact modulus, MPa.
 */
export function pointContact(curvature: Curvature, modulus: number): PointContact {
  const ratio = ellipseRatio(curvature.difference);
  const { first, second } = ellipticIntegrals(1 - 1 / (ratio * ratio));
  const stiffness =
    ((2 * Math.PI * ratio * modulus) / first ** 1.5) * Math.sqrt((2 * second) / (9 * curvature.sum));
  const valid = Number.isFinite(stiffness) && stiffness > 0;
  return { curvatureSum: curvature.sum, modulus, ratio, first, second, stiffness, valid };
}

/** Ellipse, pressure and approach of a contact under `force` N; all zero without force. */
export function pressContact(contact: PointContact, force: number): PressedContact {
  const q = Math.max(0, force);
  const { ratio, second, curvatureSum, modulus, stiffness } = contact;
  const semiMajor = ((3 * ratio * ratio * second * q) / (Math.PI * curvatureSum * modulus)) ** (1 / 3);
  const semiMinor = semiMajor / ratio;
  const meanStress = q === 0 ? 0 : q / (Math.PI * semiMajor * semiMinor);
  return {
    semiMajor,
    semiMinor,
    maxStress: 1.5 * meanStress,
    meanStress,
    approach: (q / stiffness) ** (2 / 3),
  };
}

/** The force that brings the middle of a contact to `stress` MPa, N: pressure grows with its cube root. */
export function forceAtStress(contact: PointContact, stress: number): number {
  const atOneNewton = pressContact(contact, 1).maxStress;
  return (stress / atOneNewton) ** 3;
}

/** Ratio of the ellipse for a relative curvature difference, by bisection on its logarithm; NaN outside 0 to 1. */
function ellipseRatio(difference: number): number {
  if (!(0 <= difference && difference < 1)) return Number.NaN;
  if (difference < 1e-9) return 1;
  let lo = 0;
  let hi = 18;
  for (let step = 0; step < 60; step++) {
    const middle = (lo + hi) / 2;
    if (differenceAt(Math.exp(middle)) < difference) lo = middle;
    else hi = middle;
  }
  return Math.exp((lo + hi) / 2);
}

function differenceAt(ratio: number): number {
  const square = ratio * ratio;
  // Near a round contact numerator and denominator both vanish; the series of the quotient starts so.
  if (square - 1 < 1e-5) return (square - 1) / 4;
  const { first, second } = ellipticIntegrals(1 - 1 / square);
  return ((square + 1) * second - 2 * first) / ((square - 1) * second);
}
