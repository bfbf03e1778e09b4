/**
 * Ball and groove by the approximations of Brewe and Hamrock, J. Lubrication Technology 99 (1977), as printed in
 * Harris, Rolling Bearing Analysis, chapter 6: within 3 % of the elliptic integrals. A route of its own.
 */

export interface HandBearing {
  readonly balls: number;
  /** mm */
  readonly ball: number;
  readonly pitch: number;
  /** Groove radius over ball diameter, both rings. */
  readonly conformity: number;
  /** Mounted radial clearance, mm. */
  readonly clearance: number;
}

/** E/(1 − ν²) of bearing steel, E 208 GPa, ν 0.30, MPa. */
const modulus = 208_000 / (1 - 0.3 * 0.3);

/** Equivalent radius, ellipse ratio, stiffness K in Q = K·δ^1.5 (N, mm) of one contact. */
function contact(ball: number, conformity: number, raceway: number) {
  const rolling = 1 / (2 / ball + 2 / raceway);
  const across = 1 / (2 / ball - 1 / (conformity * ball));
  const ratio = across / rolling;
  const k = 1.0339 * ratio ** 0.636;
  const e = 1.0003 + 0.5968 / ratio;
  const f = 1.5277 + 0.6023 * Math.log(ratio);
  const radius = 1 / (1 / rolling + 1 / across);
  return { k, e, radius, stiffness: Math.PI * k * modulus * Math.sqrt((radius * e) / (4.5 * f ** 3)) };
}

function contacts({ ball, conformity, pitch }: HandBearing) {
  return {
    inner: contact(ball, conformity, pitch - ball),
    outer: contact(ball, conformity, -(pitch + ball)),
  };
}

/** Ball force and axial offset of the inner ring under a thrust: Jones' thrust-loaded bearing, by halving. */
export function thrust(bearing: HandBearing, force: number): { ballForce: number; offset: number } {
  const { inner, outer } = contacts(bearing);
  const reach = (2 * bearing.conformity - 1) * bearing.ball;
  const at = (approach: number) => {
    const angle = Math.acos((reach - bearing.clearance / 2) / (reach + approach));
    const compliance = inner.stiffness ** (-2 / 3) + outer.stiffness ** (-2 / 3);
    const ballForce = (approach / compliance) ** 1.5;
    return { ballForce, angle, thrust: bearing.balls * ballForce * Math.sin(angle) };
  };
  let [lo, hi] = [0, 0.1];
  for (let step = 0; step < 80; step++) {
    const middle = (lo + hi) / 2;
    if (at(middle).thrust < force) lo = middle;
    else hi = middle;
  }
  const { ballForce, angle } = at(lo);
  return { ballForce, offset: (reach + lo) * Math.sin(angle) };
}

/** Greatest pressure of a ball on its inner groove, MPa. */
export function hertzStress(bearing: HandBearing, ballForce: number): number {
  const { inner } = contacts(bearing);
  const along = ((6 * inner.k ** 2 * inner.e * ballForce * inner.radius) / (Math.PI * modulus)) ** (1 / 3);
  return (1.5 * ballForce) / (Math.PI * along * (along / inner.k));
}
