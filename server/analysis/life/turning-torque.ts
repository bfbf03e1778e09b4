import { staticEquivalentLoad } from '../../engine/life/equivalent-load.ts';
import { sealTorque, startingTorque } from '../../engine/life/friction.ts';
import { type FrictionConstants, frictionConstants } from '../../engine/tables/friction-constants.ts';
import type { MountedBearing } from '../mechanics/mounted-bearing.ts';
import type { PairMechanics } from '../mechanics/pair-mechanics.ts';
import { ratingsOf } from './bearing-ratings.ts';

/** What the fingers feel of a clamped pair when they turn it. N·mm. */
export interface TurningTorque {
  /** Torque that starts both bearings against the axial load, without their seals; 0 where there is none. */
  readonly load: number;
  /** Torque of the rubbing lips of both; null where a lip's size is not in the table. */
  readonly seals: number | null;
  /** Axial load as a static equivalent load over C0 of the weaker bearing. */
  readonly staticShare: number;
  readonly assumed: readonly string[];
}

/** Turning torque of a pair with and without the load that the clamp puts on it; null for series without constants. */
export function turningTorque({ left, right, result }: PairMechanics): TurningTorque | null {
  const both = [left, right];
  const constants = both.map(({ stack }) => constantsOf(stack.bearing?.basic ?? ''));
  const ratings = both.map((one) =>
    one.stack.bearing ? ratingsOf(one.stack.bearing, one.inner, one.contactAngle?.nominal ?? null) : null,
  );
  const load = both.reduce<number | null>((sum, one, index) => {
    const [own, rating] = [constants[index], ratings[index]];
    const bearing = one.stack.bearing;
    if (sum === null || !own || !rating || !bearing) return null;
    if (result.ballLoad <= 0) return sum;
    const rubbing = {
      constants: own,
      meanDiameter: (bearing.bore + bearing.outside) / 2,
      staticRating: rating.static,
    };
    return sum + startingTorque(rubbing, { radial: 0, axial: result.ballLoad });
  }, 0);
  if (load === null) return null;
  const weaker = Math.min(...ratings.map((rating) => rating?.static ?? Number.POSITIVE_INFINITY));
  const lips = both.map(lipTorque);
  return {
    load,
    seals: lips.some((torque) => torque === null) ? null : lips.reduce((sum: number, t) => sum + (t ?? 0), 0),
    staticShare: staticEquivalentLoad({ radial: 0, axial: result.ballLoad }) / weaker,
    assumed: ['sliding friction of 0.15 from rest; grease not in it; rubbing lips as full contact seals'],
  };
}

function lipTorque({ stack }: MountedBearing): number | null {
  const { bearing, innerOutside } = stack;
  if (!bearing) return null;
  if (bearing.closure !== 'seal' || bearing.rubs === false || bearing.closedSides === 0) return 0;
  const lip = innerOutside?.value;
  if (lip === undefined) return null;
  return sealTorque('full contact', bearing.outside, lip, bearing.closedSides);
}

/** Constants by the series a basic number begins with: 6803 and 61803 are one series. */
function constantsOf(basic: string): FrictionConstants | null {
  const match = /^6(?:(18|19|8|9)(?=\d\d$)|(0|2)(?=\d\d$)|(1?60)(?=\d\d$))/.exec(basic);
  if (/^160\d\d$/.test(basic)) return frictionConstants['160'];
  if (!match) return null;
  const [, thin, wide] = match;
  if (thin) return frictionConstants[thin.endsWith('8') ? '618' : '619'];
  return wide === '0' ? frictionConstants['60'] : frictionConstants['62'];
}
