/** What a crossing comes to on a flange. */
export interface CrossingRoom {
  /** Distance of neighbouring holes, mm. */
  readonly chord: number;
  /** Angle at the hub hole between the spoke and the radius through the hole, rad; a right angle is a tangent. */
  readonly lean: number;
  /** Angle between hub and rim hole at which the spoke is a tangent, rad: more crossings shorten nothing. */
  readonly tangentAt: number;
  /** From the centre of the next hole to the line of the spoke, mm. */
  readonly neighbour: number;
}

/** Geometry of one spoke on its flange, seen along the axle. Radii in mm, the angle ψ in rad, `holes` of the flange. */
export function crossingRoom(
  hubRadius: number,
  rimRadius: number,
  holes: number,
  angle: number,
): CrossingRoom {
  const r = hubRadius;
  const R = rimRadius;
  const pitch = (2 * Math.PI) / holes;
  const along = [R * Math.cos(angle) - r, R * Math.sin(angle)] as const;
  const next = [r * Math.cos(pitch) - r, r * Math.sin(pitch)] as const;
  return {
    chord: 2 * r * Math.sin(pitch / 2),
    lean: Math.atan2(along[1], along[0]),
    tangentAt: Math.acos(Math.min(1, r / R)),
    neighbour: Math.abs(along[0] * next[1] - along[1] * next[0]) / Math.hypot(...along),
  };
}

/** What to think of a crossing. */
export type CrossingVerdict = 'free' | 'over the next head' | 'over the next hole' | 'past the tangent';

/** Sizes that decide whether a spoke clears the one beside it, mm. */
export interface HeadSizes {
  readonly wire: number;
  readonly head: number;
  readonly hole: number;
}

/**
 * Whether a spoke lies free, over the head of its neighbour, over its hole, or leans past the tangent. Radial spokes
 * are free. Geometry only: whether a flange bears radial spokes is for its maker to say.
 */
export function judgeCrossing(room: CrossingRoom, angle: number, sizes: HeadSizes): CrossingVerdict {
  if (room.tangentAt < angle) return 'past the tangent';
  if (angle < 1e-9) return 'free';
  if (room.neighbour < (sizes.wire + sizes.hole) / 2) return 'over the next hole';
  return room.neighbour < (sizes.wire + sizes.head) / 2 ? 'over the next head' : 'free';
}

/** Most crossings by the rule of the trade, total holes over nine (ψ up to 80°), for even holes. */
export function mostCrossingsByRule(totalHoles: number): number {
  return Math.floor(totalHoles / 9);
}

/** Most crossings whose spokes lie free of the heads beside them; even holes, radii in mm. */
export function mostCrossingsFree(
  hubRadius: number,
  rimRadius: number,
  holes: number,
  sizes: HeadSizes,
): number {
  let most = 0;
  for (let crosses = 1; crosses < holes / 2; crosses += 1) {
    const angle = (crosses * 2 * Math.PI) / holes;
    const room = crossingRoom(hubRadius, rimRadius, holes, angle);
    if (judgeCrossing(room, angle, sizes) === 'free') most = crosses;
  }
  return most;
}
