import type { FilledHousing } from '../../assembly/housings.ts';
import type { PairLoop } from '../../assembly/loop.ts';
import type { Workshop } from '../../spec/workshop-model.ts';
import { materialOf } from './material-of.ts';
import type { Stretches } from './squeezed-between.ts';

/** The housing between what holds two outer rings apart, which gives way when the balls push. */
export function housingBetween(
  { housing }: FilledHousing,
  loop: PairLoop,
  workshop: Workshop | null,
): Stretches {
  // Outer rings that touch have no housing between them.
  if (loop.located === 'side-by-side') return { stretches: [], lengths: [], assumed: [] };
  const { outside, through, material } = housing.values;
  const found = materialOf(`the ${housing.name}`, material, 'aluminium 6061-T6', workshop);
  // A ring that only the spacer locates stands where the spacer ends.
  const chain = loop.located === 'spacer' ? loop.inner : loop.outer;
  const sum = chain.reduce((far, { sign, count, settled }) => far + sign * count * settled.drawn.nominal, 0);
  const length = Math.max(0, sum);
  const lengths = [{ length, expansion: found.expansion }];
  if (!outside || !through || length <= 0) {
    const rigid = `the ${housing.name} taken as rigid along the axle: outside or through is not written`;
    return { stretches: [], lengths, assumed: [rigid] };
  }
  const stretch = { length, outer: outside.value.nominal, inner: through.value.nominal, E: found.E };
  return { stretches: [stretch], lengths, assumed: found.assumed ? [found.assumed] : [] };
}
