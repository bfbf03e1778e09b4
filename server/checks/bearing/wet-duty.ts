import type { VariantAnalysis } from '../../analysis/analyze.ts';
import type { DutyValues } from '../../spec/model.ts';
import type { Placed } from '../../spec/place.ts';

/** `duty: { water: rain | mud }`, where it is written: the hub meets water. */
export function wetDuty(variant: VariantAnalysis): Placed<DutyValues['water']> | null {
  const water = variant.assembly.hub.duty?.values.water;
  return water && water.value !== 'dry' ? water : null;
}
