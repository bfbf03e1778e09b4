import * as z from 'zod';
import type { GeneralTolerance, HubValues } from '../model.ts';
import { readTemperatureRange } from '../quantity.ts';
import type { Reading } from '../small-values.ts';
import { choice, length, opens, type Shape, text, value } from './value.ts';

/** `ISO 2768-m`; the letter alone is taken too. */
function readGeneralTolerance(written: string): Reading<GeneralTolerance> {
  const match = /^\s*(?:(?:DIN\s+)?(?:EN\s+)?ISO\s*2768\s*(?:-1)?\s*[-\s]\s*)?([fmc])[HKL]?\s*$/i.exec(
    written,
  );
  if (match?.[1]) return { value: match[1].toLowerCase() as GeneralTolerance };
  const message = `${written.trim()} is no general tolerance read here: ISO 2768-f, ISO 2768-m, ISO 2768-c`;
  return {
    problem: { code: 'value-not-understood', message, at: [0, written.length], suggestion: 'ISO 2768-m' },
  };
}

const axle = opens('axle', {
  title: 'axle',
  description: 'The axle the inner rings sit on.',
  examples: ['{ material: aluminium 7075, diameter: 17 h6, bore: 12.1 }'],
}).optional();
const clamp = opens('clamp', {
  title: 'clamp',
  description: 'What squeezes the stack: a force, or a torque with its thread and friction.',
  examples: ['5 kN', '{ torque: 12 N·m, thread: M12x1.5 }'],
}).optional();
const shell = opens('housing:shell', {
  title: 'shell',
  description: 'The hub shell: its seats, shoulders and flanges.',
  examples: ['{ between-shoulders: 62.05 ±0.02 }'],
}).optional();
const freehub = opens('housing:freehub', {
  title: 'freehub',
  description: 'The driven body with its own bearings.',
  examples: ['{ between-shoulders: 20 ±0.02, gap: 0.5 ±0.2 }'],
}).optional();
const width = length(
  'width',
  'Face to face over the end caps, mm: the over-locknut dimension, with its tolerance.',
  '100 ±0.2',
);
const notes = text('text', 'notes', 'Free text.', 'bench-fitted, see the drawing').optional();

export const hubSchema = z.strictObject({
  hub: text('name', 'hub', 'Name of the hub.', 'Dunlin front'),
  revision: text('text', 'revision', 'Revision of the drawing.', 'B').optional(),
  position: choice(['front', 'rear'], 'position', 'Which wheel it is for: front or rear.'),
  width,
  untoleranced: value(
    'choice',
    readGeneralTolerance,
    {
      title: 'untoleranced',
      description: 'General tolerance for every length without its own (ISO 2768-1 classes f, m, c).',
      examples: ['ISO 2768-m'],
    },
    { choices: ['ISO 2768-f', 'ISO 2768-m', 'ISO 2768-c'] },
  ).optional(),
  shell,
  freehub,
  axle,
  stack: opens(
    'stack',
    {
      title: 'stack',
      description: 'What the dropouts clamp, from left to right: end caps, bearings, spacers.',
      examples: ['- end-cap: left'],
    },
    'list',
  ),
  beside: opens(
    'beside',
    {
      title: 'beside',
      description: 'Parts outside the clamped line: seals, covers, faces.',
      examples: ['- seal: left'],
    },
    'list',
  ).optional(),
  clamp,
  temperature: value(
    'temperature',
    (written) => {
      const reading = readTemperatureRange(written);
      return 'problem' in reading ? reading : { value: reading.range };
    },
    { title: 'temperature', description: 'Range of temperature in service, °C.', examples: ['-10..45 °C'] },
  ).optional(),
  duty: opens('duty', {
    title: 'duty',
    description: 'What the hub goes through: use, water, rider.',
    examples: ['{ use: gravel, water: mud, rider: 95 kg }'],
  }).optional(),
  service: text(
    'text',
    'service',
    'What whoever services it should know; free text.',
    'grease once a year',
  ).optional(),
  variants: opens('variants', {
    title: 'variants',
    description:
      'The same hub with other end caps or parts, by name; the hub as written is the first, unnamed one.',
    examples: ['thru-15:'],
  }).optional(),
  notes,
} satisfies Shape<HubValues> & Record<string, z.ZodType>);

const changes = (title: string, description: string) => ({
  title,
  description,
  examples: ['end-cap.left: { bore: 15.05 }'],
});

export const variantSchema = z.strictObject({
  width: width.optional(),
  change: opens('change', changes('change', 'Parts changed key by key, by their address.')).optional(),
  replace: opens('replace', changes('replace', 'Parts replaced as a whole, by their address.')).optional(),
  add: opens(
    'add',
    {
      title: 'add',
      description: 'Parts added, each after or before a part of the stack.',
      examples: ['- { shim: left, length: 0.1, after: end-cap.left }'],
    },
    'list',
  ).optional(),
  remove: opens(
    'remove',
    { title: 'remove', description: 'Addresses of parts left out.', examples: ['[washer.left]'] },
    'list',
  ).optional(),
  axle,
  clamp,
  shell,
  freehub,
  notes,
});

/** Beside the keys of its kind, an added part says where it goes. */
export const addedSchema = z.strictObject({
  after: text('address', 'after', 'The part it comes to the right of.', 'end-cap.left').optional(),
  before: text('address', 'before', 'The part it comes to the left of.', 'end-cap.right').optional(),
});
