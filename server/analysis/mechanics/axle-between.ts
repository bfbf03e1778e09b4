import type { Assembly } from '../../assembly/assemble.ts';
import type { WarmLength } from '../../engine/play/axial-temperature.ts';
import type { Workshop } from '../../spec/workshop-model.ts';
import { materialOf } from './material-of.ts';
import type { Squeezed, Stretches } from './squeezed-between.ts';

/** The axle under two inner rings that nothing holds apart: the clamp goes through it and shortens it. */
export function axleBetween(
  { hub, bearings }: Assembly,
  outer: readonly WarmLength[],
  workshop: Workshop | null,
): Stretches<Squeezed> {
  const written = hub.axle?.values;
  const material = materialOf('the axle', written?.material, 'aluminium 7075-T6', workshop);
  const length = outer.reduce((sum, part) => sum + part.length, 0);
  const diameter = written?.diameter?.value.nominal ?? bearings.find(({ bearing }) => bearing)?.bearing?.bore;
  const lengths = [{ length, expansion: material.expansion }];
  const said = material.assumed ? [material.assumed] : [];
  if (!diameter || length <= 0) return { stretches: [], lengths, assumed: said };
  const inner = written?.bore?.value.nominal ?? 0;
  const solid = written?.bore ? [] : ['the axle taken as solid: its bore is not written'];
  return {
    stretches: [{ address: 'axle', length, outer: diameter, inner, E: material.E, yield: material.yield }],
    lengths,
    assumed: [...said, ...solid, 'the clamp taken to go through the axle under the bearings'],
  };
}
