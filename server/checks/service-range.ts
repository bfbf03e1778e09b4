import type { Analysis, VariantAnalysis } from '../analysis/analyze.ts';
import type { Related } from './check.ts';

/** Temperatures a hub is ridden at, °C. */
export interface ServiceRange {
  readonly lo: number;
  readonly hi: number;
  /** Where it is written, when it stands in the hub file. */
  readonly related: readonly Related[];
  /** `, the workshop's own range`, where the hub writes none. */
  readonly said: string;
}

/** The service range of a hub: its own, else that of the workshop; null where nobody says, and nothing is judged by it. */
export function serviceRange({ workshop }: Analysis, variant: VariantAnalysis): ServiceRange | null {
  const own = variant.assembly.hub.values.temperature;
  const placed = own ?? workshop?.defaults.temperature;
  if (!placed) return null;
  const { lo, hi, written } = placed.value;
  return {
    lo,
    hi,
    related: own ? [{ path: own.path, message: `service range ${written}` }] : [],
    said: own ? '' : `, the workshop’s range ${written}`,
  };
}

/** `−10 °C` */
export function celsius(value: number): string {
  return `${String(Number(value.toFixed(0))).replace('-', '−')} °C`;
}
