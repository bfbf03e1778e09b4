import { bestLength, type Shares } from '../../analysis/mechanics/spacer-answer.ts';
import type { LoopTerm } from '../../assembly/loop.ts';
import type { WantedShare } from '../../engine/play/best-yield.ts';
import type { BuildPlan } from '../../engine/play/build-clearance.ts';
import type { PairBuilds, VaryingPair } from '../../engine/play/play-statistics.ts';
import type { Dimension } from '../../spec/model.ts';
import type { Placed } from '../../spec/place.ts';
import type { LocatedPair } from './located-pair.ts';

/** A spacer where it stands: one written length may serve several variants. */
export interface SpacerUse {
  readonly located: LocatedPair;
  readonly item: LoopTerm;
  readonly written: Placed<Dimension>;
  readonly varying: VaryingPair;
}

/** A length that puts clearly more builds right, in the variant where the fewest are. */
export interface BetterLength {
  /** The variant where the fewest builds come right, first; then the others that share the length. */
  readonly uses: readonly [SpacerUse, ...SpacerUse[]];
  readonly to: number;
  readonly now: Shares;
  readonly better: Shares;
  /** What strays most in that variant, greatest first. */
  readonly contributions: PairBuilds['contributions'];
}

type Uses = BetterLength['uses'];
type Compared = Omit<BetterLength, 'uses'> & {
  /** Index of the use where the fewest come right. */ readonly worst: number;
};

/** Uses that are built: the variants of a family mostly differ in their clamp, so the ends speak for those between. */
const mostBuilt = 6;

/** Comparisons made before: a pure function of their numbers, and most keys typed change none of those. */
const known = new Map<string, Compared>();
const mostKnown = 200;

/** The length that serves the worst-served use best, against the length as it stands. */
export function compareLengths(uses: Uses, wanted: WantedShare, plan: BuildPlan): BetterLength {
  const distinct = new Map<string, SpacerUse>();
  for (const use of uses) {
    const key = keyOf(use);
    if (!distinct.has(key)) distinct.set(key, use);
  }
  const built = ends([...distinct]);
  const key = JSON.stringify([built.map(([one]) => one), wanted, plan]);
  const found = known.get(key) ?? compareAnew(built.map(([, use]) => use) as unknown as Uses, wanted, plan);
  if (mostKnown <= known.size) known.clear();
  known.set(key, found);
  const { worst, ...lengths } = found;
  const first = built[worst]?.[1] ?? uses[0];
  return { ...lengths, uses: [first, ...uses.filter((use) => use !== first)] };
}

function compareAnew(uses: Uses, wanted: WantedShare, plan: BuildPlan): Compared {
  const found = uses.map((use) => bestLength(use.varying, use.item, wanted, plan));
  const fewest = (shares: readonly Shares[]): Shares =>
    shares.reduce((least, one) => (one.yield < least.yield ? one : least));
  const now = fewest(found.map((one) => one.now));
  const lengths = [...new Set(found.map(({ to }) => to))];
  const tried = lengths.map((to) => ({ to, better: fewest(found.map(({ sharesAt }) => sharesAt(to))) }));
  const best = tried.reduce((most, one) => (most.better.yield < one.better.yield ? one : most));
  const worst = found.findIndex((one) => one.now === now);
  return { ...best, now, worst, contributions: found[worst]?.contributions ?? [] };
}

/** The uses with the least and the greatest δ once clamped, where there are more than are built. */
function ends(uses: readonly (readonly [string, SpacerUse])[]): readonly (readonly [string, SpacerUse])[] {
  if (uses.length <= mostBuilt) return uses;
  const clamped = ({ varying }: SpacerUse): number =>
    varying.mismatch - varying.clampForce * varying.spacerCompliance;
  const sorted = uses.toSorted(([, a], [, b]) => clamped(a) - clamped(b));
  return [...sorted.slice(0, mostBuilt / 2), ...sorted.slice(-mostBuilt / 2)];
}

/** The numbers that the builds of a use rest on. */
function keyOf({ varying, item }: SpacerUse): string {
  const { mismatch, clampForce, spacerCompliance, lengths } = varying;
  const sides = [varying.left, varying.right].map(({ side, clearance, outer, inner, thermalLoss }) => {
    const { geometry, reach, stiffness } = side.bearing;
    return [geometry, reach, stiffness, side.carries, side.flush, clearance, outer, inner, thermalLoss];
  });
  return JSON.stringify([
    mismatch,
    clampForce,
    spacerCompliance,
    lengths,
    sides,
    item.count,
    item.settled.drawn,
  ]);
}
