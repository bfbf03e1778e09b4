import { type RimStiffness, type SpokeBed, type SpokeSprings, spokeBed } from './spoke-springs.ts';

/** Waves round the rim that are summed; the sums fall with their fourth power. */
const WAVES = 60;

/** Stiffness of a wheel at the rim under one force, N/mm. */
export interface WheelStiffness {
  readonly lateral: number;
  readonly radial: number;
  readonly tangential: number;
}

/**
 * Stiffness by the theory of a ring on a bed of springs (source `ford-wheel`). It holds while no spoke is slack, for a
 * stiff hub, pinned spoke ends and spokes that meet the rim in its middle. It lies 2 to 6 % above a model with every
 * spoke, up to 8 % for 24 spokes; wheels as built measure about a third less sideways. For comparison of wheels, not
 * for prediction.
 */
export function wheelStiffness(rim: RimStiffness, spokes: readonly SpokeSprings[]): WheelStiffness {
  const bed = spokeBed(spokes, rim.radius);
  return {
    lateral: lateralStiffness(rim, bed),
    radial: radialStiffness(rim, bed),
    tangential: tangentialStiffness(rim, spokes),
  };
}

/** Stiffness of a bare rim against n waves sideways, bending and twist in series, N/mm. */
export function rimWaveStiffness(rim: RimStiffness, n: number): number {
  const { radius: R, lateral: EI, torsional: GJ } = rim;
  if (n < 2) return 0;
  const bend = (Math.PI * EI * (n * n - 1) ** 2) / R ** 3;
  const twist = (Math.PI * GJ * n * n * (n * n - 1) ** 2) / R ** 3;
  return (bend * twist) / (bend + twist);
}

/**
 * Against a force from the side, N/mm: 1/K = Σ 1/Kn with K0 = 2·πR·k and Kn = πR·k + rim − πn²·pull. What a sideways
 * move does radially in a dished wheel (the radial wave gives way) is taken off each wave from the first on.
 */
export function lateralStiffness(rim: RimStiffness, bed: SpokeBed): number {
  const { radius: R } = rim;
  const spring = Math.PI * R * bed.lateral;
  const coupled = Math.PI * R * bed.lateralRadial;
  let give = 1 / (2 * spring);
  for (let n = 1; n <= WAVES; n += 1) {
    const wave = spring + rimWaveStiffness(rim, n) - Math.PI * n * n * bed.pull;
    const stiffness = wave - coupled ** 2 / radialWave(rim, bed, n);
    // A wave that no longer resists: the wheel has buckled.
    if (stiffness <= 0) return 0;
    give += 1 / stiffness;
  }
  return 1 / give;
}

/**
 * Against a radial force, N/mm: 1/K = Σ 1/(πR·k + πEI·(n² − 1)²/R³). The uniform squeeze of the rim counts where its
 * section is known.
 */
export function radialStiffness(rim: RimStiffness, bed: SpokeBed): number {
  const { radius: R, axial } = rim;
  let give = axial === null ? 0 : 1 / (2 * Math.PI * (R * bed.radial + axial / R));
  for (let n = 1; n <= WAVES; n += 1) give += 1 / radialWave(rim, bed, n);
  return 1 / give;
}

/**
 * Against a torque at the hub, as force at the rim, N/mm. Crossed spokes in the order lead, lead, trail, trail press the
 * rim into a ripple of N/4 waves, which gives way: 2πR·k alone, right for a rim that cannot bend, is an upper bound.
 */
export function tangentialStiffness(rim: RimStiffness, spokes: readonly SpokeSprings[]): number {
  const { radius: R, radial: EI } = rim;
  const bed = spokeBed(spokes, R);
  const rigid = 2 * Math.PI * R * bed.tangential;
  const crossed = spokes.filter(({ direction }) => 1e-6 < Math.abs(direction.tangential));
  const number = spokes.reduce((sum, { count }) => sum + count, 0);
  const waves = number / 4;
  if (crossed.length === 0 || waves < 2) return rigid;
  const inwards = crossed.reduce(
    (sum, { count, axial, span, direction }) => sum + (count * axial * direction.radial ** 2) / span,
    0,
  );
  return rigid / (1 + (inwards * R ** 3) / (2 * Math.PI * EI * (waves * waves - 1) ** 2));
}

/** Share of a radial load that the spoke at the load loses, (EA/L)·c2/K. */
export function loadedSpokeShare(spoke: SpokeSprings, radial: number): number {
  return ((spoke.axial / spoke.span) * spoke.direction.radial) / radial;
}

function radialWave(rim: RimStiffness, bed: SpokeBed, n: number): number {
  const { radius: R, radial: EI } = rim;
  return Math.PI * R * bed.radial + (Math.PI * EI * (n * n - 1) ** 2) / R ** 3;
}
