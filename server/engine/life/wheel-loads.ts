/** A force on the turning part of a hub, at a place along the axle. x along the axle to the right, y forward, z up. */
export interface HubForce {
  /** Along the axle from the left bearing, mm. */
  readonly at: number;
  /** Forward and upward, N. */
  readonly forward: number;
  readonly up: number;
}

/** What acts on a wheel. */
export interface WheelLoad {
  /** Ground force up on the tyre, N. */
  readonly vertical: number;
  /** Side force of the ground to the right, N. */
  readonly lateral: number;
  /** Forward force of the ground, N: positive drives, negative brakes. */
  readonly forward: number;
  /** Radius of the tyre where it touches, mm. */
  readonly tyreRadius: number;
  /** Wheel plane along the axle from the left bearing, mm. */
  readonly plane: number;
  /** Distance of the bearings, mm. */
  readonly span: number;
  /** Chain pull on the sprocket plane, rotor force on the rotor plane and the like. */
  readonly others: readonly HubForce[];
}

/** Loads of the two bearings, N. */
export interface HubReaction {
  /** Force of the hub on each bearing in the wheel's upright and fore-and-aft planes. */
  readonly left: { readonly forward: number; readonly up: number; readonly radial: number };
  readonly right: { readonly forward: number; readonly up: number; readonly radial: number };
  /** Axial force with its sign, to the right; one bearing takes it, the one that is stopped that way. */
  readonly axial: number;
}

/**
 * Statics of a wheel on two bearings: forces taken apart by the lever rule in each plane, an overhung force lifting
 * the far bearing (two supports as in source `ntn-2203e`, bearing loads). The side force works at the bottom of the
 * tyre and tips the wheel in the upright plane. The torque about the axle is balanced by chain or rotor and loads
 * no bearing.
 */
export function hubReaction(load: WheelLoad): HubReaction {
  const { vertical, lateral, forward, tyreRadius, plane, span, others } = load;
  const forces: readonly HubForce[] = [{ at: plane, forward, up: vertical }, ...others];
  // The side force at z = −r turns the wheel about the fore-and-aft axis; the bearings answer with a couple.
  const couple = (lateral * tyreRadius) / span;
  const rightUp = moment(forces, 'up') / span + couple;
  const leftUp = total(forces, 'up') - rightUp;
  const rightForward = moment(forces, 'forward') / span;
  const leftForward = total(forces, 'forward') - rightForward;
  return {
    left: { forward: leftForward, up: leftUp, radial: Math.hypot(leftForward, leftUp) },
    right: { forward: rightForward, up: rightUp, radial: Math.hypot(rightForward, rightUp) },
    axial: lateral,
  };
}

/** Pull of a chain, F = 2·M/D, N, for a torque (N·mm) at the hub and the sprocket's pitch diameter (mm). */
export function chainPull(torque: number, sprocket: number): number {
  return (2 * torque) / sprocket;
}

/** Force of the pads on a rotor, N, that brakes with `braking` N at the ground. */
export function rotorForce(braking: number, tyreRadius: number, rotorRadius: number): number {
  return (braking * tyreRadius) / rotorRadius;
}

function total(forces: readonly HubForce[], plane: 'forward' | 'up'): number {
  return forces.reduce((sum, force) => sum + force[plane], 0);
}

function moment(forces: readonly HubForce[], plane: 'forward' | 'up'): number {
  return forces.reduce((sum, force) => sum + force[plane] * force.at, 0);
}
