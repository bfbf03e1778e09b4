import { type Assembly, type AssemblyLimits, assemble, type Unchecked } from '../assembly/assemble.ts';
import type { GapLoop, PairLoop, SeatLoop, WidthLoop } from '../assembly/loop.ts';
import { resolveVariants } from '../assembly/variants.ts';
import type { SpecDocument } from '../spec/document.ts';
import type { Workshop } from '../spec/workshop-model.ts';
import { close, type LoopAnalysis, type StatisticsRules } from './close.ts';
import { type ResolvedLimits, resolveLimits } from './limits.ts';
import { bench, type Conditions, temperaturesOf } from './mechanics/conditions.ts';
import { type Mechanics, mechanicsOf } from './mechanics/mechanics-of.ts';
import { mergeWorkshops } from './merge-workshops.ts';
import { uncheckedOf } from './unchecked.ts';
import { analyzeWheel, type WheelAnalysis } from './wheel/analyze-wheel.ts';

/** One variant worked out. The hub as written comes first, its name is null. */
export interface VariantAnalysis {
  readonly name: string | null;
  readonly assembly: Assembly;
  readonly width: LoopAnalysis<WidthLoop>;
  readonly pairs: readonly LoopAnalysis<PairLoop>[];
  readonly seats: readonly LoopAnalysis<SeatLoop>[];
  readonly gaps: readonly LoopAnalysis<GapLoop>[];
  readonly unchecked: readonly Unchecked[];
  /** Fits, clearance, play and load; as built where `how` says so. Worked out when first asked, then kept. */
  readonly mechanics: (how?: 'drawn' | 'built', conditions?: Conditions) => Mechanics;
}

/** A reference from this file to another, as far as it could be followed. */
export interface FollowedReference {
  readonly path: readonly (string | number)[];
  readonly written: string;
  readonly state:
    | { readonly kind: 'found'; readonly file: string; readonly document: SpecDocument }
    | { readonly kind: 'not-found'; readonly near: readonly string[] }
    | { readonly kind: 'outside-workspace' }
    | { readonly kind: 'circular'; readonly through: readonly string[] }
    | { readonly kind: 'wrong-kind'; readonly wanted: 'hub' };
}

/** What stands around a file: its workshop and the files it names. */
export interface Surroundings {
  /** Workshop files beside and above, nearest first. */
  readonly workshops: readonly { readonly file: string; readonly document: SpecDocument }[];
  readonly references: readonly FollowedReference[];
}

/** Everything that is known of one file; immutable. Every feature reads this and nothing else. */
export interface Analysis {
  readonly spec: SpecDocument;
  readonly workshop: Workshop | null;
  readonly surroundings: Surroundings;
  readonly limits: ResolvedLimits;
  /** Empty for a file that is no hub. */
  readonly variants: readonly VariantAnalysis[];
  /** The wheel joined with its hub, for a wheel file. Worked out when first asked, then kept; null for other files. */
  readonly wheel: () => WheelAnalysis | null;
}

const statistics: StatisticsRules = { builds: 20_000, seed: 1 };

/** Works a file out: each variant is assembled and its loops are closed. Never throws on what a user wrote. */
export function analyze(spec: SpecDocument, surroundings: Surroundings): Analysis {
  const around = surroundings.workshops.flatMap(({ document }) => document.workshop ?? []);
  const workshop = mergeWorkshops(spec.workshop ? [spec.workshop, ...around] : around);
  const limits = resolveLimits(workshop);
  const variants = spec.hub ? resolveVariants(spec.hub) : [];
  const assemblyLimits: AssemblyLimits = {
    measuring: limits.value('measuring'),
    widthTolerance: limits.value('width-tolerance'),
    runningGap: limits.value('running-gap'),
  };
  return {
    spec,
    workshop,
    surroundings,
    limits,
    variants: variants.map((hub) => {
      const assembly = assemble(hub, workshop, assemblyLimits);
      const width = close(assembly.width, statistics);
      const pairs = assembly.pairs.map((loop) => close(loop, statistics));
      const seats = assembly.seats.map((loop) => close(loop, statistics));
      const gaps = assembly.gaps.map((loop) => close(loop, statistics));
      const worked = { name: hub.name, assembly, width, pairs, seats, gaps };
      return { ...worked, unchecked: uncheckedOf(worked), mechanics: keptMechanics(worked, workshop) };
    }),
    wheel: keptWheel(spec, surroundings, workshop, assemblyLimits),
  };
}

/** A wheel is asked for by few readers and rests on its hub's assembly: it is worked out at the first question. */
function keptWheel(
  spec: SpecDocument,
  surroundings: Surroundings,
  workshop: Workshop | null,
  limits: AssemblyLimits,
): Analysis['wheel'] {
  let kept: WheelAnalysis | null = null;
  return () => {
    if (!spec.wheel) return null;
    kept ??= analyzeWheel(spec.wheel, surroundings, workshop, limits);
    return kept;
  };
}

/** Mechanics are asked for by few readers: they are worked out at the first question for each set of conditions. */
function keptMechanics(
  variant: Pick<VariantAnalysis, 'assembly' | 'pairs'>,
  workshop: Workshop | null,
): VariantAnalysis['mechanics'] {
  const kept = new Map<string, Mechanics>();
  return (how = 'drawn', conditions = bench) => {
    const { inner, outer } = temperaturesOf(conditions);
    const key = `${how} ${inner} ${outer} ${conditions.clampForce}`;
    const known = kept.get(key);
    if (known) return known;
    const made = mechanicsOf(variant, workshop, how, conditions);
    kept.set(key, made);
    return made;
  };
}
