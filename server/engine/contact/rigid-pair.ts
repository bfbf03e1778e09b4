/** An angular-contact bearing as the makers' quick forms take it. */
export interface QuickBearing {
  readonly count: number;
  /** Ball diameter, mm. */
  readonly diameter: number;
  /** Contact angle, rad, held constant under load. */
  readonly angle: number;
}

/**
 * Axial approach of an angular-contact bearing by the quick form at a constant contact angle,
 * δa = (0.00044/sin α)·(Q²/Dw)^⅓ with Q = Fa/(Z·sin α), mm (source `nsk-e1102e`, preload). Grooves of usual
 * closeness, angles from 15°; below that the angle changes too much and `axialState` is the one to ask.
 */
export function quickAxialApproach({ count, diameter, angle }: QuickBearing, force: number): number {
  const ball = force / (count * Math.sin(angle));
  return (0.00044 / Math.sin(angle)) * Math.cbrt((ball * ball) / diameter);
}

/**
 * Mean rigidity of a preloaded pair up to the load that lifts one bearing off, 2^1.5·P/δa, N/mm; `approach` is the
 * axial approach of one bearing under its preload P, mm.
 */
export function pairRigidity(preload: number, approach: number): number {
  return (LIFT_OFF * preload) / approach;
}

const LIFT_OFF = 2 ** 1.5;

/**
 * Outside axial load that lifts one side of a preloaded set off, over the preload: (1 + k·n^⅔)^1.5 for n bearings
 * of angle `back` that the load relieves against one of angle `loaded`, with k = (sin back / sin loaded)^−5/3.
 * Two alike give 2^1.5 = 2.83. Approach taken as force^⅔, angles constant (rad).
 */
export function liftOffRatio(count: number, loaded: number, back: number): number {
  const k = (Math.sin(back) / Math.sin(loaded)) ** (-5 / 3);
  return (1 + k * count ** (2 / 3)) ** 1.5;
}
