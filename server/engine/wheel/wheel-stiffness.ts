import { giveAlong, type RimGive, rimGive } from './rim-give.ts';
import { type Ripple, rippledBed } from './rim-ripple.ts';
import { type RimStiffness, type SpokeSprings, spokeBed } from './spoke-springs.ts';

/** Stiffness of a wheel at the rim under one force, N/mm. */
export interface WheelStiffness {
  readonly lateral: number;
  readonly radial: number;
  readonly tangential: number;
  /** What the rim does under a newton, for what follows from it. */
  readonly give: WheelGive;
}

/** What the rim does under a newton, and the ripple it takes up. */
export interface WheelGive extends RimGive {
  readonly ripple: (side: -1 | 1) => Ripple;
}

/**
 * Stiffness by the theory of a ring on a bed of springs (source `ford-wheel`). It holds while no spoke is slack, for a
 * stiff hub, pinned spoke ends and spokes that meet the rim in its middle. A model with every spoke gives the same
 * within 2 % sideways and 4 % radially, of a 2:1 wheel up to 8 % less; wheels as built measure about a third less
 * sideways. For comparison of wheels, not for prediction. Null for a wheel that has buckled.
 */
export function wheelStiffness(rim: RimStiffness, spokes: readonly SpokeSprings[]): WheelStiffness | null {
  const bed = rippledBed(rim, spokes);
  const moved = rimGive(rim, bed);
  if (moved === null) return null;
  const give = { ...moved, ripple: bed.ripple };
  const tangential = tangentialStiffness(rim, spokes);
  return { lateral: 1 / give.lateral, radial: 1 / give.radial, tangential, give };
}

/**
 * Against a torque at the hub, as force at the rim, N/mm. Crossed spokes in the order lead, lead, trail, trail press the
 * rim into a ripple of N/4 waves, which gives way: 2πR·k alone, right for a rim that cannot bend, is an upper bound.
 */
export function tangentialStiffness(rim: RimStiffness, spokes: readonly SpokeSprings[]): number {
  const { radius: R, radial: EI } = rim;
  const bed = spokeBed(spokes, R);
  // The rim turns with its hoop force, so that of the tension only what the hub's radius gives is left.
  const rigid = 2 * Math.PI * (R * bed.tangential - bed.pull);
  const crossed = spokes.filter(({ direction }) => 1e-6 < Math.abs(direction.tangential));
  const waves = spokes.reduce((sum, { count }) => sum + count, 0) / 4;
  if (crossed.length === 0 || waves < 2) return rigid;
  const inwards = crossed.reduce(
    (sum, { count, axial, span, direction }) => sum + (count * axial * direction.radial ** 2) / span,
    0,
  );
  return rigid / (1 + (inwards * R ** 3) / (2 * Math.PI * EI * (waves * waves - 1) ** 2));
}

/** Share of a radial load that the spoke at the load loses; up to 0.03 above a model with every spoke. */
export function loadedSpokeShare(spoke: SpokeSprings, give: WheelGive): number {
  return (spoke.axial / spoke.span) * giveAlong(spoke, give, give.ripple(spoke.side)).radial;
}

/** Share of a force to the right that the spoke at the load loses; negative: it gains. Few spokes share it: it may pass 1. */
export function sidewaysShare(spoke: SpokeSprings, give: WheelGive): number {
  return (spoke.axial / spoke.span) * giveAlong(spoke, give, give.ripple(spoke.side)).right;
}
