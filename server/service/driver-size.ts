import type { BearingSection } from '../assembly/section-shape.ts';
import type { Workshop } from '../spec/workshop-model.ts';

/** A diameter to make, with what it may stray, mm. */
export interface ToMake {
  readonly nominal: number;
  readonly lower: number;
  readonly upper: number;
}

/** The driver a ring is pushed with: what to make, and what an existing one must keep to. mm */
export interface DriverSize {
  readonly outside: ToMake;
  readonly inside: ToMake;
  /** Limits within which a driver on the wall bears on the right ring and nothing else. */
  readonly accepted: {
    readonly outside: { readonly lo: number; readonly hi: number };
    readonly inside: { readonly lo: number; readonly hi: number };
  };
}

/** By how much a driver may reach over the shoulder of the outer ring, mm on the diameter: closures lie deeper. */
const overhang = 0.2;

/** Room a driver keeps to the bore it goes into and the axle it goes over, mm on the diameter. */
const room = 0.05;

/**
 * The driver for a ring of a d × D bearing (`common practice`, workshop notes on fitting): for the outer ring 0.3 under
 * D, hollow from D − 0.2·(D − d) so that it clears seal and inner ring; for the inner ring 0.1 over d, up to
 * d + 0.2·(D − d); for both a plate from the one to the other. A driver on the wall will do where it bears on at
 * least half of the flat of its ring and stays off the other.
 */
export function driverSize(ring: 'outer' | 'inner' | 'both', bearing: BearingSection): DriverSize {
  const d = bearing.inner.inside;
  const D = bearing.outer.outside;
  const land = 0.2 * (D - d);
  const outerFlat = (D - 2 * bearing.chamfer - bearing.outer.inside) / 2;
  const innerFlat = (bearing.inner.outside - d - 2 * bearing.chamfer) / 2;
  const entering = { nominal: D - 0.3, lower: -0.1, upper: 0 };
  const over = { nominal: d + 0.1, lower: 0, upper: 0.1 };
  if (ring === 'outer')
    return {
      outside: entering,
      inside: { nominal: D - land, lower: 0, upper: 0.1 },
      accepted: {
        outside: { lo: bearing.outer.inside + outerFlat, hi: D - room },
        inside: { lo: bearing.outer.inside - overhang, hi: D - 2 * bearing.chamfer - outerFlat },
      },
    };
  if (ring === 'inner')
    return {
      outside: { nominal: d + land, lower: -0.1, upper: 0 },
      inside: over,
      accepted: {
        outside: { lo: d + 2 * bearing.chamfer + innerFlat, hi: bearing.inner.outside },
        inside: { lo: d + room, hi: bearing.inner.outside - innerFlat },
      },
    };
  return {
    outside: entering,
    inside: over,
    accepted: {
      outside: { lo: bearing.outer.inside + outerFlat, hi: D - room },
      inside: { lo: d + room, hi: bearing.inner.outside - innerFlat },
    },
  };
}

/** Names of the drivers on the wall that will do; null where the workshop has none written. */
export function driversOnWall(size: DriverSize, workshop: Workshop | null): readonly string[] | null {
  if (!workshop || workshop.drivers.length === 0) return null;
  const { outside, inside } = size.accepted;
  return workshop.drivers.flatMap(({ values }) => {
    const [out, hollow] = [values.outside?.value.nominal, values.inside?.value.nominal ?? 0];
    if (out === undefined) return [];
    const fits = outside.lo <= out && out <= outside.hi && inside.lo <= hollow && hollow <= inside.hi;
    return fits ? [values.name?.value ?? `driver ${out}`] : [];
  });
}
