import type { MountedBearing, RingFit } from '../../analysis/mechanics/mounted-bearing.ts';
import type { RangedValue } from '../../engine/seats/mounting-force.ts';
import { pressFit, pressureFactor } from '../../engine/seats/press-fit.ts';
import { dropInDifference, freeTemperature, HANDLING_ALLOWANCE } from '../../engine/seats/thermal.ts';
import { pressForce } from '../../service/press-force.ts';

/** Least, mean and greatest of many builds. */
export interface Range {
  readonly least: number;
  readonly mean: number;
  readonly most: number;
}

/** What it takes to bring a ring onto its place by heat alone. */
export interface Warming {
  /** The outside part warmer than the inside one, for the tightest build, K. */
  readonly difference: number;
  /** Temperature to warm it to from 20 °C, with what handling takes, °C. */
  readonly to: number;
  readonly part: 'housing' | 'inner ring';
  /** False where that is warmer than a sealed bearing or a bonded shell may get. */
  readonly possible: boolean;
}

/** One ring on its seat or on the axle, as the press and the fingers meet it. Lengths in mm. */
export interface FitMount {
  readonly ring: 'outer' | 'inner';
  /** At 20 °C, before smoothing. */
  readonly made: Range;
  /** At the temperature asked for, after smoothing; negative is clearance. */
  readonly interference: Range;
  /** MPa */
  readonly pressure: Range;
  readonly clearanceLoss: Range;
  /** At the mean interference, MPa; a solid axle has no bore to tell of. */
  readonly wallHoop: number;
  readonly ringHoop: number;
  /** Of the seat's wall or of the axle in the loosest, the mean and the tightest build, MPa. */
  readonly wallHoopRange: Range;
  /** MPa; null where the material has none in the table. */
  readonly wallYield: number | null;
  /** To press the ring in at 20 °C, N: slippery and loosest, usual and mean, dry and tightest. */
  readonly pressForce: RangedValue;
  /** At which the mean interference is used up, °C; null where there is none, or where it never is. */
  readonly freeAt: number | null;
  /** The same of the loosest and the tightest build, °C; null where the loosest has no interference. */
  readonly freeAtRange: readonly [number, number] | null;
  /** Null where the tightest build goes on by hand. */
  readonly warming: Warming | null;
}

/** Works one fit out for the bench. `warmest` is what a sealed bearing or a bonded shell stands, °C. */
export function fitMount(fit: RingFit, bearing: MountedBearing, warmest: number): FitMount {
  const { seat, taker, made, expansion, wallYield } = fit;
  const perMillimetre = pressureFactor(seat);
  const eachOf = (values: Range, of: (value: number) => number): Range => ({
    least: of(values.least),
    mean: of(values.mean),
    most: of(values.most),
  });
  const pressureOf = (interference: number): number => Math.max(0, interference) * perMillimetre;
  const freeAt = (interference: number): number | null =>
    interference > 0 ? freeTemperature(interference, seat.diameter, expansion) : null;
  const [least, most] = [freeAt(made.least), freeAt(made.most)];
  return {
    ring: seat.ring,
    made: eachOf(made, (value) => value),
    interference: eachOf(fit.interference, (value) => value),
    pressure: eachOf(fit.interference, pressureOf),
    clearanceLoss: eachOf(fit.interference, (value) => Math.max(0, value) * taker.lossFactor),
    wallHoop: fit.fit.wallHoop,
    ringHoop: fit.fit.ringHoop,
    wallHoopRange: eachOf(fit.interference, (value) => pressFit(seat, value).wallHoop),
    wallYield,
    pressForce: pressForce(fit, bearing.width),
    freeAt: freeAt(made.mean),
    freeAtRange: least === null || most === null ? null : [least, most],
    warming: warmingOf(made.most, seat.diameter, seat.ring, expansion.outside, warmest),
  };
}

function warmingOf(
  tightest: number,
  diameter: number,
  ring: FitMount['ring'],
  expansion: number,
  warmest: number,
): Warming | null {
  if (tightest <= 0) return null;
  const difference = dropInDifference(tightest, diameter, expansion);
  const to = 20 + difference + HANDLING_ALLOWANCE.lo;
  return { difference, to, part: ring === 'outer' ? 'housing' : 'inner ring', possible: to <= warmest };
}
