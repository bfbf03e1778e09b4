import * as z from 'zod';
import { readQuantity } from '../quantity.ts';
import { type Reading, readNumber } from '../small-values.ts';
import { readSpokeProfile } from '../spoke-profile.ts';
import type { LacingValues, SpokeValues, TensionValues, TensionWanted } from '../wheel-model.ts';
import { choice, count, length, opens, quantity, type Shape, text, value, yesNo } from './value.ts';

export const lacingSideSchema = z.strictObject({
  crosses: count(
    'crosses',
    'How many other spokes of its flange a spoke crosses; 0 is radial.',
    'the number of crossings',
    5,
    '3',
  ),
  heads: choice(
    ['alternate', 'in', 'out'],
    'heads',
    'Which way the heads look: alternating, all inwards, all outwards.',
  ).optional(),
  interlaced: yesNo('interlaced', 'Whether the last crossing goes under the other spoke.').optional(),
  outside: choice(
    ['leading', 'trailing'],
    'outside',
    'Which spokes run along the outside of the flange, their heads looking inwards.',
  ).optional(),
  phase: choice(
    ['wider', 'narrower'],
    'phase',
    'Where holes do not stand evenly: whether a spoke goes to the rim hole that widens or the one that narrows the angle from its hub hole.',
  ).optional(),
} satisfies Shape<LacingValues>);

export const spokeSideSchema = z.strictObject({
  length: length(
    'length',
    'Length of a spoke, mm: from the inside of the elbow to the end.',
    '289',
  ).optional(),
  'head-in-length': length(
    'head-in-length',
    'Length of the spokes whose heads look inwards, where it differs, mm.',
    '289',
  ).optional(),
  'head-out-length': length(
    'head-out-length',
    'Length of the spokes whose heads look outwards, where it differs, mm.',
    '288',
  ).optional(),
  profile: value('profile', readSpokeProfile, {
    title: 'profile',
    description:
      'Diameters from head to thread, mm; the blade of a flat spoke as width x thickness in the middle.',
    examples: ['2.0/1.8/2.0', '2.0/2.3x0.9/2.0'],
  }).optional(),
  material: text('material', 'material', 'What it is made of.', 'stainless').optional(),
  thread: choice(
    ['FG 2', 'FG 2.3', 'FG 2.6'],
    'thread',
    'Thread of the spoke (DIN 79012); by the diameter of its end where nothing is written.',
  ).optional(),
  'thread-length': length('thread-length', 'Length of the thread, mm.', '9.5').optional(),
  'tension-limit': quantity(
    'force',
    'tension-limit',
    'Highest tension of the spoke, N.',
    '1400 N',
  ).optional(),
} satisfies Shape<SpokeValues>);

/** A force with or without a tolerance: `1100 ±100 N`. */
function readTension(written: string): Reading<TensionWanted> {
  const spread = /(?:±|\+\/?-)\s*(\S+?)(?=\s*[^\d.,\s]|\s*$)/.exec(written);
  const bare = spread ? written.replace(spread[0], '') : written;
  const reading = readQuantity(bare, 'force');
  if ('problem' in reading) return { problem: { ...reading.problem, at: [0, written.length] } };
  const { quantity: force } = reading;
  if (!spread) return { value: { ...force, written, spread: null } };
  const width = readNumber(spread[1] ?? '', 'how far the tension may stray', 0, 1e5, '100');
  if ('problem' in width) return { problem: { ...width.problem, at: [0, written.length] } };
  const own = readQuantity(bare.replace(/[\d.]+/, '1'), 'force');
  const factor = 'problem' in own ? 1 : own.quantity.value;
  return { value: { ...force, written, spread: width.value * factor } };
}

export const tensionSchema = z.strictObject({
  side: choice(['left', 'right'], 'side', 'The side the value is for.').optional(),
  value: value('force', readTension, {
    title: 'value',
    description: 'Tension of the spokes of that side, N.',
    examples: ['1100 ±100 N'],
  }).optional(),
  measured: opens('wheel:measured', {
    title: 'measured',
    description: 'Tensions as read from a meter, N, one a spoke, from the valve on.',
    examples: ['left: [980, 1010, 995]'],
  }).optional(),
} satisfies Shape<TensionValues> & { measured: z.ZodType });

const readings = (side: string) =>
  opens(
    'wheel:measured',
    {
      title: side,
      description: `Tensions of the ${side} side, N, one a spoke, from the valve on.`,
      examples: ['[980, 1010, 995]'],
    },
    'numbers',
  ).optional();

export const measuredSchema = z.strictObject({ left: readings('left'), right: readings('right') });
