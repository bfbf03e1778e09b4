/** A value with the range it comes in. */
export interface RangedValue {
  readonly least: number;
  readonly typical: number;
  readonly most: number;
}

/**
 * Friction between ring and seat when pressed: 0.12 on the way in (source `ntn-2203e`, mounting force), from 0.08
 * to 0.18 between oiled and dry; for light alloy no source gives a value and the steel one is used.
 */
export const PRESS_FRICTION: RangedValue = { least: 0.08, typical: 0.12, most: 0.18 };

/** A pressed face. */
export interface PressedFace {
  /** Pressure at the seat, MPa. */
  readonly pressure: number;
  /** Diameter of the seat, mm. */
  readonly diameter: number;
  /** Length of contact along the axle, mm. */
  readonly length: number;
}

/** Force that slides a ring along its seat, F = µ·p·π·d·B, N (source `ntn-2203e`): to mount it, or what its grip holds. */
export function slidingForce(face: PressedFace, friction = PRESS_FRICTION): RangedValue {
  const normal = face.pressure * Math.PI * face.diameter * face.length;
  return {
    least: friction.least * normal,
    typical: friction.typical * normal,
    most: friction.most * normal,
  };
}

/** Force that shears a cured retaining compound off its face, N; `strength` in MPa is the user's own. */
export function compoundForce(strength: number, diameter: number, length: number): number {
  return strength * Math.PI * diameter * length;
}
