import type { SettlingRules } from '../../assembly/settle.ts';
import { nippleFacts } from '../../engine/tables/spoke-facts.ts';
import type { Drilling } from '../../engine/wheel/hole-pattern.ts';
import type { RimStiffness } from '../../engine/wheel/spoke-springs.ts';
import type { Side } from '../../spec/model.ts';
import type { Wheel } from '../../spec/wheel-model.ts';
import type { Workshop } from '../../spec/workshop-model.ts';
import { materialOf } from '../mechanics/material-of.ts';
import { assumes, lacks, type Notes, type Size, sizeOf } from './notes.ts';

/** The rim as the spokes meet it. */
export interface WheelRim {
  /** Radius on which a spoke ends level with the bottom of the slot, with how far it may stray, mm. */
  readonly slotRadius: Size;
  /** Radius on which the nipple rests, mm. */
  readonly seatRadius: number;
  readonly holes: number;
  readonly drilling: Drilling;
  /** Distance of the holes of a pair, mm; 0 where holes are not paired. */
  readonly pair: number;
  /** Of a side's holes from the plane the rim is centred on, towards its own flange, mm. */
  readonly holeOffset: Readonly<Record<Side, number>>;
  /** E·A, N; null where the section is not written. */
  readonly axial: number | null;
  /** Null where one of its three stiffnesses is not written. */
  readonly stiffness: RimStiffness | null;
}

/** Reads the rim; null where no spoke can be reckoned without what is missing. */
export function rimOfWheel(
  wheel: Wheel,
  counts: Readonly<Record<Side, number>>,
  workshop: Workshop | null,
  rules: SettlingRules,
  notes: Notes,
): WheelRim | null {
  const rim = wheel.rim?.values;
  const path = wheel.rim?.path ?? [];
  const erd = sizeOf(rim?.erd, rules);
  if (!rim || !erd) {
    lacks(notes, 'spoke lengths and tensions', 'rim.erd', path);
    return null;
  }
  const to = rim['erd-to']?.value;
  if (!to)
    assumes(
      notes,
      'effective rim diameter taken as measured to the bottom of the slots: erd-to is not written',
    );
  const washer = sizeOf(wheel.nipples?.values.washer, rules)?.value ?? 0;
  const head = seatToSlot(wheel, rules, to !== undefined || washer > 0, notes);
  const radius = erd.value / 2;
  const slot = { 'nipple-seat': head + washer, 'slot-bottom': 0, 'nipple-top': -nippleFacts.slotDepth }[
    to ?? 'slot-bottom'
  ];
  if (to === 'nipple-top')
    assumes(notes, `bottom of the slot taken as ${nippleFacts.slotDepth} mm below the top of a nipple`);
  if (to !== 'nipple-seat' && washer > 0) assumes(notes, 'the rim taken as measured with its washers');
  const seatRadius = to === 'nipple-seat' ? radius : radius + slot - head - washer;
  if (Math.min(seatRadius, radius + slot) <= 0) {
    lacks(notes, 'spoke lengths and tensions', 'a rim.erd larger than its nipples', rim.erd?.path ?? path);
    return null;
  }
  const axial = axialOf(wheel, workshop, notes);
  const offset = sizeOf(rim.offset, rules)?.value ?? 0;
  const apart = sizeOf(rim['hole-offset'], rules)?.value ?? 0;
  return {
    slotRadius: { value: radius + slot, stray: erd.stray / 2 },
    seatRadius,
    holes: rim.holes?.value ?? counts.left + counts.right,
    drilling: drillingOf(wheel, counts, notes),
    pair: pairOf(wheel, rules, notes),
    holeOffset: { left: offset + apart, right: apart - offset },
    axial,
    stiffness: stiffnessOf(wheel, seatRadius, axial, notes),
  };
}

function seatToSlot(wheel: Wheel, rules: SettlingRules, matters: boolean, notes: Notes): number {
  const written = sizeOf(wheel.nipples?.values['seat-to-slot'], rules);
  if (!written && matters && wheel.rim?.values['erd-to']?.value === 'nipple-seat')
    assumes(notes, `bottom of the slot taken as ${nippleFacts.seatToSlot} mm above the seat of a nipple`);
  return written?.value ?? nippleFacts.seatToSlot;
}

function drillingOf(wheel: Wheel, counts: Readonly<Record<Side, number>>, notes: Notes): Drilling {
  const written = wheel.rim?.values.drilling?.value;
  if (written) return written;
  const { left, right } = counts;
  if (left === right) return 'even';
  if (Math.max(left, right) !== 2 * Math.min(left, right)) {
    assumes(
      notes,
      'rim holes of each side taken to stand evenly: the sides have different numbers of spokes',
    );
    return 'even';
  }
  assumes(
    notes,
    'every third rim hole taken to belong to the side with fewer spokes: drilling is not written',
  );
  return '2:1';
}

function pairOf(wheel: Wheel, rules: SettlingRules, notes: Notes): number {
  if (wheel.rim?.values.drilling?.value !== 'paired') return 0;
  const pair = sizeOf(wheel.rim.values['pair-distance'], rules);
  if (!pair) lacks(notes, 'lengths on a paired rim', 'rim.pair-distance', wheel.rim.path);
  else assumes(notes, 'holes of the two flanges taken to stand half a hole apart');
  return pair?.value ?? 0;
}

function axialOf(wheel: Wheel, workshop: Workshop | null, notes: Notes): number | null {
  const area = wheel.rim?.values.area;
  if (!area) return null;
  const material = materialOf('the rim', wheel.rim?.values.material, 'aluminium 6061-T6', workshop);
  if (material.assumed) assumes(notes, material.assumed);
  return material.E * area.value;
}

function stiffnessOf(wheel: Wheel, radius: number, axial: number | null, notes: Notes): RimStiffness | null {
  const rim = wheel.rim?.values;
  const names = ['radial-stiffness', 'lateral-stiffness', 'torsional-stiffness'] as const;
  const missing = names.filter((name) => !rim?.[name]);
  if (missing.length > 0) {
    lacks(
      notes,
      'stiffness, buckling, slack loads and turns of the nipples',
      missing.map((name) => `rim.${name}`).join(', '),
      wheel.rim?.path ?? [],
    );
    return null;
  }
  const of = (name: (typeof names)[number]): number => rim?.[name]?.value.value ?? 0;
  return {
    radius,
    radial: of('radial-stiffness'),
    lateral: of('lateral-stiffness'),
    torsional: of('torsional-stiffness'),
    axial,
  };
}
