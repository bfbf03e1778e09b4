import type { RingFit } from '../analysis/mechanics/mounted-bearing.ts';
import { type RangedValue, slidingForce } from '../engine/seats/mounting-force.ts';
import { pressureFactor } from '../engine/seats/press-fit.ts';
import { effectiveInterference } from '../engine/seats/smoothing.ts';
import { dropInDifference, HANDLING_ALLOWANCE } from '../engine/seats/thermal.ts';
import type { Warming } from './step.ts';

/**
 * Force that moves a ring along its seat at 20 °C, N: least for the loosest build oiled, typical for the mean one,
 * most for the tightest dry. `width` is the length of contact, mm.
 */
export function pressForce(fit: RingFit, width: number): RangedValue {
  const { seat, taker, made } = fit;
  const perMillimetre = pressureFactor(seat);
  const force = (interference: number): RangedValue =>
    slidingForce({
      pressure: Math.max(0, effectiveInterference(interference, seat.diameter, taker.finish)) * perMillimetre,
      diameter: seat.diameter,
      length: width,
    });
  return { least: force(made.least).least, typical: force(made.mean).typical, most: force(made.most).most };
}

/** What no workshop's own limit may exceed: a sealed bearing or a bonded shell, °C (`common practice`). */
const neverWarmer = 80;

/** How warm to make the housing for the ring to drop in; `warmest` is what the bearing and the shell stand, °C. */
export function warmingFor(fit: RingFit, warmest: number): Warming | null {
  if (fit.seat.ring !== 'outer' || fit.made.most <= 0) return null;
  const limit = Math.min(warmest, neverWarmer);
  const difference = dropInDifference(fit.made.most, fit.seat.diameter, fit.expansion.outside);
  const wanted = 20 + difference + HANDLING_ALLOWANCE.lo;
  return { to: Math.min(wanted, limit), dropsIn: wanted <= limit };
}
