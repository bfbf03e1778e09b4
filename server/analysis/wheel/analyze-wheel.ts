import type { AssemblyLimits, Unchecked } from '../../assembly/assemble.ts';
import type { SettlingRules } from '../../assembly/settle.ts';
import { nippleFacts } from '../../engine/tables/spoke-facts.ts';
import {
  type CrossingRoom,
  type CrossingVerdict,
  crossingRoom,
  judgeCrossing,
  mostCrossingsFree,
} from '../../engine/wheel/flange-limits.ts';
import { rimShrinkage } from '../../engine/wheel/tension-balance.ts';
import type { Side } from '../../spec/model.ts';
import type { Wheel } from '../../spec/wheel-model.ts';
import type { Workshop } from '../../spec/workshop-model.ts';
import type { Surroundings } from '../analyze.ts';
import { type GroupFit, sideFits } from './group-length.ts';
import { hubOfWheel, type WheelHub } from './hub-of-wheel.ts';
import { type MeasuredWheel, measuredWheel } from './measured-wheel.ts';
import { assumes, lacks, type Notes } from './notes.ts';
import { rimOfWheel, type WheelRim } from './rim-of-wheel.ts';
import { type SpokeGroup, type WheelSide, wheelSide } from './wheel-spokes.ts';
import { type WheelStrength, wheelStrength } from './wheel-strength.ts';
import { type WheelTension, wheelTension } from './wheel-tension.ts';

/** Spokes that run alike, worked out. */
export interface WheelGroup extends SpokeGroup {
  /** Length and nipple; null where the phase that decides the length is not written. */
  readonly fit: GroupFit | null;
  /** How the spoke lies on its flange; null for straight-pull spokes. */
  readonly crossing: WheelCrossing | null;
}

/** A crossing on a flange. */
export interface WheelCrossing extends CrossingRoom {
  readonly crosses: number;
  readonly verdict: CrossingVerdict;
  /** Most crossings that leave the heads beside them free. */
  readonly most: number;
}

/** Everything that is known of one wheel: its hub's flanges, rim and spokes joined. mm, N, N/mm, rad. */
export interface WheelAnalysis {
  readonly hub: WheelHub | null;
  readonly rim: WheelRim | null;
  readonly sides: readonly WheelSide[];
  /** Left before right, heads inwards before heads outwards. */
  readonly groups: readonly WheelGroup[];
  /** Null until both sides are known. */
  readonly tension: WheelTension | null;
  /** Null where the rim's stiffness is not written. */
  readonly strength: WheelStrength | null;
  readonly measured: MeasuredWheel | null;
  readonly unchecked: readonly Unchecked[];
  readonly assumed: readonly string[];
}

/** Works a wheel out as far as its file and its hub go. Never throws on what a user wrote. */
export function analyzeWheel(
  wheel: Wheel,
  surroundings: Surroundings,
  workshop: Workshop | null,
  limits: AssemblyLimits,
): WheelAnalysis {
  const notes: Notes = { unchecked: [], assumed: [] };
  const nothing = { rim: null, sides: [], groups: [], tension: null, strength: null, measured: null };
  const hub = hubOfWheel(wheel, surroundings, workshop, limits, notes);
  if (!hub) return { hub, ...nothing, ...notes };
  const rules: SettlingRules = { untoleranced: null, measuring: limits.measuring };
  const count = (side: Side): number => hub.flanges[side]?.holes ?? 0;
  const rim = rimOfWheel(wheel, { left: count('left'), right: count('right') }, workshop, rules, notes);
  if (!rim) return { hub, ...nothing, ...notes };
  const left = wheelSide(wheel, hub.flanges.left, rim, workshop, notes);
  const right = wheelSide(wheel, hub.flanges.right, rim, workshop, notes);
  const sides = [left, right].filter((side) => side !== null);
  const tension =
    left && right && balances(left, right, notes) ? wheelTension(wheel, left, right, notes) : null;
  if (!tension) assumes(notes, 'lengths without the stretch of the spokes: their tension is not known');
  const shrinkage =
    tension && rim.axial !== null ? rimShrinkage(tension.rimCompression, rim.seatRadius, rim.axial) : 0;
  if (tension && rim.axial === null)
    assumes(notes, 'rim taken to keep its diameter under tension: rim.area is not written');
  const groups = sides.flatMap((side) => {
    const context = { tension: tension?.[side.side] ?? 0, shrinkage, workshop, rules, notes };
    const fits = side.lacing.phaseKnown ? sideFits(wheel, side, rim, context) : [];
    return side.groups.map(
      (group, at): WheelGroup => ({ ...group, fit: fits[at] ?? null, crossing: crossingOf(side, group) }),
    );
  });
  const strength = tension ? wheelStrength(wheel, hub, rim, sides, tension, { workshop, notes }) : null;
  const measured = tension ? measuredWheel(wheel, sides, tension, strength, notes) : null;
  return { hub, rim, sides, groups, tension, strength, measured, ...notes };
}

/** Whether each side pulls to its own: a flange beyond the middle, or a rim offset past a flange, has no balance. */
function balances(left: WheelSide, right: WheelSide, notes: Notes): boolean {
  const odd = [left, right].flatMap(({ side, flange, groups }) => {
    const { path } = flange.flange;
    if (groups.some(({ pull }) => pull.radial <= 0))
      return [{ missing: `a rim.erd larger than the hole circle of the ${side} flange`, path }];
    if (groups.some(({ pull }) => pull.lateral <= 0))
      return [{ missing: `a ${side} flange that lies ${side} of the rim's holes`, path }];
    return [];
  });
  for (const { missing, path } of odd) lacks(notes, 'tensions of the two sides', missing, path);
  return odd.length === 0;
}

function crossingOf(side: WheelSide, group: SpokeGroup): WheelCrossing | null {
  if (group.head === 'straight-pull') return null;
  const wire = side.profile.diameters[0] ?? 2;
  const sizes = { wire, head: wire * nippleFacts.headOverWire, hole: side.flange.hole?.value ?? wire + 0.5 };
  const { hubRadius, rimRadius } = group.line;
  const room = crossingRoom(hubRadius, rimRadius, side.count, group.angle);
  return {
    ...room,
    crosses: side.lacing.crosses,
    verdict: judgeCrossing(room, group.angle, sizes),
    most: mostCrossingsFree(hubRadius, rimRadius, side.count, sizes),
  };
}
