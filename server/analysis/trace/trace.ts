import type { GapLoop } from '../../assembly/loop.ts';
import { defaultLimits } from '../../engine/tables/limits.ts';
import type { VariantAnalysis } from '../analyze.ts';
import type { LoopAnalysis } from '../close.ts';
import { isConeWorked } from '../mechanics/cup-cone.ts';
import { isCounted, isWorked, type PairMechanics } from '../mechanics/pair-mechanics.ts';
import { traceBearing } from './trace-bearing.ts';
import { traceBuilds } from './trace-builds.ts';
import { traceCones } from './trace-cones.ts';
import { traceFit } from './trace-fit.ts';
import { traceLoop } from './trace-loop.ts';
import { tracePair } from './trace-pair.ts';
import { input, step, type TraceStep } from './trace-step.ts';

/**
 * Where the numbers at one address come from, first link first: a bearing, a seat, `axle`, `clamp`, `width`, a
 * dimension of the stack, the builds of a pair as `builds.shell`, or a gap as `gap.shell.freehub`. Null where nothing
 * is worked out there. `mostPlay` is the limit that builds are counted against, mm.
 */
export function trace(
  variant: VariantAnalysis,
  address: string,
  how: 'drawn' | 'built',
  mostPlay: number = defaultLimits['play-clamped'].value,
): readonly TraceStep[] | null {
  const { bearings, clamp, cups } = variant.mechanics(how);
  const pair = builtPairs(variant, how).get(address);
  if (pair) return traceBuilds(pair, how, mostPlay);
  const gap = variant.gaps.find(({ loop }) => gapAddress(loop) === address);
  if (gap) return some(ofLoop(gap, gapName(gap.loop), 'sum of the chain between the two faces', how));
  if (isConeWorked(cups) && cups.cones.some(({ part }) => part.address === address)) return traceCones(cups);
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
    return some([
      ...seated.flatMap((item) => (item.outerFit ? traceFit(item, item.outerFit, how) : [])),
      ...variant.seats
        .filter(({ loop }) => loop.seat === address)
        .flatMap((seat) => ofLoop(seat, `recess in ${address}`, 'depth − widths of the rings', how)),
    ]);
  }
  return ofDimension(variant, address, how);
}

/** Every address that `trace` answers to in this variant. */
export function tracedAddresses(variant: VariantAnalysis): readonly string[] {
  const loops = [variant.width, ...variant.pairs].flatMap(({ loop }) => loop.terms);
  const { bearings, clamp, cups } = variant.mechanics();
  return [
    ...new Set([
      ...(variant.width.drawn && variant.width.loop.terms.length > 0 ? ['width'] : []),
      ...(clamp ? ['clamp'] : []),
      ...(bearings.some(({ innerFit }) => innerFit) ? ['axle'] : []),
      ...bearings.map((bearing) => bearing.address),
      ...(isConeWorked(cups) ? cups.cones.map(({ part }) => part.address) : []),
      ...bearings.flatMap(({ stack }) => stack.part.values.seat?.value ?? []),
      ...loops.map((item) => item.address),
      ...variant.pairs.flatMap(({ loop }) => loop.setBy?.part.address ?? []),
      ...builtPairs(variant, 'drawn').keys(),
      ...variant.gaps.filter(({ drawn }) => drawn).map(({ loop }) => gapAddress(loop)),
    ]),
  ];
}

function ofDimension(variant: VariantAnalysis, address: string, how: 'drawn' | 'built') {
  const { pairs, clamp } = variant.mechanics(how);
  const has = (terms: readonly { readonly address: string }[]): boolean =>
    terms.some((item) => item.address === address);
  const steps = variant.pairs.flatMap(({ loop, drawn, built }, index) => {
    if (!has(loop.terms) && loop.setBy?.part.address !== address) return [];
    const name = `inner less outer distance of ${loop.bearings.join(' and ')}`;
    const delta = traceLoop(name, 'δ = P − S', loop, how === 'built' ? (built ?? drawn) : drawn, how);
    const pair = pairs[index];
    if (!pair || !isWorked(pair)) return delta;
    const axial = [pair.left, pair.right].flatMap((bearing) => traceBearing(bearing, how).slice(-1));
    return [...delta, ...axial, ...tracePair(pair, clamp)];
  });
  return some(has(variant.width.loop.terms) ? [...ofWidth(variant, how), ...steps] : steps);
}

/** The clamped pairs that can be built many times, by address; the second pair of a housing has a number. */
function builtPairs(variant: VariantAnalysis, how: 'drawn' | 'built'): ReadonlyMap<string, PairMechanics> {
  const { clamp, pairs } = variant.mechanics(how);
  const found = new Map<string, PairMechanics>();
  for (const pair of clamp ? pairs.filter(isWorked).filter(isCounted) : []) {
    const name = `builds.${pair.loop.housing}`;
    let number = 2;
    let address = name;
    while (found.has(address)) address = `${name}.${number++}`;
    found.set(address, pair);
  }
  return found;
}

const gapAddress = ({ between }: GapLoop): string => `gap.${between.join('.')}`;
const gapName = ({ between: [one, other] }: GapLoop): string => `gap ${one} to ${other}`;

function ofLoop({ loop, drawn, built }: LoopAnalysis, name: string, formula: string, how: 'drawn' | 'built') {
  return traceLoop(name, formula, loop, how === 'built' ? (built ?? drawn) : drawn, how);
}

function ofWidth({ width }: VariantAnalysis, how: 'drawn' | 'built'): readonly TraceStep[] {
  const closed = how === 'built' ? (width.built ?? width.drawn) : width.drawn;
  return traceLoop('clamped width', 'sum of the clamped line', width.loop, closed, how);
}

const some = (steps: readonly TraceStep[]): readonly TraceStep[] | null => (steps.length > 0 ? steps : null);
