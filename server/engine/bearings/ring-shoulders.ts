import { sources } from '../base/sources.ts';

/** Estimated diameters of the ring shoulders, mm. */
export interface RingShoulders {
  /** Outside diameter of the inner ring at its shoulders. */
  readonly innerOutside: number;
  /** Inside diameter of the outer ring at its shoulders. */
  readonly outerInside: number;
  /** Pitch circle of the balls. */
  readonly pitch: number;
  readonly estimate: true;
  readonly source: string;
}

/** Share of D − d that lies between the bore and the inner ring's shoulder: mean of 37 printed rows (0.29 to 0.35). */
const innerShare = 0.318;
/** Share of D − d that lies between the outer ring's shoulder and the outside: mean of 37 printed rows (0.27 to 0.33). */
const outerShare = 0.306;

/**
 * Estimates where the shoulders of the rings stand, from bore d and outside D (mm). The shares are means over one
 * maker's printed shoulder diameters in series 160, 60, 62 and 63; single rows differ from the mean by up to 3.5 %
 * of D − d, and series 64 does not follow it.
 */
export function ringShoulders(d: number, D: number): RingShoulders {
  const section = D - d;
  return {
    innerOutside: d + innerShare * section,
    outerInside: D - outerShare * section,
    pitch: (d + D) / 2,
    estimate: true,
    source: `estimated from the section, as the mean share in ${sources['schaeffler-hr1'].title}`,
  };
}
