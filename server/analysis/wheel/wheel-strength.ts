import { type BucklingTension, bucklingTension } from '../../engine/wheel/buckling.ts';
import { slackLoad, tensionLeft } from '../../engine/wheel/slack-load.ts';
import { type WheelStiffness, wheelStiffness } from '../../engine/wheel/wheel-stiffness.ts';
import type { Side } from '../../spec/model.ts';
import type { Wheel } from '../../spec/wheel-model.ts';
import type { Workshop } from '../../spec/workshop-model.ts';
import { gravity, usual } from '../life/wheel-cases.ts';
import type { WheelHub } from './hub-of-wheel.ts';
import { assumes, lacks, type Notes } from './notes.ts';
import type { WheelRim } from './rim-of-wheel.ts';
import { springsOf, type WheelSide } from './wheel-spokes.ts';
import type { WheelTension } from './wheel-tension.ts';

/** Loads at which the first spoke loses all its tension, N, and what is left when ridden. */
export interface WheelSlack {
  /** Weight on the wheel, and the side whose spokes go first. */
  readonly radial: number;
  readonly radialSide: Side;
  /** Force from the side at the rim, by the side it pushes to. */
  readonly lateral: Readonly<Record<Side, number>>;
  /** Weight and side force as ridden, and the least tension left on each side with the force to its side. */
  readonly ridden: {
    readonly weight: number;
    readonly sideForce: number;
    readonly left: number;
    readonly right: number;
  };
}

/** Buckling by tension alone. */
export interface WheelBuckling extends BucklingTension {
  /** Tension as a share of the one that folds the wheel. */
  readonly share: number;
}

/** Stiffness and strength, for comparison of wheels. */
export interface WheelStrength {
  readonly stiffness: WheelStiffness;
  readonly buckling: WheelBuckling | null;
  readonly slackLoad: WheelSlack;
}

/** Works out stiffness, buckling and slack loads; null where the rim's stiffness is not written or the wheel would fold. */
export function wheelStrength(
  wheel: Wheel,
  hub: WheelHub,
  rim: WheelRim,
  sides: readonly WheelSide[],
  tension: WheelTension,
  around: { readonly workshop: Workshop | null; readonly notes: Notes },
): WheelStrength | null {
  if (!rim.stiffness) return null;
  const springs = sides.flatMap((side) => side.groups.map((group) => springsOf(group, tension[group.side])));
  const stiffness = wheelStiffness(rim.stiffness, springs);
  const buckling = bucklingTension(rim.stiffness, springs);
  if (!stiffness) {
    const at = wheel.tension?.path ?? [];
    lacks(around.notes, 'stiffness and slack loads', 'a tension below the one that folds the wheel', at);
    return null;
  }
  const loads = springs.map((spoke) => ({ spoke, load: slackLoad(spoke, stiffness.give) }));
  const first = loads.reduce((least, one) => (one.load.radial < least.load.radial ? one : least));
  const towards = (side: Side) => loads.filter(({ spoke }) => spoke.side < 0 === (side === 'left'));
  const lateral = (side: Side) => Math.min(...towards(side).map(({ load }) => load.lateral));
  const { weight, sideForce } = riddenLoad(wheel, hub, around);
  const left = (side: Side): number => {
    const right = side === 'right' ? sideForce : -sideForce;
    return Math.min(
      ...towards(side).map(({ spoke }) => tensionLeft(spoke, stiffness.give, { radial: weight, right })),
    );
  };
  return {
    stiffness,
    buckling: buckling ? { ...buckling, share: 1 / (buckling.factor ?? Number.POSITIVE_INFINITY) } : null,
    slackLoad: {
      radial: first.load.radial,
      radialSide: first.spoke.side < 0 ? 'left' : 'right',
      lateral: { left: lateral('left'), right: lateral('right') },
      ridden: { weight, sideForce, left: left('left'), right: left('right') },
    },
  };
}

function riddenLoad(
  wheel: Wheel,
  hub: WheelHub,
  { workshop, notes }: { readonly workshop: Workshop | null; readonly notes: Notes },
): { readonly weight: number; readonly sideForce: number } {
  const rider = wheel.rider?.values;
  const mass = rider?.mass?.value.value ?? workshop?.defaults.rider?.value.value;
  const bicycle = rider?.bicycle?.value.value;
  const share = rider?.share?.value ?? usual.share[hub.position ?? 'front'];
  if (mass === undefined) assumes(notes, `rider taken as ${usual.rider} kg`);
  if (bicycle === undefined) assumes(notes, `bicycle taken as ${usual.bicycle} kg`);
  if (!rider?.share) assumes(notes, `${Math.round(share * 100)} % of the weight taken to rest on this wheel`);
  const weight = ((mass ?? usual.rider) + (bicycle ?? usual.bicycle)) * share * gravity;
  const written = rider?.['side-force']?.value.value;
  if (written === undefined)
    assumes(notes, `side force taken as ${usual.side * 100} % of the weight on the wheel`);
  return { weight, sideForce: written ?? usual.side * weight };
}
