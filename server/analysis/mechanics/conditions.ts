/** Under what a hub is looked at. */
export interface Conditions {
  /** Of the whole hub, °C, as far as nothing else is said of its inside or its outside. */
  readonly temperature: number;
  /** Of the axle and everything on it, inner rings included, °C; `temperature` where it is left out. */
  readonly inner?: number;
  /** Of the housings and the outer rings in them, °C; `temperature` where it is left out. */
  readonly outer?: number;
  /** Clamp force in place of the written one, N; null takes what the file or the workshop says. */
  readonly clampForce: number | null;
}

/** The bench: 20 °C and the written clamp. */
export const bench: Conditions = { temperature: 20, clampForce: null };

/** Temperatures of the inside and the outside of a hub, °C. */
export interface Temperatures {
  /** Axle, parts on it and inner rings. */
  readonly inner: number;
  /** Housings and outer rings. */
  readonly outer: number;
}

/** The inside and the outside of a hub under given conditions; balls stand midway between. */
export function temperaturesOf({ temperature, inner, outer }: Conditions): Temperatures {
  return { inner: inner ?? temperature, outer: outer ?? temperature };
}
