import type { VariantAnalysis } from '../../analysis/analyze.ts';
import type { ResolvedLimits } from '../../analysis/limits.ts';
import { type BuildsInBrief, buildsInBrief } from '../../analysis/mechanics/builds-in-brief.ts';
import type { Clamp } from '../../analysis/mechanics/clamp-of.ts';
import { type Conditions, type Temperatures, temperaturesOf } from '../../analysis/mechanics/conditions.ts';
import type { coneMechanics } from '../../analysis/mechanics/cup-cone.ts';
import { geometryRange } from '../../analysis/mechanics/geometry-range.ts';
import type { LineMechanics } from '../../analysis/mechanics/line-mechanics.ts';
import type { MountedBearing } from '../../analysis/mechanics/mounted-bearing.ts';
import { isCounted, isWorked } from '../../analysis/mechanics/pair-mechanics.ts';
import { type Ends, type PairRange, pairRange } from '../../analysis/mechanics/pair-range.ts';
import { usedUpShare } from '../../analysis/mechanics/used-up-share.ts';
import type { Workshop } from '../../spec/workshop-model.ts';
import { type FitMount, fitMount, type Range } from './fit-mount.ts';
import { mountCautions } from './mount-cautions.ts';
import { type PairMount, pairMount } from './pair-mount.ts';

/** A bearing from the bag to the wheel. Lengths in mm. */
export interface BearingMount {
  readonly address: string;
  readonly code: string;
  readonly seat: string | null;
  readonly outer: FitMount | null;
  readonly inner: FitMount | null;
  /** What a retaining compound adds to the grip of the outer ring, N; null where none is written. */
  readonly compound: MountedBearing['compound'];
  readonly free: { readonly lo: number; readonly hi: number } | null;
  /** Clearance that rings and balls lose by temperature alone; negative where they gain. */
  readonly thermalLoss: number;
  readonly mounted: Range | null;
  /** Share of many builds without any clearance, 0 to 1; null where it is not known. */
  readonly usedUp: number | null;
  /** From the mean mounted clearance. */
  readonly axial: number | null;
  /** Axial clearance where balls or grooves are estimated, with all that the estimate allows; null where they are known. */
  readonly axialRange: Ends | null;
  /** Of an angular-contact bearing, rad; its clearances then stand for that angle and are not shown. */
  readonly contactAngle: MountedBearing['contactAngle'];
}

/** The same at one end of the service temperatures, at the means. */
export interface ServiceMount {
  /** °C */
  readonly temperature: number;
  readonly bearings: readonly {
    readonly address: string;
    readonly interference: number | null;
    readonly mounted: number | null;
    readonly usedUp: number | null;
  }[];
  readonly pairs: readonly PairMount[];
}

/** A pair with what becomes of it when it is built many times; null without a clamp. */
export interface BuiltPair extends PairMount {
  /** What the pair may come to where balls or grooves are estimated; null where they are known. */
  readonly range: PairRange | null;
  readonly builds: BuildsInBrief | null;
}

/** What happens to the bearings of a variant when they are pressed in and clamped. */
export interface MountAnswer {
  readonly variant: string | null;
  readonly how: 'drawn' | 'built';
  readonly temperature: number;
  /** Inside and outside of the hub, °C, where they were asked for apart; null at one temperature. */
  readonly apart: Temperatures | null;
  readonly clamp: Clamp | null;
  readonly bearings: readonly BearingMount[];
  readonly pairs: readonly BuiltPair[];
  /** Housings with more than two bearings. */
  readonly lines: readonly LineMechanics[];
  /** A hub set by cones; null without. */
  readonly cups: ReturnType<typeof coneMechanics>;
  readonly mostPlay: number;
  readonly unworked: readonly { readonly bearings: readonly [string, string]; readonly missing: string }[];
  readonly service: readonly ServiceMount[];
  readonly assumed: readonly string[];
  readonly cautions: readonly string[];
}

/** What holds for the whole file. */
export interface MountSettings {
  readonly workshop: Workshop | null;
  readonly limits: ResolvedLimits;
  readonly conditions: Conditions;
}

/** Works the mounting of one variant out, as drawn or as built. */
export function mountAnswer(
  variant: VariantAnalysis,
  how: 'drawn' | 'built',
  { workshop, limits, conditions }: MountSettings,
): MountAnswer {
  const mechanics = variant.mechanics(how, conditions);
  const { inner, outer } = temperaturesOf(conditions);
  const warmest = limits.value('fitting-temperature');
  const bearings = mechanics.bearings.map((bearing) => bearingMount(bearing, warmest));
  const { clamp } = mechanics;
  const mostPlay = limits.value('play-clamped');
  const pairs = mechanics.pairs.filter(isWorked).map((pair) => ({
    ...pairMount(pair, clamp),
    range: pairRange(pair),
    builds: clamp && isCounted(pair) ? buildsInBrief(pair, how, mostPlay) : null,
  }));
  const unworked = mechanics.pairs.flatMap((pair, index) => {
    const loop = variant.pairs[index]?.loop;
    return isWorked(pair) || !loop ? [] : [{ bearings: loop.bearings, missing: pair.missing }];
  });
  const range = variant.assembly.hub.values.temperature?.value ?? workshop?.defaults.temperature?.value;
  const service = range
    ? [range.lo, range.hi].map((temperature) =>
        serviceMount(variant, how, { temperature, clampForce: conditions.clampForce }),
      )
    : [];
  const assumed = [
    ...mechanics.bearings.flatMap((bearing) => bearing.assumed),
    ...pairs.flatMap((pair) => pair.assumed),
    ...(mechanics.clamp?.assumed ?? []),
  ];
  const answer = {
    variant: variant.name,
    how,
    temperature: conditions.temperature,
    apart: inner === outer ? null : { inner, outer },
    clamp: mechanics.clamp,
    bearings,
    pairs,
    lines: mechanics.lines,
    cups: mechanics.cups,
    mostPlay,
    unworked,
    service,
    assumed: [...new Set(assumed)],
  };
  return { ...answer, cautions: mountCautions(answer, limits) };
}

function bearingMount(bearing: MountedBearing, warmest: number): BearingMount {
  const { address, stack, outerFit, innerFit, free, mounted, axial, contactAngle } = bearing;
  return {
    address,
    code: stack.bearing?.code ?? '',
    seat: stack.part.values.seat?.value ?? null,
    outer: outerFit ? fitMount(outerFit, bearing, warmest) : null,
    inner: innerFit ? fitMount(innerFit, bearing, warmest) : null,
    compound: bearing.compound,
    free,
    thermalLoss: bearing.thermalLoss,
    mounted,
    usedUp: usedUpShare(bearing),
    axial,
    axialRange: geometryRange(bearing)?.axial ?? null,
    contactAngle,
  };
}

function serviceMount(
  variant: VariantAnalysis,
  how: 'drawn' | 'built',
  conditions: Conditions,
): ServiceMount {
  const { clamp, bearings, pairs } = variant.mechanics(how, conditions);
  return {
    temperature: conditions.temperature,
    bearings: bearings.map((bearing) => ({
      address: bearing.address,
      interference: bearing.outerFit?.interference.mean ?? null,
      mounted: bearing.mounted?.mean ?? null,
      usedUp: usedUpShare(bearing),
    })),
    pairs: pairs.flatMap((pair) => (isWorked(pair) ? pairMount(pair, clamp) : [])),
  };
}
