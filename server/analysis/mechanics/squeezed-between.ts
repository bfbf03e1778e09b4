import type { Assembly } from '../../assembly/assemble.ts';
import type { LinePart } from '../../assembly/line.ts';
import type { LoopTerm } from '../../assembly/loop.ts';
import type { WarmLength } from '../../engine/play/axial-temperature.ts';
import type { Stretch } from '../../engine/play/clamp-compression.ts';
import { materials } from '../../engine/tables/materials.ts';
import type { Workshop } from '../../spec/workshop-model.ts';
import { materialOf } from './material-of.ts';

/** A part between the inner rings with its cross-section. */
export interface Squeezed extends Stretch {
  readonly address: string;
  /** MPa; null where no table has it. */
  readonly yield: number | null;
}

/** Stretches along the axle that give way, and every length that temperature changes. */
export interface Stretches<S extends Stretch = Stretch> {
  readonly stretches: readonly S[];
  readonly lengths: readonly WarmLength[];
  readonly assumed: readonly string[];
}

/** Everything between two inner rings, as it is squeezed by the clamp; a ring among them only grows with temperature. */
export function squeezedBetween(
  assembly: Assembly,
  inner: readonly LoopTerm[],
  workshop: Workshop | null,
): Stretches<Squeezed> {
  const assumed: string[] = [];
  const lengths: WarmLength[] = [];
  const stretches = inner.flatMap((item): readonly Squeezed[] => {
    const part = assembly.line.find(({ address }) => address === item.address);
    if (!part) return [];
    const length = item.count * item.settled.drawn.nominal;
    if (part.part.kind === 'bearing') {
      lengths.push({ length: item.sign * length, expansion: materials['bearing steel'].expansion });
      return [];
    }
    if (item.key !== 'length') return [];
    const { outer, inner: inside, said } = crossSection(part, assembly);
    const isCollar = part.part.kind === 'collar';
    const written = isCollar ? assembly.hub.axle?.values.material : part.part.values.material;
    const material = materialOf(part.address, written, 'aluminium 6061-T6', workshop);
    assumed.push(...said, ...(material.assumed ? [material.assumed] : []));
    lengths.push({ length, expansion: material.expansion });
    return [{ address: item.address, length, outer, inner: inside, E: material.E, yield: material.yield }];
  });
  return { stretches, lengths, assumed };
}

/** Diameters of a part between the rings: written, else the inner ring's shoulder and bore. */
function crossSection(
  part: LinePart,
  assembly: Assembly,
): { outer: number; inner: number; said: readonly string[] } {
  const { outside, inside } = part.part.values;
  const ring = assembly.bearings.find(({ bearing }) => bearing);
  const axle = assembly.hub.axle?.values;
  const outer = outside?.value.nominal ?? ring?.innerOutside?.value ?? 0;
  const bore = part.part.kind === 'collar' ? axle?.bore : inside;
  const inner = bore?.value.nominal ?? axle?.diameter?.value.nominal ?? ring?.bearing?.bore ?? 0;
  const said = [
    ...(outside
      ? []
      : [`outside of ${part.address} taken as the inner ring's shoulder, ${outer.toFixed(1)} mm`]),
    ...(bore ? [] : [`inside of ${part.address} taken as ${inner.toFixed(1)} mm`]),
  ];
  return { outer, inner, said };
}
