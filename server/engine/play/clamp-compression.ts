/** A stretch of a clamped or loaded part with one cross-section. */
export interface Stretch {
  /** Length along the axle, mm. */
  readonly length: number;
  /** Outside and inside diameter, mm. */
  readonly outer: number;
  readonly inner: number;
  /** Modulus of elasticity, MPa. */
  readonly E: number;
}

/** Shortening per newton of stretches that carry the same force, Σ L/(E·A), mm/N. */
export function compliance(stretches: readonly Stretch[]): number {
  return stretches.reduce((sum, stretch) => sum + stretch.length / (stretch.E * area(stretch)), 0);
}

/** Area of a stretch, mm². */
export function area({ outer, inner }: Stretch): number {
  return (Math.PI / 4) * (outer * outer - inner * inner);
}

/** Mean stress of the weakest stretch under a force, MPa; 0 without stretches. */
export function greatestStress(stretches: readonly Stretch[], force: number): number {
  return stretches.reduce((most, stretch) => Math.max(most, Math.abs(force) / area(stretch)), 0);
}

/** A clamp tightened by a torque. */
export interface ClampTorque {
  /** N·mm */
  readonly torque: number;
  /** Outside diameter and pitch of the thread, mm. */
  readonly thread: number;
  readonly pitch: number;
  readonly threadFriction: number;
  readonly headFriction: number;
}

/** Mean radius on which the head rubs, over the thread diameter: convention of this engine. */
const HEAD_RADIUS = 0.65;
/** Half of the flank angle of metric threads, rad. */
const HALF_FLANK = Math.PI / 6;

/**
 * Clamp force of a torque, N: T = F·[P/2π + µ·d2/(2·cos 30°) + µh·0.65·d], the torque equation of a 60° thread
 * (ISO 16047 in its long form; from memory). d2 = d − 0.6495·P. Friction decides: a tenth more of it is about a
 * tenth less force.
 */
export function clampForce({ torque, thread, pitch, threadFriction, headFriction }: ClampTorque): number {
  const flank = thread - 0.6495 * pitch;
  const lever =
    pitch / (2 * Math.PI) +
    (threadFriction * flank) / (2 * Math.cos(HALF_FLANK)) +
    headFriction * HEAD_RADIUS * thread;
  return torque / lever;
}
