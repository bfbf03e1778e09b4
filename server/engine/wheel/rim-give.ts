import type { Ripple } from './rim-ripple.ts';
import type { RimStiffness, SpokeBed, SpokeSprings } from './spoke-springs.ts';

/** Waves round the rim that are summed; what they leave out falls with their third power. */
const WAVES = 200;

/** How far the rim moves where a newton acts on it, mm/N: to the right and towards the axle. */
export interface RimGive {
  readonly lateral: number;
  readonly radial: number;
  /** To the right under a radial newton and towards the axle under one to the right; 0 for a wheel alike on both sides. */
  readonly cross: number;
}

/** Stiffness of a bare rim against n waves sideways, bending and twist in series, N/mm (source `ford-wheel`). */
export function rimWaveStiffness(rim: RimStiffness, n: number): number {
  const { radius: R, lateral: EI, torsional: GJ } = rim;
  if (n < 2) return 0;
  const bend = (Math.PI * EI * (n * n - 1) ** 2) / R ** 3;
  const twist = (Math.PI * GJ * n * n * (n * n - 1) ** 2) / R ** 3;
  return (bend * twist) / (bend + twist);
}

/**
 * Sum over the waves of the rim of what each gives under a force at one point: sideways πR·k + rim − πn²·pull,
 * radially πR·k + πEI·(n² − 1)²/R³ (source `ford-wheel`), and what a sideways move of a dished wheel does radially,
 * which couples the two. The even squeeze of the rim counts where its section is known. Null for a wheel that has
 * buckled.
 */
export function rimGive(rim: RimStiffness, bed: SpokeBed): RimGive | null {
  const { radius: R } = rim;
  const give = { lateral: 0, radial: 0, cross: 0 };
  for (let n = 0; n <= WAVES; n += 1) {
    const round = n === 0 ? 2 * Math.PI * R : Math.PI * R;
    const sideways = round * bed.lateral + rimWaveStiffness(rim, n) - Math.PI * n * n * bed.pull;
    const inwards = round * bed.radial + radialRim(rim, n);
    const coupled = Number.isFinite(inwards) ? round * bed.lateralRadial : 0;
    const lateral = 1 / (sideways - coupled ** 2 / inwards);
    if (lateral <= 0) return null;
    give.lateral += lateral;
    give.radial += 1 / inwards + (lateral * coupled ** 2) / inwards ** 2;
    give.cross -= (lateral * coupled) / inwards;
  }
  return give;
}

/** How far a spoke slackens, mm, under a newton at its end, towards the axle, to the right, and along the spoke itself. */
export function giveAlong(
  spoke: SpokeSprings,
  give: RimGive,
  ripple: Ripple,
): { readonly radial: number; readonly right: number; readonly along: number } {
  const { lateral, radial } = spoke.direction;
  const c1 = spoke.side * lateral + radial * ripple.right;
  const c2 = radial * (1 + ripple.radial);
  const inwards = c2 * give.radial + c1 * give.cross;
  const right = c1 * give.lateral + c2 * give.cross;
  return { radial: inwards, right, along: c2 * inwards + c1 * right };
}

/** Stiffness of the bare rim in its plane against n waves, N/mm; without end where its section is not known. */
function radialRim(rim: RimStiffness, n: number): number {
  const { radius: R, radial: EI, axial } = rim;
  if (n === 0) return axial === null ? Number.POSITIVE_INFINITY : (2 * Math.PI * axial) / R;
  return (Math.PI * EI * (n * n - 1) ** 2) / R ** 3;
}
