/** A ring of one material with plane faces; `inner` 0 is a solid round. */
export interface Tube {
  /** Inside diameter, mm. */
  readonly inner: number;
  /** Outside diameter, mm. */
  readonly outer: number;
  /** Modulus of elasticity, MPa. */
  readonly E: number;
  /** Poisson's ratio. */
  readonly nu: number;
  /** kg/m³; only needed where the tube spins. */
  readonly density?: number;
}

/** What loads a tube. */
export interface TubeLoad {
  /** Pressure on the inside and on the outside, MPa. */
  readonly inside: number;
  readonly outside: number;
  /** Speed, rad/s. */
  readonly speed: number;
}

/** State at one face of a tube. */
export interface TubeFace {
  /** Growth of the diameter, mm. */
  readonly growth: number;
  /** Hoop stress, tension positive, MPa. */
  readonly hoop: number;
  /** Radial stress, tension positive, MPa. */
  readonly radial: number;
}

/**
 * A thick tube under pressure and rotation at diameter `at` (mm), plane stress: Lamé, and the rotating disc of
 * source `timoshenko-goodier`. Exact for constant thickness along the axle; a wall that
 * reaches past the seat is stiffer than this.
 */
export function tubeAt(tube: Tube, load: TubeLoad, at: number): TubeFace {
  const a = tube.inner / 2;
  const b = tube.outer / 2;
  const r = at / 2;
  const { E, nu } = tube;
  const wall = b * b - a * a;
  const even = (load.inside * a * a - load.outside * b * b) / wall;
  const curl = ((load.inside - load.outside) * a * a * b * b) / wall;
  const overSquare = r > 0 ? curl / (r * r) : 0;
  const spin = spinning(tube, load.speed, r);
  const hoop = even + overSquare + spin.hoop;
  const radial = even - overSquare + spin.radial;
  return { hoop, radial, growth: ((hoop - nu * radial) * at) / E };
}

function spinning(tube: Tube, speed: number, r: number): { hoop: number; radial: number } {
  if (speed === 0 || !tube.density) return { hoop: 0, radial: 0 };
  const a2 = (tube.inner / 2) ** 2;
  const b2 = (tube.outer / 2) ** 2;
  const { nu } = tube;
  const r2 = r * r;
  // kg/m³ · (rad/s)² · mm² is 1e-12 N/mm².
  const scale = ((3 + nu) / 8) * tube.density * speed * speed * 1e-12;
  const across = r2 > 0 ? (a2 * b2) / r2 : 0;
  return {
    radial: scale * (a2 + b2 - across - r2),
    hoop: scale * (a2 + b2 + across - ((1 + 3 * nu) / (3 + nu)) * r2),
  };
}
