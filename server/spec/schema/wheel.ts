import * as z from 'zod';
import type { NippleValues, RiderValues, RimValues, TyreValues } from '../wheel-model.ts';
import {
  bore,
  choice,
  count,
  length,
  numberBetween,
  offset,
  opens,
  quantity,
  type Shape,
  text,
} from './value.ts';
import { lacingSideSchema, measuredSchema, spokeSideSchema, tensionSchema } from './wheel-side.ts';

const sides = (section: 'wheel:lacing-side' | 'wheel:spoke-side', what: string, example: string) => ({
  left: opens(section, {
    title: 'left',
    description: `${what} of the left side.`,
    examples: [example],
  }).optional(),
  right: opens(section, {
    title: 'right',
    description: `${what} of the right side.`,
    examples: [example],
  }).optional(),
});

const rimStiffness = (title: string, what: string, example: string) =>
  quantity('stiffness', title, `${what}, N·m².`, example).optional();

export const wheelSchemas = {
  wheel: z.strictObject({
    wheel: text('name', 'wheel', 'Name of the wheel.', 'Dunlin touring front'),
    hub: text('file', 'hub', 'The hub file it is built on.', './dunlin-front.hub.yaml'),
    variant: text(
      'name',
      'variant',
      'Variant of the hub; the hub as written where nothing stands.',
      'thru-15',
    ).optional(),
    rim: opens('wheel:rim', {
      title: 'rim',
      description: 'The rim.',
      examples: ['{ erd: 596.5 ±0.5, erd-to: nipple-seat, holes: 32 }'],
    }).optional(),
    lacing: opens('wheel:lacing', {
      title: 'lacing',
      description: 'How the spokes cross.',
      examples: ['left: { crosses: 3 }'],
    }).optional(),
    spokes: opens('wheel:spokes', {
      title: 'spokes',
      description: 'The spokes, left and right.',
      examples: ['left: { length: 289 }'],
    }).optional(),
    nipples: opens('wheel:nipples', {
      title: 'nipples',
      description: 'The nipples.',
      examples: ['{ length: 12, material: brass }'],
    }).optional(),
    tension: opens('wheel:tension', {
      title: 'tension',
      description: 'Tension wanted on one side, and the tensions measured.',
      examples: ['{ side: right, value: 1100 ±100 N }'],
    }).optional(),
    tyre: opens('wheel:tyre', {
      title: 'tyre',
      description: 'The tyre, which takes some tension from the spokes when it is inflated.',
      examples: ['{ width: 32, pressure: 4.5 bar }'],
    }).optional(),
    rider: opens('wheel:rider', {
      title: 'rider',
      description: 'Who rides it.',
      examples: ['{ mass: 95 kg }'],
    }).optional(),
    notes: text('text', 'notes', 'Free text.', 'second wheel of the pair').optional(),
  }),
  'wheel:rim': z.strictObject({
    'bead-seat': length('bead-seat', 'Bead seat diameter, mm.', '622').optional(),
    erd: length('erd', 'Effective rim diameter, mm: to where erd-to says.', '596.5 ±0.5').optional(),
    'erd-to': choice(
      ['nipple-seat', 'slot-bottom', 'nipple-top'],
      'erd-to',
      'Where the effective rim diameter is measured to: the rim where the nipple rests, the bottom of its slot, or the top of its head.',
    ).optional(),
    holes: count('holes', 'Number of spoke holes.', 'the number of spoke holes', 72, '32'),
    drilling: choice(
      ['even', 'paired', '2:1'],
      'drilling',
      'How the holes are spaced: evenly; in pairs, one left and one right; or evenly with every third hole for the side with fewer spokes.',
    ).optional(),
    'pair-distance': length(
      'pair-distance',
      'Distance of the two holes of a pair, along the chord, mm.',
      '22',
    ).optional(),
    offset: offset(
      'offset',
      'Offset of the holes from the plane the rim is centred on, mm, towards the left positive.',
      '2.8',
    ).optional(),
    'hole-offset': offset(
      'hole-offset',
      "How far each side's holes stand off their common line, mm: towards their own flange positive, across negative.",
      '2',
    ).optional(),
    'hole-diameter': bore('hole-diameter', 'Diameter of a spoke hole, mm.', '4.5').optional(),
    mass: quantity('mass', 'mass', 'Mass of the rim, g.', '495 g').optional(),
    'tension-limit': quantity(
      'force',
      'tension-limit',
      'Highest tension of a spoke, N.',
      '1250 N',
    ).optional(),
    'pressure-limit': quantity(
      'pressure',
      'pressure-limit',
      'Highest tyre pressure of the rim, bar.',
      '6 bar',
    ).optional(),
    material: text('material', 'material', 'What it is made of.', 'aluminium 6061').optional(),
    area: numberBetween(
      'area',
      'Area of its cross-section, mm².',
      'the area of a cross-section, mm²',
      10,
      2000,
      '82',
    ),
    'radial-stiffness': rimStiffness(
      'radial-stiffness',
      'Stiffness E·I of the rim against bending in its plane',
      '110 N·m²',
    ),
    'lateral-stiffness': rimStiffness(
      'lateral-stiffness',
      'Stiffness E·I of the rim against bending sideways',
      '200 N·m²',
    ),
    'torsional-stiffness': rimStiffness(
      'torsional-stiffness',
      'Stiffness G·J of the rim against twisting',
      '25 N·m²',
    ),
  } satisfies Shape<RimValues>),
  'wheel:lacing': z.strictObject(sides('wheel:lacing-side', 'Lacing', '{ crosses: 3, heads: alternate }')),
  'wheel:lacing-side': lacingSideSchema,
  'wheel:spokes': z.strictObject(
    sides('wheel:spoke-side', 'Spokes', '{ length: 289, profile: 2.0/1.8/2.0 }'),
  ),
  'wheel:spoke-side': spokeSideSchema,
  'wheel:nipples': z.strictObject({
    length: length('length', 'Length of a nipple, mm.', '12').optional(),
    material: text('material', 'material', 'What it is made of: brass or aluminium.', 'brass').optional(),
    'seat-to-slot': length(
      'seat-to-slot',
      'From the face that rests on the rim to the bottom of the slot, mm.',
      '2',
    ).optional(),
    washer: length('washer', 'Thickness of a washer under its head, mm.', '0.5').optional(),
  } satisfies Shape<NippleValues>),
  'wheel:tension': tensionSchema,
  'wheel:measured': measuredSchema,
  'wheel:tyre': z.strictObject({
    width: length('width', 'Width of the inflated tyre, mm.', '32').optional(),
    pressure: quantity('pressure', 'pressure', 'Pressure it is ridden at, bar.', '4.5 bar').optional(),
  } satisfies Shape<TyreValues>),
  'wheel:rider': z.strictObject({
    mass: quantity('mass', 'mass', 'Mass of the rider, kg.', '95 kg').optional(),
    share: numberBetween(
      'share',
      'Share of the weight of rider and bicycle that rests on this wheel, 0 to 1.',
      'a share of the weight',
      0,
      1,
      '0.55',
    ),
    bicycle: quantity('mass', 'bicycle', 'Mass of the bicycle with all it carries, kg.', '12 kg').optional(),
    'side-force': quantity(
      'force',
      'side-force',
      'Force from the side at the rim that the spokes should stand without one going slack, N.',
      '150 N',
    ).optional(),
  } satisfies Shape<RiderValues>),
};
