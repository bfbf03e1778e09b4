import * as z from 'zod';
import { readQuantity } from '../quantity.ts';
import { readCount } from '../small-values.ts';
import { bore, choice, length, offset, opens, quantity, text, value } from './value.ts';

const count = (title: string, description: string, what: string, hi: number, example: string) =>
  value('count', (written) => readCount(written, what, 0, hi, example), {
    title,
    description,
    examples: [example],
  }).optional();

/** A force with a tolerance: `1100 ±100 N`. */
const tension = value(
  'force',
  (written) => {
    const reading = readQuantity(written.replace(/\s*(?:±|\+\/?-)\s*[\d.]+/, ''), 'force');
    return 'problem' in reading
      ? { problem: { ...reading.problem, at: [0, written.length] } }
      : { value: { ...reading.quantity, written } };
  },
  { title: 'value', description: 'Tension of the spokes of that side, N.', examples: ['1100 ±100 N'] },
);

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
      examples: ['{ erd: 596.5 ±0.5, holes: 32 }'],
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
      description: 'Tension wanted on one side.',
      examples: ['{ side: right, value: 1100 ±100 N }'],
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
      ['nipple-seat', 'nipple-end', 'spoke-end'],
      'erd-to',
      'Where the effective rim diameter is measured to.',
    ).optional(),
    holes: count('holes', 'Number of spoke holes.', 'the number of spoke holes', 72, '32'),
    offset: offset(
      'offset',
      'Offset of the holes from the mid-plane, mm, towards the left positive.',
      '0',
    ).optional(),
    'hole-offset': offset('hole-offset', 'How far left and right holes are staggered, mm.', '0').optional(),
    'hole-diameter': bore('hole-diameter', 'Diameter of a spoke hole, mm.', '4.5').optional(),
    mass: quantity('mass', 'mass', 'Mass of the rim, g.', '495 g').optional(),
    'tension-limit': quantity(
      'force',
      'tension-limit',
      'Highest tension of a spoke, N.',
      '1250 N',
    ).optional(),
    material: text('material', 'material', 'What it is made of.', 'aluminium 6061').optional(),
  }),
  'wheel:lacing': z.strictObject(sides('wheel:lacing-side', 'Lacing', '{ crosses: 3, heads: alternate }')),
  'wheel:lacing-side': z.strictObject({
    crosses: count(
      'crosses',
      'How many other spokes of its flange a spoke crosses.',
      'the number of crossings',
      5,
      '3',
    ),
    heads: choice(
      ['alternate', 'in', 'out'],
      'heads',
      'Which way the heads look: alternating, all inwards, all outwards.',
    ).optional(),
  }),
  'wheel:spokes': z.strictObject(
    sides('wheel:spoke-side', 'Spokes', '{ length: 289, profile: 2.0/1.8/2.0 }'),
  ),
  'wheel:spoke-side': z.strictObject({
    length: length('length', 'Length of a spoke, mm.', '289').optional(),
    profile: text('profile', 'profile', 'Diameters from head to thread, mm.', '2.0/1.8/2.0').optional(),
    material: text('material', 'material', 'What it is made of.', 'stainless').optional(),
  }),
  'wheel:nipples': z.strictObject({
    length: length('length', 'Length of a nipple, mm.', '12').optional(),
    material: text('material', 'material', 'What it is made of.', 'brass').optional(),
  }),
  'wheel:tension': z.strictObject({
    side: choice(['left', 'right'], 'side', 'The side the value is for.').optional(),
    value: tension.optional(),
  }),
  'wheel:rider': z.strictObject({
    mass: quantity('mass', 'mass', 'Mass of the rider, kg.', '95 kg').optional(),
  }),
};
