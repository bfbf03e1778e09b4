import type { Interval } from '../base/interval.ts';
import { type Spread, spreadOf } from './interference-spread.ts';
import { effectiveInterference, type Finish, smoothingFactor } from './smoothing.ts';

/** One fit that takes clearance. */
export interface ClearanceTaker {
  /** Interference as made, at the temperature asked for, mm; negative is clearance. */
  readonly interference: Spread;
  /** Diameter of the seat, mm. */
  readonly diameter: number;
  readonly finish: Finish;
  /** Clearance lost per interference that works; see `lossFactor`. */
  readonly lossFactor: number;
}

/** A bearing with its two fits and its temperatures. */
export interface MountedBearing {
  /** Radial internal clearance before mounting, mm. */
  readonly clearance: Interval;
  /** Null where the ring slides or is not known. */
  readonly outer: ClearanceTaker | null;
  readonly inner: ClearanceTaker | null;
  /** Clearance that temperature takes from the bearing itself, mm; see `thermalClearanceLoss`. */
  readonly thermalLoss?: number;
}

/** Radial clearance when mounted, and what each fit took, mm. */
export interface MountedClearance {
  readonly clearance: Spread;
  readonly lossOuter: Spread;
  readonly lossInner: Spread;
}

const nothing: Spread = { least: 0, mean: 0, most: 0, sigma: 0 };

/**
 * Radial clearance as mounted, Δ = Δ0 − λi·Δd − λo·ΔD − δt: limits by direct sum, the mean at the means, sigma
 * from independent parts (source `ntn-2203e`, operating clearance; `nsk-e1102e`, fits). Sigma is that of small
 * changes about the mean: where a fit is loose at its mean it takes nothing and adds nothing.
 */
export function mountedClearance(bearing: MountedBearing): MountedClearance {
  const free = spreadOf(bearing.clearance.lo, bearing.clearance.hi);
  const lossOuter = lossSpread(bearing.outer);
  const lossInner = lossSpread(bearing.inner);
  const thermal = bearing.thermalLoss ?? 0;
  return {
    clearance: {
      least: free.least - lossOuter.most - lossInner.most - thermal,
      mean: free.mean - lossOuter.mean - lossInner.mean - thermal,
      most: free.most - lossOuter.least - lossInner.least - thermal,
      sigma: Math.hypot(free.sigma, lossOuter.sigma, lossInner.sigma),
    },
    lossOuter,
    lossInner,
  };
}

/** Clearance one fit takes: nothing where the parts are loose. */
export function lossSpread(taker: ClearanceTaker | null): Spread {
  if (!taker) return nothing;
  const { interference, diameter, finish } = taker;
  const loss = (made: number): number =>
    taker.lossFactor * Math.max(0, effectiveInterference(made, diameter, finish));
  const slope = interference.mean > 0 ? taker.lossFactor * smoothingFactor(diameter, finish) : 0;
  return {
    least: loss(interference.least),
    mean: loss(interference.mean),
    most: loss(interference.most),
    sigma: slope * interference.sigma,
  };
}
