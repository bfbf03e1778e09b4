import { allSteel, type BearingElasticity } from '../contact/ball-contact.ts';
import type { BallGeometry } from '../contact/ball-geometry.ts';
import { staticRatingShare } from './static-factor.ts';

/** What is known of a bearing with ceramic balls in steel rings against the same in steel. */
export interface HybridRatings {
  /** Dynamic rating over that of steel balls: 1 (former DIN ISO 281 supplement 5, now ISO 20056-1). */
  readonly dynamic: number;
  /** Static rating over that of steel balls at the same 4200 MPa: stiffer balls, smaller contact, less load. */
  readonly staticAtSameStress: number;
  /**
   * Static rating as ISO 20056-2 has it: a somewhat higher stress is permitted, its figure is not known here, so
   * the true share lies between `staticAtSameStress` and 1.
   */
  readonly staticOfStandard: null;
}

/** Ratings of a hybrid bearing as far as they are known. α in rad. */
export function hybridRatings(
  geometry: BallGeometry,
  angle: number,
  elasticity: BearingElasticity,
): HybridRatings {
  return {
    dynamic: 1,
    staticAtSameStress: staticRatingShare(geometry, angle, elasticity, allSteel),
    staticOfStandard: null,
  };
}
