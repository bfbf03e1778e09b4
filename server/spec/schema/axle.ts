import * as z from 'zod';
import type { AxleValues, ClampValues, DutyValues } from '../model.ts';
import { readNumber } from '../small-values.ts';
import { bore, choice, length, numberBetween, quantity, type Shape, shaft, text, value } from './value.ts';

const friction = (title: string, description: string) =>
  value('number', (written) => readNumber(written, 'a coefficient of friction', 0, 1, '0.15'), {
    title,
    description,
    examples: ['0.15'],
  }).optional();

export const axleSchema = z.strictObject({
  material: text('material', 'material', 'What the axle is made of.', 'aluminium 7075').optional(),
  diameter: shaft('diameter', 'Diameter of the bearing journals, mm.', '17 h6').optional(),
  bore: bore('bore', 'Diameter of the hole for the through-axle or skewer, mm.', '12.1').optional(),
  length: length('length', 'Length from end to end, mm.', '90 ±0.05').optional(),
} satisfies Shape<AxleValues>);

export const clampSchema = z.strictObject({
  force: quantity('force', 'force', 'Force that squeezes the stack, N or kN.', '5 kN').optional(),
  torque: quantity(
    'torque',
    'torque',
    'Torque the axle or nut is tightened to; the force computed from it says what was assumed.',
    '12 N·m',
  ).optional(),
  thread: text('thread', 'thread', 'Thread that is tightened.', 'M12x1.5').optional(),
  friction: friction('friction', 'Friction in the thread.'),
  'head-friction': friction('head-friction', 'Friction under the head or nut.'),
  through: choice(
    ['stack', 'axle'],
    'through',
    'What the force runs through: the stack, or (a skewer on a cup-and-cone hub) the axle, which it shortens.',
  ).optional(),
} satisfies Shape<ClampValues>);

export const dutySchema = z.strictObject({
  use: choice(
    ['road', 'gravel', 'off-road', 'track', 'city', 'cargo'],
    'use',
    'What the hub is ridden on.',
  ).optional(),
  water: choice(['dry', 'rain', 'mud'], 'water', 'How wet it gets.').optional(),
  rider: quantity('mass', 'rider', 'Mass of the rider, kg.', '95 kg').optional(),
  bicycle: quantity('mass', 'bicycle', 'Mass of the bicycle with all it carries, kg.', '12 kg').optional(),
  share: numberBetween(
    'share',
    'Share of the weight of rider and bicycle that rests on this wheel, 0 to 1.',
    'a share of the weight',
    0,
    1,
    '0.45',
  ),
  circumference: length('circumference', 'What the tyre rolls in one turn, mm.', '2150').optional(),
} satisfies Shape<DutyValues>);
