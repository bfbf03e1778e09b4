import type { DecodedBearing } from '../../engine/bearings/decoded-bearing.ts';
import type { InnerGeometry } from '../../engine/play/inner-geometry.ts';
import { type BearingRatings, basicRatings } from './ratings-of-geometry.ts';

/** Ratings of a bearing: those printed for its code first, worked out from its balls second. */
export function ratingsOf(
  bearing: DecodedBearing,
  inner: InnerGeometry,
  contactAngle: number | null,
): BearingRatings {
  const worked = basicRatings(inner.geometry, contactAngle ?? 0, bearing.material === 'hybrid');
  const printed = bearing.dynamicRating !== null && bearing.staticRating !== null;
  return {
    ...worked,
    dynamic: bearing.dynamicRating ?? worked.dynamic,
    static: bearing.staticRating ?? worked.static,
    basis: printed ? 'printed' : inner.ballBasis === 'estimate' ? 'estimated balls' : 'balls',
  };
}
