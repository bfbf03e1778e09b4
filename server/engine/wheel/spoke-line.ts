/**
 * Where one spoke runs. The plane is the one the rim is centred on; distances from it count towards the spoke's own
 * flange.
 */
export interface SpokeLine {
  /** Radius of the circle of hub holes, or of the heads of straight-pull spokes, mm. */
  readonly hubRadius: number;
  /** Radius on which the spoke ends, mm. */
  readonly rimRadius: number;
  /** Where the spoke leaves the hub, from the plane, mm. */
  readonly hubOffset: number;
  /** Where it meets the rim, from the plane, mm. */
  readonly rimOffset: number;
  /** Angle between hub hole and rim hole seen along the axle, rad. */
  readonly angle: number;
}

/** Which way a spoke pulls on the rim: shares of its tension. */
export interface SpokeDirection {
  /** Sideways, towards its flange. */
  readonly lateral: number;
  /** Towards the axle. */
  readonly radial: number;
  /** Round the rim. */
  readonly tangential: number;
}

/** Distance of the two holes, √(R² + r² + (w − o)² − 2·R·r·cos ψ), mm. */
export function spokeSpan(line: SpokeLine): number {
  const { hubRadius: r, rimRadius: R, hubOffset: w, rimOffset: o, angle: psi } = line;
  return Math.sqrt(R * R + r * r + (w - o) ** 2 - 2 * R * r * Math.cos(psi));
}

/**
 * Length of a bent spoke from the inside of its elbow to its end, mm: the elbow lies on the edge of a hole of
 * diameter `hole` that is nearest the rim. A straight-pull spoke has no hole: 0. The thickness of the wire in the
 * elbow and the bedding of the hole, some tenths of a millimetre, are left out.
 */
export function spokeLength(line: SpokeLine, hole: number): number {
  return spokeSpan(line) - hole / 2;
}

/** Direction of the pull on the rim: c1, c2, c3; their squares sum to 1. */
export function spokeDirection(line: SpokeLine): SpokeDirection {
  const { hubRadius: r, rimRadius: R, hubOffset: w, rimOffset: o, angle: psi } = line;
  const L = spokeSpan(line);
  return {
    lateral: (w - o) / L,
    radial: (R - r * Math.cos(psi)) / L,
    tangential: (r * Math.sin(psi)) / L,
  };
}

/** How a length changes with the sizes it comes from, mm per mm. */
export interface LengthSensitivity {
  /** With the effective rim diameter. */
  readonly rimDiameter: number;
  /** With the hole circle of the flange. */
  readonly holeCircle: number;
  /** With the distance of the flange from the middle. */
  readonly flangeOffset: number;
}

/** The derivatives of the length: what a reading of each size has to be good for. */
export function lengthSensitivity(line: SpokeLine): LengthSensitivity {
  const { hubRadius: r, rimRadius: R, hubOffset: w, rimOffset: o, angle: psi } = line;
  const L = spokeSpan(line);
  return {
    rimDiameter: (R - r * Math.cos(psi)) / (2 * L),
    holeCircle: (r - R * Math.cos(psi)) / (2 * L),
    flangeOffset: (w - o) / L,
  };
}

/**
 * Angle from the head of a straight-pull spoke to its rim hole, rad: its line is a tangent. The head lies on a circle of
 * radius `headRadius`, `setback` behind the point where the line touches (mm).
 */
export function straightPullAngle(headRadius: number, setback: number, rimRadius: number): number {
  const touch = Math.sqrt(Math.max(0, headRadius ** 2 - setback ** 2));
  return Math.acos(Math.min(1, touch / rimRadius)) + Math.atan2(setback, touch);
}
