import type { Deviations } from '../fits/fit.ts';

/** A quantity between limits, with the standard deviation of many builds; mm unless said. */
export interface Spread {
  readonly least: number;
  readonly mean: number;
  readonly most: number;
  readonly sigma: number;
}

/** How many standard deviations lie between the middle of a tolerance and its limit. */
export const SIGMAS_TO_LIMIT = 3;

/** A single dimension between two limits; its sigma is a sixth of the range. */
export function spreadOf(least: number, most: number): Spread {
  return { least, mean: (least + most) / 2, most, sigma: (most - least) / (2 * SIGMAS_TO_LIMIT) };
}

/**
 * Interference of an inside part (outer ring, or axle) in an outside part (housing, or inner ring), from the
 * deviations of both, mm; negative is clearance. Inside and outside part vary independently.
 */
export function interferenceSpread(inside: Deviations, outside: Deviations): Spread {
  const within = spreadOf(inside.lower, inside.upper);
  const around = spreadOf(outside.lower, outside.upper);
  return {
    least: within.least - around.most,
    mean: within.mean - around.mean,
    most: within.most - around.least,
    sigma: Math.hypot(within.sigma, around.sigma),
  };
}
