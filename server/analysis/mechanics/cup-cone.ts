import type { Assembly } from '../../assembly/assemble.ts';
import type { LinePart } from '../../assembly/line.ts';
import { asBuilt, meanOf, settle } from '../../assembly/settle.ts';
import { mismatchForPlay } from '../../engine/play/adjusted-pair.ts';
import { compliance, type Stretch } from '../../engine/play/clamp-compression.ts';
import { type ClampedPair, clampedPair } from '../../engine/play/clamped-pair.ts';
import { benchPlay } from '../../engine/play/cup-and-cone.ts';
import type { PairSide } from '../../engine/play/pair-side.ts';
import { normalBelow } from '../../engine/stack/normal.ts';
import type { Side } from '../../spec/model.ts';
import type { Placed, SpecPath } from '../../spec/place.ts';
import type { Workshop } from '../../spec/workshop-model.ts';
import { axleBetweenCones } from './axle-between-cones.ts';
import type { AxleThread } from './axle-thread.ts';
import type { Clamp } from './clamp-of.ts';
import { type ConeSide, coneSide } from './cone-side.ts';
import type { MountedBearing } from './mounted-bearing.ts';
import { sideOf } from './side-of.ts';

/** A hub that is set by a cone: cones on both sides, or a cone against a cartridge bearing. Lengths in mm. */
export interface ConeMechanics {
  readonly races: readonly [string, string];
  readonly cones: readonly ConeSide[];
  /** The cone that the bench play is written at, or would be. */
  readonly setAt: SpecPath;
  /** Play the cones are set to on the bench, with what it may stray; null where none is written. */
  readonly set: { readonly play: number; readonly stray: number; readonly path: SpecPath } | null;
  readonly thread: AxleThread | null;
  /** What the clamp shortens. */
  readonly axle: Stretch;
  /** Shortening of the axle between the races, mm/N, and by the clamp, mm: the play to leave on the bench. */
  readonly compliance: number;
  readonly leave: number;
  /** N; 0 where the clamp does not run through the axle between the cones. */
  readonly axleForce: number;
  /** The pair at its written bench play; null without `set`, or where a side could not be worked out. */
  readonly result: ClampedPair | null;
  /** Shares of many settings that are loaded by more than a micrometre and that keep more than `limit`, 0 to 1. */
  readonly shares: (limit: number) => { readonly loaded: number; readonly playHigh: number } | null;
  /** The clamped pair for another bench play, mm; null where a side could not be worked out. */
  readonly at: (play: number) => ClampedPair | null;
  readonly missing: readonly string[];
  readonly assumed: readonly string[];
}

/** How far a lever closed by hand strays about its force, ± share: an estimate, no standard holds it closer. */
const clampStray = 0.25;

/** Works a hub set by cones out; null for a hub without them, or what keeps it from being worked out. */
export function coneMechanics(
  assembly: Assembly,
  bearings: readonly MountedBearing[],
  clamp: Clamp | null,
  workshop: Workshop | null,
): ConeMechanics | { readonly missing: string } | null {
  const races = assembly.line.filter(({ part }) => part.kind === 'cone' || part.kind === 'bearing');
  const [left, right] = races;
  const cones = races.filter(({ part }) => part.kind === 'cone');
  if (cones.length === 0) return null;
  if (!left || !right || races.length !== 2) return { missing: 'a cone or a bearing on the other side' };
  const between = axleBetweenCones(assembly, left, right, workshop);
  if ('missing' in between) return between;
  const sides = [
    raceSide(left, 'left', assembly, bearings),
    raceSide(right, 'right', assembly, bearings),
  ] as const;
  const give = compliance([between.axle]);
  const path = forceThroughAxle(assembly, clamp);
  const leave = benchPlay(give, path.force);
  const set = writtenSet(cones, assembly);
  const [one, other] = [sides[0].pair, sides[1].pair];
  const at = (play: number): ClampedPair | null =>
    one && other
      ? clampedPair({
          left: one,
          right: other,
          mismatch: mismatchForPlay(one, other, play),
          clampForce: path.force,
          spacerCompliance: give,
          housingCompliance: between.shell ? compliance([between.shell]) : 0,
          heldBy: 'threads',
        })
      : null;
  const missing = [
    ...sides.flatMap(({ missing }) => missing ?? []),
    ...(set ? [] : [`set of ${cones.map(({ address }) => address).join(' or ')}`]),
  ];
  const coneSides = sides.flatMap((side) => ('cone' in side ? [side.cone] : []));
  return {
    races: [left.address, right.address],
    cones: coneSides,
    setAt: set?.path ?? (cones.at(-1) as LinePart).part.path,
    set,
    thread: between.thread,
    axle: between.axle,
    compliance: give,
    leave,
    axleForce: path.force,
    result: set ? at(set.play) : null,
    shares: (limit) => (set && clamp ? sharesOf(set.play - leave, set.stray, leave, limit) : null),
    at,
    missing,
    assumed: [
      ...coneSides.flatMap((side) => side.assumed),
      ...between.assumed,
      ...path.assumed,
      ...(set?.assumed ?? []),
      ...(clamp?.assumed ?? []),
    ],
  };
}

interface RaceSide {
  readonly pair: PairSide | null;
  readonly missing: string | null;
}

function raceSide(
  part: LinePart,
  side: Side,
  assembly: Assembly,
  bearings: readonly MountedBearing[],
): RaceSide | (RaceSide & { readonly cone: ConeSide }) {
  if (part.part.kind === 'cone') {
    const cone = coneSide(part, side, assembly);
    return { pair: cone.pair, missing: cone.missing, cone };
  }
  const mounted = bearings.find(({ address }) => address === part.address);
  const pair = mounted && assembly.shell ? sideOf(mounted, assembly.shell, side, bearings) : null;
  return { pair, missing: pair ? null : `seat and clearance of ${part.address}` };
}

/** A skewer squeezes the axle from locknut to locknut; nuts on a solid axle squeeze only what lies under them. */
function forceThroughAxle({ hub }: Assembly, clamp: Clamp | null) {
  const written = hub.clamp?.values.through?.value;
  if (!clamp) return { force: 0, assumed: ['no clamp is written: nothing shortens the axle'] };
  if (written) {
    const nuts = 'the clamp does not run through the axle between the cones: it does not shorten it';
    return written === 'axle' ? { force: clamp.force, assumed: [] } : { force: 0, assumed: [nuts] };
  }
  return hub.axle?.values.bore
    ? { force: clamp.force, assumed: ['the axle is hollow: the clamp taken as a skewer that shortens it'] }
    : {
        force: 0,
        assumed: ['the axle is solid: the clamp taken as nuts, which do not shorten it between the cones'],
      };
}

/** The play a cone is set to; a torque is no play. */
function writtenSet(cones: readonly LinePart[], { rules }: Assembly) {
  for (const { part, address } of cones) {
    const set = part.values.set;
    if (!set || !('nominal' in set.value)) continue;
    const dimension = { ...set, value: set.value } as Placed<typeof set.value>;
    const limits = asBuilt(settle(dimension, rules));
    const written = (limits.upper - limits.lower) / 2;
    const stray = 0 < written ? written : rules.measuring;
    const said = `play of ${address} taken as set to ±${stray} mm`;
    return { play: meanOf(limits), stray, path: set.path, assumed: 0 < written ? [] : [said] };
  }
  return null;
}

/** Limits of the setting and of the clamp stand for three sigma each. */
function sharesOf(mean: number, stray: number, leave: number, limit: number) {
  const sigma = Math.hypot(stray, clampStray * leave) / 3;
  if (!(0 < sigma)) return { loaded: mean < 0 ? 1 : 0, playHigh: limit < mean ? 1 : 0 };
  return { loaded: normalBelow(-mean / sigma), playHigh: normalBelow((mean - limit) / sigma) };
}

/** Whether a hub set by cones could be worked out. */
export function isConeWorked(cones: ReturnType<typeof coneMechanics>): cones is ConeMechanics {
  return cones !== null && 'races' in cones;
}
