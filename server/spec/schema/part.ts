import * as z from 'zod';
import { readDimension } from '../dimension.ts';
import type { Dimension, PartValues, Quantity, StackKind } from '../model.ts';
import { readQuantity } from '../quantity.ts';
import { type Reading, readBalls, readCount, readGroove, readSize } from '../small-values.ts';
import {
  bore,
  choice,
  length,
  numberBetween,
  offset,
  quantity,
  type Shape,
  shaft,
  text,
  type Value,
  value,
} from './value.ts';

const material = text(
  'material',
  'material',
  'What the part is made of; stiffness, strength and expansion are taken from the table of materials.',
  'aluminium 7075',
  'steel',
).optional();
const partLength = (what: string, ...examples: string[]): Value<Dimension> =>
  length('length', `${what}, mm.`, ...examples);
const outside = shaft('outside', 'Outside diameter, mm.', '19.6').optional();
const inside = bore('inside', 'Inside diameter, mm.', '17.1').optional();
const balls = value('balls', readBalls, {
  title: 'balls',
  description:
    'Number of balls × ball diameter, mm. Estimated from the section and said so where it is not given.',
  examples: ['13 × 2.778'],
}).optional();

const groove = value('groove', readGroove, {
  title: 'groove',
  description: 'Groove radius ÷ ball diameter, of both rings or inner/outer.',
  examples: ['0.52', '0.515/0.525'],
}).optional();

/** A torque where a unit of torque stands, a play in mm otherwise. */
function readSet(written: string): Reading<Quantity | Dimension> {
  if (/\d\s*[a-z]*n/i.test(written) && !/\d\s*in\b/i.test(written)) {
    const reading = readQuantity(written, 'torque');
    return 'problem' in reading ? reading : { value: reading.quantity };
  }
  const reading = readDimension(written, 'offset');
  return 'problem' in reading ? reading : { value: reading.dimension };
}

const spacerKeys = {
  length: partLength('Length of the sleeve from face to face', '62.06 ±0.01'),
  inside,
  outside,
  material,
} satisfies Shape<PartValues>;

const thinSpacerKeys = {
  length: partLength('Thickness of one', '0.1'),
  inside,
  outside,
  material,
  count: value('count', (written) => readCount(written, 'how many lie on each other', 1, 99, '2'), {
    title: 'count',
    description: 'How many of them lie on each other; 1 where nothing is written.',
    examples: ['2'],
  }).optional(),
} satisfies Shape<PartValues>;

/** Keys of each kind of part of the stack, beside the one that names it. */
export const partSchemas = {
  'end-cap': z.strictObject({
    length: partLength('From the dropout face to the face that bears on the bearing', '14.03 ±0.02'),
    face: shaft(
      'face',
      'Diameter of the face that bears on the bearing, mm: it may touch the inner ring only.',
      '19.4',
    ).optional(),
    outside,
    bore: bore('bore', 'Diameter of the hole for the through-axle or skewer, mm.', '12.05').optional(),
    spigot: shaft(
      'spigot',
      'Diameter of the stub that enters the axle or the bearing, mm.',
      '17 h6',
    ).optional(),
    nose: length(
      'nose',
      'Length of the narrow part with the face, from the bearing to where the cap widens to its outside, mm.',
      '2.5 ±0.05',
    ).optional(),
    socket: length('socket', "Depth of the hole that takes the axle's end, mm.", '8 +0.1/0').optional(),
    material,
    fixing: choice(
      ['push', 'thread'],
      'fixing',
      'How it is held on the axle: pushed on or screwed on.',
    ).optional(),
  } satisfies Shape<PartValues>),
  bearing: z.strictObject({
    code: text(
      'code',
      'code',
      'Designation of the bearing as engraved; decoded to its bore, outside diameter and width.',
      '6803-2RS',
    ).optional(),
    size: value('size', readSize, {
      title: 'size',
      description:
        'Bore × outside diameter × width, mm, for a bearing without a code; beside a code the two must agree.',
      examples: ['17x26x5'],
    }).optional(),
    width: length(
      'width',
      'Ring width where it differs from that of the code, drawn or measured, mm.',
      '5 0/-0.12',
    ).optional(),
    seat: text('seat', 'seat', 'The seat its outer ring sits in.', 'shell.left').optional(),
    journal: shaft('journal', 'Diameter of the axle under the inner ring, mm.', '17 h6').optional(),
    balls,
    groove,
    'inner-outside': shaft('inner-outside', 'Outside diameter of the inner ring, mm.', '20.2').optional(),
    'inner-width': length('inner-width', 'Width of an extended inner ring, mm.', '6 0/-0.12').optional(),
    'face-offset': offset(
      'face-offset',
      'How far the inner face stands out from the outer face towards the other bearing of the pair (of one between two, towards the stop of its seat), mm; negative where it lies back.',
      '0 ±0.02',
    ).optional(),
    'back-face': choice(
      ['left', 'right'],
      'back-face',
      'Angular contact: the side its wide outer-ring face is on.',
    ).optional(),
    'contact-angle': numberBetween(
      'contact-angle',
      'Angular contact: the nominal contact angle, degrees, where the code does not say it.',
      'a contact angle in degrees',
      10,
      60,
      '45',
    ),
    'house-code': text(
      'code',
      'house-code',
      'Code of the house for it, as in the workshop file.',
      'DB-17',
    ).optional(),
  } satisfies Shape<PartValues>),
  spacer: z.strictObject(spacerKeys),
  shim: z.strictObject(thinSpacerKeys),
  washer: z.strictObject(thinSpacerKeys),
  collar: z.strictObject({
    length: partLength('Length of the shoulder that is part of the axle', '10 ±0.05'),
    outside,
    inside: bore(
      'inside',
      'Bore of the axle inside it, mm; that of the axle where nothing is written.',
      '12.1',
    ).optional(),
  } satisfies Shape<PartValues>),
  adjuster: z.strictObject({
    length: partLength('Length in mid position', '6'),
    outside,
    inside,
    travel: length('travel', 'How far it can be moved from end to end, mm.', '1.5').optional(),
    thread: text('thread', 'thread', 'Thread it runs on.', 'M20x1').optional(),
    set: value('torque', readSet, {
      title: 'set',
      description: 'What it is set to: a torque, or a play in mm.',
      examples: ['0.5 N·m', '0.02'],
    }).optional(),
    material,
  } satisfies Shape<PartValues>),
  'wave-washer': z.strictObject({
    length: partLength('Height as assembled', '1.2'),
    free: length('free', 'Height when free, mm.', '1.8').optional(),
    rate: quantity('rate', 'rate', 'Spring rate, N/mm.', '40 N/mm').optional(),
    outside,
    inside,
    material,
  } satisfies Shape<PartValues>),
  cone: z.strictObject({
    length: partLength('From its outer face to the middle of its ball track', '12'),
    outside,
    inside,
    thread: text('thread', 'thread', 'Thread it runs on.', 'M10x1').optional(),
    material,
    balls,
    groove,
    set: offset(
      'set',
      'Axial play the cones are set to on the bench, before the clamp, mm.',
      '0.04 ±0.01',
    ).optional(),
  } satisfies Shape<PartValues>),
  locknut: z.strictObject({
    length: partLength('Thickness', '5'),
    outside,
    inside,
    thread: text('thread', 'thread', 'Thread it runs on.', 'M10x1').optional(),
    material,
  } satisfies Shape<PartValues>),
} satisfies Record<StackKind, z.ZodType>;
