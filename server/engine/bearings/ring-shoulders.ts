import { sources } from '../base/sources.ts';

/** Estimated diameters of the ring shoulders, mm. */
export interface RingShoulders {
  /** Outside diameter of the inner ring. */
  readonly innerOutside: number;
  /** Inside diameter of the outer ring. */
  readonly outerInside: number;
  /** Pitch circle of the balls. */
  readonly pitch: number;
  readonly estimate: true;
  readonly source: string;
}

/**
 * Estimates where the shoulders of the rings stand, from bore d and outside D (mm): raceway bottoms (4d + D)/5 and
 * (d + 4D)/5, and the mean ring thickness including shoulders 1.05 times and 0.95 times those.
 */
export function ringShoulders(d: number, D: number): RingShoulders {
  return {
    innerOutside: (1.05 * (4 * d + D)) / 5,
    outerInside: (0.95 * (d + 4 * D)) / 5,
    pitch: (d + D) / 2,
    estimate: true,
    source: `estimated from the section: ${sources['ntn-2203e'].title}, mean ring thickness including shoulders`,
  };
}
