import * as z from 'zod';
import type {
  CupValues,
  FlangeValues,
  HousingValues,
  RetainingRingValues,
  SeatSleeveValues,
  SeatValues,
} from '../model.ts';
import { readCount, readNumber } from '../small-values.ts';
import { bore, choice, length, opens, quantity, type Shape, shaft, text, value, yesNo } from './value.ts';

const material = text('material', 'material', 'What it is made of.', 'aluminium 6061').optional();
const housingKeys = {
  material,
  outside: shaft(
    'outside',
    'Diameter around the seats, mm: the wall that carries the press fit; for a freehub the root of its splines.',
    '34',
  ).optional(),
  'between-shoulders': length(
    'between-shoulders',
    'Distance between the two shoulders its bearings stop at, mm.',
    '62.05 ±0.02',
  ).optional(),
  through: bore('through', 'Bore between the seats, mm.', '23').optional(),
  length: length('length', 'Length from end face to end face, mm.', '72 ±0.05').optional(),
} satisfies Shape<HousingValues>;
const seats = opens('seats', {
  title: 'seats',
  description: 'The bores the outer rings sit in, by name: left, right.',
  examples: ['left: { bore: 26 N7, depth: 5 +0.05/0, stop: shoulder }'],
}).optional();

export const housingSchemas = {
  shell: z.strictObject({
    ...housingKeys,
    seats,
    flanges: opens('flanges', {
      title: 'flanges',
      description: 'The flanges the spokes hook into, left and right.',
      examples: ['left: { holes: 16, circle: 38, from-centre: 35 }'],
    }).optional(),
    cups: opens('cups', {
      title: 'cups',
      description: 'The cups of a cup-and-cone hub, left and right.',
      examples: ['left: { ball-circle: 24, contact-angle: 45 }'],
    }).optional(),
  }),
  freehub: z.strictObject({
    ...housingKeys,
    gap: length(
      'gap',
      'Running gap wanted to the shell, mm; the actual one is computed.',
      '0.5 ±0.2',
    ).optional(),
    seats,
  }),
};

export const seatSchema = z.strictObject({
  bore: bore(
    'bore',
    'Diameter the outer ring is pressed into, mm, with its fit class or deviations.',
    '26 N7',
  ),
  depth: length('depth', 'From the end face of the housing to the stop, mm.', '5 +0.05/0').optional(),
  land: length(
    'land',
    'Length of the full-fit cylinder where it is shorter than the depth, mm.',
    '4.5',
  ).optional(),
  from: choice(
    ['left', 'right'],
    'from',
    'The side the bearing is pressed in from; the nearer one where nothing is written.',
  ).optional(),
  stop: choice(
    ['shoulder', 'spacer', 'ring'],
    'stop',
    'What locates the outer ring: a shoulder in the bore, the inner spacer alone, or a retaining ring.',
  ).optional(),
  fillet: length(
    'fillet',
    "Radius in the corner of the shoulder, mm: smaller than the bearing's chamfer.",
    '0.2',
  ).optional(),
  'shoulder-bore': bore('shoulder-bore', "Diameter at the shoulder's inner edge, mm.", '23').optional(),
  compound: yesNo('compound', 'Whether a retaining compound holds the ring.').optional(),
  'retaining-ring': opens('retaining-ring', {
    title: 'retaining-ring',
    description: 'The ring that holds the bearing in its seat.',
    examples: ['{ side: open, thickness: 1.2, groove-width: 1.3, groove-from-face: 1 }'],
  }).optional(),
  sleeve: opens('seat-sleeve', {
    title: 'sleeve',
    description:
      'A sleeve between shell and outer ring, held in the shell: the bore of the seat is its bore.',
    examples: ['{ outside: 30, material: steel }'],
  }).optional(),
} satisfies Shape<SeatValues> & { 'retaining-ring': z.ZodType; sleeve: z.ZodType });

export const seatSleeveSchema = z.strictObject({
  outside: shaft('outside', 'Outside diameter of the sleeve, mm.', '30').optional(),
  material,
} satisfies Shape<SeatSleeveValues>);

export const retainingRingSchema = z.strictObject({
  side: choice(
    ['open', 'blind'],
    'side',
    'Which side of the bearing it is on: the open end of the seat or its blind end.',
  ).optional(),
  thickness: length('thickness', 'Thickness of the ring, mm.', '1.2 0/-0.06').optional(),
  'groove-width': length('groove-width', 'Width of the groove in the housing, mm.', '1.3 +0.14/0').optional(),
  'groove-from-face': length(
    'groove-from-face',
    'From the end face of the housing to the near side of the groove, mm.',
    '1 ±0.05',
  ).optional(),
  size: bore('size', 'Bore the ring is made for, mm.', '26').optional(),
} satisfies Shape<RetainingRingValues>);

export const flangeSchema = z.strictObject({
  holes: value('count', (written) => readCount(written, 'the number of spoke holes', 1, 72, '16'), {
    title: 'holes',
    description: 'Number of spoke holes in this flange.',
    examples: ['16'],
  }).optional(),
  circle: length('circle', 'Diameter of the circle through the spoke holes, mm.', '38').optional(),
  'from-centre': length(
    'from-centre',
    'From the mid-plane of the hub to the middle of the flange, mm, for the hub as written.',
    '35 ±0.1',
  ).optional(),
  hole: bore('hole', 'Diameter of a spoke hole, mm.', '2.6').optional(),
  thickness: length('thickness', 'Thickness of the flange at the holes, mm.', '3.2').optional(),
  'pair-distance': length(
    'pair-distance',
    'Distance of the two holes of a pair, along the chord, mm, where the holes stand in pairs.',
    '12',
  ).optional(),
  kind: choice(['straight-pull', 'bent'], 'kind', 'Spokes with a bent head or straight ones.').optional(),
  'head-circle': length(
    'head-circle',
    'Straight-pull: diameter of the circle the heads sit on, mm.',
    '42',
  ).optional(),
  'head-setback': length(
    'head-setback',
    'Straight-pull: how far the head sits behind the line to the centre, mm.',
    '6',
  ).optional(),
  'tension-limit': quantity(
    'force',
    'tension-limit',
    'Highest tension of a spoke that this flange bears, N.',
    '1200 N',
  ).optional(),
} satisfies Shape<FlangeValues>);

export const cupSchema = z.strictObject({
  'ball-circle': length(
    'ball-circle',
    'Diameter of the circle through the ball centres, mm.',
    '24',
  ).optional(),
  'contact-angle': value(
    'number',
    (written) =>
      readNumber(written.replace(/\s*(?:°|deg)\s*$/, ''), 'the contact angle in degrees', 0, 90, '45'),
    { title: 'contact-angle', description: 'Angle of contact of the balls, degrees.', examples: ['45'] },
  ).optional(),
} satisfies Shape<CupValues>);
