import type { BallGeometry } from '../../engine/contact/ball-geometry.ts';
import { bearingSteel } from '../../engine/contact/elasticity.ts';
import { hybridRatings } from '../../engine/life/hybrid.ts';
import { dynamicRating, relativeBall, staticFactor, staticRating } from '../../engine/life/rating.ts';
import { materials } from '../../engine/tables/materials.ts';

/** What a bearing is rated for, N. */
export interface BearingRatings {
  readonly dynamic: number;
  readonly static: number;
  /** f0 of ISO 76. */
  readonly f0: number;
  readonly basis: 'printed' | 'balls' | 'estimated balls';
  /** Ceramic balls: the least that the static rating may be, as a share of the steel one; null for steel balls. */
  readonly hybridStatic: number | null;
}

/** Ratings by ISO 281 and ISO 76 from the balls; contact angle in rad. */
export function basicRatings(geometry: BallGeometry, angle: number, hybrid: boolean): BearingRatings {
  const { E, nu } = materials['silicon nitride'];
  const ceramic = { ring: bearingSteel, ball: { E, nu } };
  return {
    dynamic: dynamicRating(geometry, angle).value,
    static: staticRating(geometry, angle).value,
    f0: staticFactor(relativeBall(geometry, angle)).value,
    basis: 'balls',
    hybridStatic: hybrid ? hybridRatings(geometry, angle, ceramic).staticAtSameStress : null,
  };
}
