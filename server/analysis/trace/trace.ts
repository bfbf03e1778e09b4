import type { VariantAnalysis } from '../analyze.ts';
import { isWorked } from '../mechanics/pair-mechanics.ts';
import { traceBearing } from './trace-bearing.ts';
import { traceFit } from './trace-fit.ts';
import { traceLoop } from './trace-loop.ts';
import { tracePair } from './trace-pair.ts';
import { input, step, type TraceStep } from './trace-step.ts';

/**
 * Where the numbers at one address come from, first link first: a bearing, a seat, `axle`, `clamp`, `width`, or a
 * dimension of the stack. Null where nothing is worked out there.
 */
export function trace(
  variant: VariantAnalysis,
  address: string,
  how: 'drawn' | 'built',
): readonly TraceStep[] | null {
  const { bearings, clamp } = variant.mechanics(how);
  const bearing = bearings.find((item) => item.address === address);
  if (bearing) return traceBearing(bearing, how);
  if (address === 'width') return some(ofWidth(variant, how));
  if (address === 'clamp') {
    return clamp ? [step(input('clamp force', clamp.force, 'N'), null, null, [], clamp.assumed)] : null;
  }
  if (address === 'axle') {
    return some(bearings.flatMap((item) => (item.innerFit ? traceFit(item, item.innerFit, how) : [])));
  }
  const seated = bearings.filter(({ stack }) => stack.part.values.seat?.value === address);
  if (seated.length > 0) {
    return some(seated.flatMap((item) => (item.outerFit ? traceFit(item, item.outerFit, how) : [])));
  }
  return ofDimension(variant, address, how);
}

/** Every address that `trace` answers to in this variant. */
export function tracedAddresses(variant: VariantAnalysis): readonly string[] {
  const loops = [variant.width, ...variant.pairs].flatMap(({ loop }) => loop.terms);
  const { bearings, clamp } = variant.mechanics();
  return [
    ...new Set([
      ...(variant.width.drawn && variant.width.loop.terms.length > 0 ? ['width'] : []),
      ...(clamp ? ['clamp'] : []),
      ...(bearings.some(({ innerFit }) => innerFit) ? ['axle'] : []),
      ...bearings.map((bearing) => bearing.address),
      ...bearings.flatMap(({ stack }) => stack.part.values.seat?.value ?? []),
      ...loops.map((item) => item.address),
    ]),
  ];
}

function ofDimension(variant: VariantAnalysis, address: string, how: 'drawn' | 'built') {
  const { pairs, clamp } = variant.mechanics(how);
  const has = (terms: readonly { readonly address: string }[]): boolean =>
    terms.some((item) => item.address === address);
  const steps = variant.pairs.flatMap(({ loop, drawn, built }, index) => {
    if (!has(loop.terms)) return [];
    const name = `inner less outer distance of ${loop.bearings.join(' and ')}`;
    const delta = traceLoop(name, 'δ = P − S', loop, how === 'built' ? (built ?? drawn) : drawn, how);
    const pair = pairs[index];
    if (!pair || !isWorked(pair)) return delta;
    const axial = [pair.left, pair.right].flatMap((bearing) => traceBearing(bearing, how).slice(-1));
    return [...delta, ...axial, ...tracePair(pair, clamp)];
  });
  return some(has(variant.width.loop.terms) ? [...ofWidth(variant, how), ...steps] : steps);
}

function ofWidth({ width }: VariantAnalysis, how: 'drawn' | 'built'): readonly TraceStep[] {
  const closed = how === 'built' ? (width.built ?? width.drawn) : width.drawn;
  return traceLoop('clamped width', 'sum of the clamped line', width.loop, closed, how);
}

const some = (steps: readonly TraceStep[]): readonly TraceStep[] | null => (steps.length > 0 ? steps : null);
