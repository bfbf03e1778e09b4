import { giveAlong } from './rim-give.ts';
import type { SpokeSprings } from './spoke-springs.ts';
import type { WheelGive } from './wheel-stiffness.ts';

/** Readings of one side. */
export interface TensionStatistics {
  readonly count: number;
  /** N */
  readonly mean: number;
  readonly least: number;
  readonly most: number;
  /** Largest distance from the mean as a share of it. */
  readonly spread: number;
  /** Standard deviation, N; 0 for one reading. */
  readonly deviation: number;
}

/** Mean and spread of readings, N; null without readings. */
export function tensionStatistics(readings: readonly number[]): TensionStatistics | null {
  if (readings.length === 0) return null;
  const mean = readings.reduce((sum, one) => sum + one, 0) / readings.length;
  const square = readings.reduce((sum, one) => sum + (one - mean) ** 2, 0);
  const least = Math.min(...readings);
  const most = Math.max(...readings);
  return {
    count: readings.length,
    mean,
    least,
    most,
    spread: mean > 0 ? Math.max(most - mean, mean - least) / mean : 0,
    deviation: readings.length < 2 ? 0 : Math.sqrt(square / (readings.length - 1)),
  };
}

/** A spoke whose tension strays from the mean of its side. */
export interface StrayTension {
  /** Place in the list, from 0. */
  readonly at: number;
  readonly tension: number;
  /** From the mean, as a share of it. */
  readonly share: number;
  /** Turns of the nipple that would bring it to the mean: positive tightens. */
  readonly turns: number;
}

/**
 * Spokes further than `band` (a share) from the mean of their side, the furthest first, and how far to turn each.
 * `perTurn`: what one turn of one nipple adds to its own spoke with the rim giving way, N.
 */
export function strayTensions(
  readings: readonly number[],
  band: number,
  perTurn: number,
): readonly StrayTension[] {
  const mean = tensionStatistics(readings)?.mean ?? 0;
  return readings
    .map((tension, at) => ({
      at,
      tension,
      share: mean > 0 ? (tension - mean) / mean : 0,
      turns: (mean - tension) / perTurn,
    }))
    .filter(({ share }) => band < Math.abs(share))
    .sort((a, b) => Math.abs(b.share) - Math.abs(a.share) || a.at - b.at);
}

/**
 * What one turn of one nipple adds to its own spoke, N: k·P·(1 − k·give), k = EA/L. Shortening one spoke by P is a force
 * k·P on the rim there, which moves along the spoke by what it gives.
 */
export function ownTensionPerTurn(spoke: SpokeSprings, give: WheelGive, pitch: number): number {
  const k = spoke.axial / spoke.span;
  const { along } = giveAlong(spoke, give, give.ripple(spoke.side));
  // The spread bed gives a little less than single spokes do; a turn never adds nothing.
  return k * pitch * Math.max(0.05, 1 - k * along);
}
