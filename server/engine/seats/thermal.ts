import { REFERENCE_TEMPERATURE } from '../base/reference-temperature.ts';

/** Two parts that fit into each other, by their linear expansion, 1/K. */
export interface ExpansionPair {
  readonly inside: number;
  readonly outside: number;
}

/**
 * Interference at other temperatures, mm: each part grows by its own expansion from 20 °C. Both parts at `inside`
 * °C unless the outside part has its own. Steel rings in aluminium loosen when warm (source `ntn-2203e`, fits).
 */
export function interferenceAt(
  interference: number,
  diameter: number,
  expansion: ExpansionPair,
  inside: number,
  outside = inside,
): number {
  const within = expansion.inside * (inside - REFERENCE_TEMPERATURE);
  const around = expansion.outside * (outside - REFERENCE_TEMPERATURE);
  return interference + diameter * (within - around);
}

/**
 * Temperature of both parts at which an interference is used up, °C: the seat lets go above it where the housing
 * grows faster than the ring, below it where it grows slower. Null where both grow alike.
 */
export function freeTemperature(
  interference: number,
  diameter: number,
  expansion: ExpansionPair,
): number | null {
  const perKelvin = diameter * (expansion.outside - expansion.inside);
  return perKelvin === 0 ? null : REFERENCE_TEMPERATURE + interference / perKelvin;
}

/** Kelvins on top of the bare expansion so that a part drops in before it cools (source `koyo-203e`: 20 to 30 K). */
export const HANDLING_ALLOWANCE = { lo: 20, hi: 30 } as const;

/**
 * Temperature difference by which the outside part must be warmer for the inside part to drop in, K, without the
 * handling allowance; the interference is that before smoothing (source `koyo-203e`, heating for fitting).
 */
export function dropInDifference(interference: number, diameter: number, expansion: number): number {
  return Math.max(0, interference) / (expansion * diameter);
}

/** Temperatures (°C) and linear expansions (1/K) of the parts of a bearing. */
export interface BearingTemperatures {
  readonly inner: number;
  readonly outer: number;
  readonly ringExpansion: number;
  readonly ballExpansion: number;
}

/**
 * Radial clearance a bearing loses by temperature, mm; negative where it gains. Rings grow at their raceways,
 * pitch ∓ ball, and balls stand midway between the rings: for steel balls this is α·ΔT·Dpw (source
 * `skf-general`, clearance), for ceramic balls evenly warm rings gain clearance.
 */
export function thermalClearanceLoss(pitch: number, ball: number, temperatures: BearingTemperatures): number {
  const inner = temperatures.inner - REFERENCE_TEMPERATURE;
  const outer = temperatures.outer - REFERENCE_TEMPERATURE;
  const { ringExpansion, ballExpansion } = temperatures;
  const raceways = ringExpansion * (outer * (pitch + ball) - inner * (pitch - ball));
  const balls = ballExpansion * (inner + outer) * ball;
  return balls - raceways;
}
