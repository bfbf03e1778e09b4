import { type Finish, smoothingFactor } from '../seats/smoothing.ts';
import { buildColumn } from './build-columns.ts';
import type { PairSide } from './pair-side.ts';

/** One dimension that varies from build to build. */
export interface VaryingPart {
  readonly id: string;
  /** What a millimetre of it does to the sum it stands in: +1 or −1. */
  readonly weight: number;
  /** Standard deviation, mm. */
  readonly sigma: number;
  /** Dimensions of one batch stray alike in every build; without one each strays apart from all others. */
  readonly batch?: string | undefined;
}

/** A fit that varies. */
export interface VaryingFit {
  /** Mean interference as made, mm; negative is clearance. */
  readonly mean: number;
  /** The diameters that make it: a bigger inside part +1, a bigger outside part −1. */
  readonly parts: readonly VaryingPart[];
  readonly diameter: number;
  readonly finish: Finish;
  /** Clearance lost per interference that works; see `lossFactor`. */
  readonly lossFactor: number;
}

/** A bearing that varies from build to build. */
export interface VaryingSide {
  /** The side at its mean clearance: grooves, stiffness, stops and grips. */
  readonly side: PairSide;
  /** Radial clearance before mounting, mean and standard deviation, mm; of an angular bearing 2·m0·(1 − cos α). */
  readonly clearance: Omit<VaryingPart, 'weight'> & { readonly mean: number };
  readonly outer: VaryingFit | null;
  readonly inner: VaryingFit | null;
  /** Clearance that temperature takes, mm. */
  readonly thermalLoss: number;
}

/** A dimension and how it strays in every build, in standard deviations. */
export interface DrawnPart {
  readonly id: string;
  readonly batch?: string | undefined;
  readonly column: Float64Array;
}

/** How many hubs are built, and from which seed. */
export interface BuildPlan {
  readonly builds: number;
  readonly seed: number;
}

/**
 * Radial clearance as mounted in every build, mm, and the share of builds in which the outer ring is loose.
 * Each dimension takes the next free column and is added to `drawn`.
 */
export function buildClearance(
  varying: Omit<VaryingSide, 'side'>,
  drawn: DrawnPart[],
  plan: BuildPlan,
): { readonly clearance: Float64Array; readonly loose: number } {
  const { mean, ...free } = varying.clearance;
  const clearance = strayed(mean - varying.thermalLoss, [{ ...free, weight: 1 }], drawn, plan);
  let loose = 0;
  for (const fit of [varying.outer, varying.inner]) {
    if (!fit) continue;
    const interference = strayed(fit.mean, fit.parts, drawn, plan);
    const loss = fit.lossFactor * smoothingFactor(fit.diameter, fit.finish);
    let apart = 0;
    for (let i = 0; i < plan.builds; i++) {
      const made = interference[i] as number;
      if (made > 0) clearance[i] = (clearance[i] as number) - loss * made;
      else apart++;
    }
    if (fit === varying.outer) loose = apart / plan.builds;
  }
  return { clearance, loose };
}

/** A mean with every part's straying added, one entry a build. */
export function strayed(
  mean: number,
  parts: readonly VaryingPart[],
  drawn: DrawnPart[],
  { builds, seed }: BuildPlan,
): Float64Array {
  const values = new Float64Array(builds).fill(mean);
  for (const { id, weight, sigma, batch } of parts) {
    const scale = weight * sigma;
    if (scale === 0) continue;
    const alike = batch === undefined ? undefined : drawn.find((part) => part.batch === batch);
    const column = alike?.column ?? buildColumn(drawn.length, builds, seed);
    if (!alike) drawn.push({ id, batch, column });
    for (let i = 0; i < builds; i++) values[i] = (values[i] as number) + scale * (column[i] as number);
  }
  return values;
}
