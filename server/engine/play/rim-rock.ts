/** One bearing of a wheel that is rocked. */
export interface RockedBearing {
  /** Place along the axle from the point the rim is measured at, mm. */
  readonly at: number;
  /** Inner ring less outer ring with the housing at rest, at the groove centres, mm. */
  readonly offset: number;
  /** Distance of the groove centres at the first touch, m0, mm. */
  readonly reach: number;
  /** Radial distance of the groove centres as mounted, m0 − G/2, mm. */
  readonly centres: number;
  /** Radius of the ball circle, mm. */
  readonly radius: number;
}

/** What the hand feels at the rim. */
export interface RimRock {
  /** Whole axial travel of the rim from side to side at one place, mm. */
  readonly travel: number;
  /** Greatest tilt of the housing on the axle to one side, rad. */
  readonly tilt: number;
}

interface Disc {
  readonly x: number;
  readonly y: number;
  readonly r: number;
}

const none: RimRock = { travel: 0, tilt: 0 };

/**
 * Rock of the rim without load, by scanning tilt and shift. A ball leaves each bearing free while its groove
 * centres stay within m0 of each other; tilting moves them axially by tilt times the ball circle's radius at top
 * and bottom, which are the places that touch first. In shift along and across the axle each such place is a disc,
 * so at a given tilt the free shifts are what all discs share, and the rim's travel is a concave function of the
 * tilt. `rim` is the radius at which the hand pulls, mm. Zero where some bearing has no play at all.
 */
export function rimRock(bearings: readonly RockedBearing[], rim: number): RimRock {
  const forward = farthest(bearings, rim);
  const mirrored = bearings.map((bearing) => ({ ...bearing, at: -bearing.at, offset: -bearing.offset }));
  const backward = farthest(mirrored, rim);
  if (!forward || !backward) return none;
  return { travel: forward.travel + backward.travel, tilt: Math.max(forward.tilt, backward.tilt) };
}

/** Rough rock at the rim, 2·G·R/L, mm: radial clearance G over the bearing span L, for a check by eye. */
export function roughRimRock(radialClearance: number, rim: number, span: number): number {
  return (2 * radialClearance * rim) / span;
}

function farthest(bearings: readonly RockedBearing[], rim: number): RimRock | null {
  const at = (tilt: number): number | null => {
    const shift = farthestShift(bearings.flatMap((bearing) => discsOf(bearing, tilt)));
    return shift === null ? null : shift + tilt * rim;
  };
  const most = greatestTilt((tilt) => at(tilt) !== null);
  if (most === null) return null;
  // Golden section on a concave function; its ends lie on the edge of what is free.
  const golden = (Math.sqrt(5) - 1) / 2;
  let lo = 0;
  let hi = most;
  for (let step = 0; step < 60; step++) {
    const a = hi - golden * (hi - lo);
    const b = lo + golden * (hi - lo);
    if ((at(a) ?? -Infinity) < (at(b) ?? -Infinity)) lo = a;
    else hi = b;
  }
  const tilt = [most, (lo + hi) / 2, 0].reduce((best, one) =>
    (at(one) ?? -Infinity) > (at(best) ?? -Infinity) ? one : best,
  );
  return { travel: at(tilt) ?? 0, tilt: most };
}

function greatestTilt(free: (tilt: number) => boolean): number | null {
  if (!free(0)) return null;
  let lo = 0;
  let hi = 1e-3;
  for (let step = 0; step < 20 && free(hi); step++) {
    lo = hi;
    hi *= 2;
  }
  for (let step = 0; step < 60; step++) {
    const middle = (lo + hi) / 2;
    if (free(middle)) lo = middle;
    else hi = middle;
  }
  return lo;
}

/**
 * The free shifts of one bearing, along (x) and across (y) the axle, as two discs: top and bottom of the ball
 * circle. Shift of the housing to +x lowers inner less outer offset; its tilt raises it across by tilt · place.
 */
function discsOf({ at, offset, reach, centres, radius }: RockedBearing, tilt: number): Disc[] {
  return [1, -1].map((side) => ({
    x: offset + side * tilt * radius,
    y: side * centres - tilt * at,
    r: reach,
  }));
}

/** Greatest x that all discs share, or null where they share nothing. */
function farthestShift(discs: readonly Disc[]): number | null {
  const candidates = discs.map(({ x, y, r }) => ({ x: x + r, y }));
  for (const [i, one] of discs.entries()) {
    for (const other of discs.slice(i + 1)) candidates.push(...crossings(one, other));
  }
  let best: number | null = null;
  for (const point of candidates) {
    if ((best === null || best < point.x) && discs.every((disc) => within(disc, point))) best = point.x;
  }
  return best;
}

function within({ x, y, r }: Disc, point: { readonly x: number; readonly y: number }): boolean {
  return Math.hypot(point.x - x, point.y - y) <= r + 1e-10;
}

function crossings(a: Disc, b: Disc): { x: number; y: number }[] {
  const dx = b.x - a.x;
  const dy = b.y - a.y;
  const apart = Math.hypot(dx, dy);
  if (apart === 0 || a.r + b.r < apart) return [];
  const along = (apart * apart + a.r * a.r - b.r * b.r) / (2 * apart);
  const across = Math.sqrt(Math.max(0, a.r * a.r - along * along));
  return [1, -1].map((side) => ({
    x: a.x + (along * dx - side * across * dy) / apart,
    y: a.y + (along * dy + side * across * dx) / apart,
  }));
}
