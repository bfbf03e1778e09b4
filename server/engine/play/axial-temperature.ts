import { REFERENCE_TEMPERATURE } from '../base/reference-temperature.ts';

/** A length of one material. */
export interface WarmLength {
  /** Length at 20 °C, mm. */
  readonly length: number;
  /** Linear expansion, 1/K. */
  readonly expansion: number;
}

/**
 * Mismatch of the inner against the outer distance at a temperature (°C), δ(T) = P(1 + αP·ΔT) − S(1 + αS·ΔT),
 * mm. Each distance is a sum of lengths, each of its own material; all parts at the same temperature.
 */
export function mismatchAt(
  inner: readonly WarmLength[],
  outer: readonly WarmLength[],
  temperature: number,
): number {
  return warmLength(inner, temperature) - warmLength(outer, temperature);
}

/** A sum of lengths at a temperature, mm. */
export function warmLength(lengths: readonly WarmLength[], temperature: number): number {
  const warmer = temperature - REFERENCE_TEMPERATURE;
  return lengths.reduce((sum, { length, expansion }) => sum + length * (1 + expansion * warmer), 0);
}
