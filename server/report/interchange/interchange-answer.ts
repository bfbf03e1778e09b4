import type { Analysis } from '../../analysis/analyze.ts';
import { type Exchanged, exchanged, placesOf, placesOfSize } from '../../analysis/exchange/exchanged.ts';
import type { DecodedBearing } from '../../engine/bearings/decoded-bearing.ts';
import { type Alternative, alternatives, spellings } from '../../engine/bearings/interchange.ts';
import { type NearSize, nearSizes } from '../../engine/bearings/near-sizes.ts';

/** What fits instead of a bearing, and what only looks like it. */
export interface InterchangeAnswer {
  readonly bearing: DecodedBearing;
  /** The same bearing under other names. */
  readonly spellings: readonly string[];
  readonly alternatives: readonly (Alternative & {
    /** What it does in the hub that was named; empty without one. */
    readonly inHub: readonly Exchanged[];
  })[];
  readonly near: readonly NearSize[];
  /** Where the hub that was named has this bearing, by code or by its size alone; null without a hub. */
  readonly places: { readonly byCode: readonly string[]; readonly bySize: readonly string[] } | null;
}

/** What fits instead of `bearing`; where a hub is given, what each does in the places that hold the same bearing. */
export function interchangeAnswer(bearing: DecodedBearing, hub: Analysis | null): InterchangeAnswer {
  const places = hub && {
    byCode: placesOf(hub, bearing),
    bySize: bearing.material === 'unknown' ? [] : placesOfSize(hub, bearing),
  };
  const addresses = places ? [...places.byCode, ...places.bySize] : [];
  return {
    bearing,
    spellings: spellings(bearing),
    alternatives: alternatives(bearing).map((other) => ({
      ...other,
      inHub: hub ? exchanged(hub, addresses, other.code) : [],
    })),
    near: nearSizes(bearing),
    places,
  };
}
