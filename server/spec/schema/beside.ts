import * as z from 'zod';
import type { BesideKind, BesideValues } from '../beside-model.ts';
import { readBesidePlace } from '../small-values.ts';
import { bore, length, type Shape, shaft, text, value } from './value.ts';

const at = value('place', readBesidePlace, {
  title: 'at',
  description: 'Where it begins, mm: from the left dropout face, or from the left face of a named part.',
  examples: ['14.2 ±0.1', '2.5 from bearing.left'],
});
const common = {
  at,
  length: length('length', 'Length along the axle, mm.', '3').optional(),
  outside: shaft('outside', 'Outside diameter, mm.', '28').optional(),
  material: text('material', 'material', 'What it is made of.', 'rubber').optional(),
} satisfies Shape<BesideValues>;
const gap = length('gap', 'Gap wanted to it, mm; the actual one is computed.', '0.3 ±0.1').optional();
const running = {
  inside: bore('inside', 'Inside diameter, mm.', '18').optional(),
  to: text('address', 'to', 'The part it runs against.', 'end-cap.left').optional(),
  gap,
} satisfies Shape<BesideValues>;
const face = {
  to: text(
    'address',
    'to',
    'What its gap is taken to: a part, or a dropout face; by default dropout.left of a rotor face, dropout.right of a driver face.',
    'dropout.left',
  ).optional(),
  gap,
} satisfies Shape<BesideValues>;

/** Keys of each kind of part outside the clamped line. */
export const besideSchemas = {
  seal: z.strictObject({ ...common, ...running }),
  cover: z.strictObject({ ...common, ...running }),
  'rotor-face': z.strictObject({ ...common, ...face }),
  'driver-face': z.strictObject({ ...common, ...face }),
} satisfies Record<BesideKind, z.ZodType>;
