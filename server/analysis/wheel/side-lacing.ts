import { type LacingAngles, lacingAngles } from '../../engine/wheel/hole-pattern.ts';
import { straightPullAngle } from '../../engine/wheel/spoke-line.ts';
import type { Side } from '../../spec/model.ts';
import type { Wheel } from '../../spec/wheel-model.ts';
import type { WheelFlange } from './hub-of-wheel.ts';
import { assumes, lacks, type Notes } from './notes.ts';
import type { WheelRim } from './rim-of-wheel.ts';

/** Which way the heads of a group look, or that they have no bend. */
export type HeadSide = 'head-in' | 'head-out' | 'straight-pull';

/** Spokes of a side that run alike, before their length is known. */
export interface LacedGroup {
  readonly head: HeadSide;
  /** `both` where it makes no difference. */
  readonly direction: 'leading' | 'trailing' | 'both';
  readonly count: number;
  /** Angle between hub and rim hole, rad. */
  readonly angle: number;
  /** Radius of the hub holes or heads, mm. */
  readonly hubRadius: number;
}

/** How a side is laced. */
export interface SideLacing {
  readonly crosses: number;
  readonly groups: readonly LacedGroup[];
  /** False where a phase that changes the lengths is not written: angles are then those of the narrower one. */
  readonly phaseKnown: boolean;
}

/** The groups of one side from the lacing, the flange and the holes of the rim; null where they cannot be told. */
export function sideLacing(
  wheel: Wheel,
  flange: WheelFlange,
  spokes: number,
  rim: WheelRim,
  notes: Notes,
): SideLacing | null {
  const { side } = flange;
  const lacing = wheel.lacing[side];
  const what = `spokes of the ${side} side`;
  const crosses = lacing?.values.crosses?.value;
  if (crosses === undefined) {
    lacks(notes, what, `lacing.${side}.crosses`, lacing?.path ?? []);
    return null;
  }
  if (0 < crosses && spokes % 2 === 1) {
    lacks(
      notes,
      what,
      `an even number of holes in the ${side} flange for crossed spokes`,
      lacing?.path ?? [],
    );
    return null;
  }
  if (flange.straightPull) return straightPull(flange, spokes, crosses, rim, notes);
  if (!flange.circle) {
    lacks(notes, what, `circle of the ${side} flange in the hub file`, wheel.values.hub?.path ?? []);
    return null;
  }
  const phase = lacing?.values.phase?.value;
  const angles = lacingAngles({
    spokes,
    rimHoles: rim.holes,
    drilling: rim.drilling,
    rimPair: rim.pair,
    rimRadius: rim.seatRadius,
    hubPair: flange.pair?.value ?? null,
    hubRadius: flange.circle.value / 2,
    crosses,
    phase: phase ?? 'narrower',
  });
  const phaseKnown = !angles.phaseMatters || phase !== undefined;
  if (!phaseKnown)
    lacks(
      notes,
      `lengths of the ${side} side`,
      `lacing.${side}.phase: wider or narrower`,
      lacing?.path ?? [],
    );
  const hubRadius = flange.circle.value / 2;
  const groups = bentGroups(wheel, side, spokes, crosses, angles, notes).map((one) => ({
    ...one,
    hubRadius,
  }));
  return { crosses, groups, phaseKnown };
}

function straightPull(
  flange: WheelFlange,
  spokes: number,
  crosses: number,
  rim: WheelRim,
  notes: Notes,
): SideLacing | null {
  const { side, headCircle, setback } = flange;
  if (!headCircle) {
    lacks(notes, `spokes of the ${side} side`, `head-circle of the ${side} flange in the hub file`, []);
    return null;
  }
  const hubRadius = headCircle.value / 2;
  if (0 < crosses && !setback)
    assumes(
      notes,
      `heads of the ${side} flange taken to sit where their spokes touch the circle: head-setback is not written`,
    );
  const angle = crosses === 0 ? 0 : straightPullAngle(hubRadius, setback?.value ?? 0, rim.slotRadius.value);
  return {
    crosses,
    groups: [{ head: 'straight-pull', direction: 'both', count: spokes, angle, hubRadius }],
    phaseKnown: true,
  };
}

/** Groups by the side of the head, and by direction where leading and trailing spokes differ. */
function bentGroups(
  wheel: Wheel,
  side: Side,
  spokes: number,
  crosses: number,
  angles: LacingAngles,
  notes: Notes,
): readonly Omit<LacedGroup, 'hubRadius'>[] {
  const values = wheel.lacing[side]?.values;
  const heads = values?.heads?.value ?? (crosses === 0 ? 'out' : 'alternate');
  if (!values?.heads && crosses === 0)
    assumes(notes, `heads of the radial ${side} spokes taken to look outwards`);
  const differ = 1e-9 < Math.abs(angles.leading - angles.trailing);
  if (heads !== 'alternate') {
    const head = heads === 'in' ? 'head-in' : 'head-out';
    if (!differ) return [{ head, direction: 'both', count: spokes, angle: angles.leading }];
    return (['leading', 'trailing'] as const).map((direction) => ({
      head,
      direction,
      count: spokes / 2,
      angle: angles[direction],
    }));
  }
  const outside = values?.outside?.value ?? 'trailing';
  if (!values?.outside && differ) assumes(notes, `trailing spokes of the ${side} side taken to run outside`);
  const inside = outside === 'leading' ? 'trailing' : 'leading';
  const told = 0 < crosses && (differ || values?.outside !== undefined);
  const directions = told ? ([outside, inside] as const) : (['both', 'both'] as const);
  const angleOf = (direction: 'leading' | 'trailing' | 'both'): number =>
    direction === 'trailing' ? angles.trailing : angles.leading;
  return [
    {
      head: 'head-in',
      direction: directions[0],
      count: Math.ceil(spokes / 2),
      angle: angleOf(directions[0]),
    },
    {
      head: 'head-out',
      direction: directions[1],
      count: Math.floor(spokes / 2),
      angle: angleOf(directions[1]),
    },
  ];
}
