import { spokeModulus } from '../../engine/tables/spoke-facts.ts';
import {
  type SpokeDirection,
  type SpokeLine,
  spokeDirection,
  spokeSpan,
} from '../../engine/wheel/spoke-line.ts';
import type { SpokeSprings } from '../../engine/wheel/spoke-springs.ts';
import { axialStiffness, wireSegments } from '../../engine/wheel/spoke-wire.ts';
import type { Side } from '../../spec/model.ts';
import type { SpokeProfile, Wheel } from '../../spec/wheel-model.ts';
import type { Workshop } from '../../spec/workshop-model.ts';
import { materialOf } from '../mechanics/material-of.ts';
import type { WheelFlange } from './hub-of-wheel.ts';
import { assumes, lacks, type Notes } from './notes.ts';
import type { WheelRim } from './rim-of-wheel.ts';
import { type LacedGroup, type SideLacing, sideLacing } from './side-lacing.ts';

/** Spokes that run alike, as lines to the seats of their nipples. */
export interface SpokeGroup extends LacedGroup {
  readonly side: Side;
  readonly line: SpokeLine;
  readonly span: number;
  readonly pull: SpokeDirection;
  /** EA of a plain wire that stretches as much, N. */
  readonly axial: number;
}

/** All spokes of one side. */
export interface WheelSide {
  readonly side: Side;
  readonly count: number;
  readonly flange: WheelFlange;
  readonly lacing: SideLacing;
  readonly profile: SpokeProfile;
  readonly groups: readonly SpokeGroup[];
}

/** What a spoke is where nothing is written, said so. */
const plainSpoke: SpokeProfile = { written: '2.0', diameters: [2], blade: null };

/** The spokes of a side; null where they cannot be told. */
export function wheelSide(
  wheel: Wheel,
  flange: WheelFlange | null,
  rim: WheelRim,
  workshop: Workshop | null,
  notes: Notes,
): WheelSide | null {
  if (!flange) return null;
  const { side, offset, holes } = flange;
  const hubPath = wheel.values.hub?.path ?? [];
  const what = `spokes of the ${side} side`;
  if (holes === null) lacks(notes, what, `holes of the ${side} flange in the hub file`, hubPath);
  if (offset === null) lacks(notes, what, `from-centre of the ${side} flange in the hub file`, hubPath);
  if (holes === null || offset === null) return null;
  const lacing = sideLacing(wheel, flange, holes, rim, notes);
  if (!lacing) return null;
  const values = wheel.spokes[side]?.values;
  const profile = values?.profile?.value ?? plainSpoke;
  if (!values?.profile)
    assumes(notes, `spokes of the ${side} side taken as plain wire of 2.0 mm: profile is not written`);
  const E = modulusOf(wheel, side, workshop, notes);
  const elbow = elbowOffset(flange, profile, notes);
  const rimOffset = rim.holeOffset[side];
  const groups = lacing.groups.map((group): SpokeGroup => {
    const off = { 'head-in': elbow, 'head-out': -elbow, 'straight-pull': 0 }[group.head];
    const line: SpokeLine = {
      hubRadius: group.hubRadius,
      rimRadius: rim.seatRadius,
      hubOffset: offset.value + off,
      rimOffset,
      angle: group.angle,
    };
    const span = spokeSpan(line);
    return {
      ...group,
      side,
      line,
      span,
      pull: spokeDirection(line),
      axial: axialStiffness(wireSegments(profile, span), E),
    };
  });
  return { side, count: holes, flange, lacing, profile, groups };
}

/** A spoke with its head inwards runs along the outside of its flange, half the flange and half its wire from the middle, mm. */
function elbowOffset(flange: WheelFlange, profile: SpokeProfile, notes: Notes): number {
  if (flange.straightPull) return 0;
  if (!flange.thickness) {
    assumes(
      notes,
      `spokes taken to leave the ${flange.side} flange at its middle: its thickness is not written`,
    );
    return 0;
  }
  return (flange.thickness.value + (profile.diameters[0] ?? 2)) / 2;
}

function modulusOf(wheel: Wheel, side: Side, workshop: Workshop | null, notes: Notes): number {
  const written = wheel.spokes[side]?.values.material;
  if (!written) {
    assumes(notes, `modulus of the spokes taken as ${spokeModulus / 1000} GPa: material is not written`);
    return spokeModulus;
  }
  const material = materialOf(`the ${side} spokes`, written, 'stainless', workshop);
  if (material.assumed) assumes(notes, material.assumed);
  return material.E;
}

/** A group as springs on the rim, at a tension, N. */
export function springsOf(group: SpokeGroup, tension: number): SpokeSprings {
  const { count, side, pull, span, axial } = group;
  return { count, side: side === 'left' ? -1 : 1, direction: pull, span, axial, tension };
}
