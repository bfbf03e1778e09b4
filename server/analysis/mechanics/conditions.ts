/** Under what a hub is looked at. */
export interface Conditions {
  /** Of the whole hub, °C. */
  readonly temperature: number;
  /** Clamp force in place of the written one, N; null takes what the file or the workshop says. */
  readonly clampForce: number | null;
}

/** The bench: 20 °C and the written clamp. */
export const bench: Conditions = { temperature: 20, clampForce: null };
