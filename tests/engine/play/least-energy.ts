/** A bearing as an energy: balls that press once the groove centres are more than `reach` apart. */
export interface EnergyBearing {
  readonly reach: number;
  readonly centres: number;
  /** All balls, N/mm^1.5. */
  readonly stiffness: number;
  /** Offset of the groove centres with flush faces, mm, and the way the bearing carries. */
  readonly flush: number;
  readonly carries: 'both' | 'inward' | 'outward';
}

/** A clamped pair as an energy. */
export interface EnergyPair {
  readonly left: EnergyBearing;
  readonly right: EnergyBearing;
  readonly mismatch: number;
  readonly clampForce: number;
  readonly spacerCompliance: number;
  readonly housingCompliance: number;
}

/** What the pair settles to. */
export interface Settled {
  readonly ballLoad: number;
  readonly spacerLoad: number;
}

/**
 * Brute force: the distance of the inner rings, the distance of the outer rings and the place of the housing are
 * searched for the least of ball energy + spacer energy + shell energy + work of the clamp. The spacer only pushes.
 * Every term is convex, so three searches within each other find the least.
 */
export function settle(pair: EnergyPair): Settled {
  const { clampForce, spacerCompliance, housingCompliance, mismatch } = pair;
  const balls = (apart: number): number =>
    least((place) => energy(pair.left, place) + energy(pair.right, apart - place), -0.6, 0.6).value;
  // Lengths count from the shoulders' distance: inner rings at `inner`, outer rings at `outer`.
  const shell = (outer: number): number => (outer * outer) / (2 * housingCompliance);
  const spacer = (inner: number): number => Math.max(0, mismatch - inner) ** 2 / (2 * spacerCompliance);
  const best = (inner: number) => least((outer) => balls(inner - outer) + shell(outer), -0.05, 0.05);
  const { at: inner } = least(
    (x) => best(x).value + spacer(x) + clampForce * x,
    mismatch - 0.5,
    mismatch + 0.1,
  );
  const outer = best(inner).at;
  return {
    ballLoad: Math.abs(outer) / housingCompliance,
    spacerLoad: Math.max(0, mismatch - inner) / spacerCompliance,
  };
}

/**
 * Energy of one bearing; `apart` is how far its inner ring stands away from the other bearing, outward positive,
 * faces flush at zero.
 */
function energy({ reach, centres, stiffness, flush, carries }: EnergyBearing, apart: number): number {
  const offset = carries === 'inward' ? flush - apart : flush + apart;
  if (carries !== 'both' && offset <= 0) return 0;
  const squeezed = Math.max(0, Math.hypot(offset, centres) - reach);
  return 0.4 * stiffness * squeezed ** 2.5;
}

/** Least of a convex function by thirds narrowed in the golden ratio. */
function least(f: (x: number) => number, from: number, to: number): { at: number; value: number } {
  const golden = (Math.sqrt(5) - 1) / 2;
  let [lo, hi] = [from, to];
  let [a, b] = [hi - golden * (hi - lo), lo + golden * (hi - lo)];
  let [fa, fb] = [f(a), f(b)];
  for (let step = 0; step < 55; step++) {
    if (fa < fb) {
      [hi, b, fb] = [b, a, fa];
      a = hi - golden * (hi - lo);
      fa = f(a);
    } else {
      [lo, a, fa] = [a, b, fb];
      b = lo + golden * (hi - lo);
      fb = f(b);
    }
  }
  const at = (lo + hi) / 2;
  return { at, value: f(at) };
}
