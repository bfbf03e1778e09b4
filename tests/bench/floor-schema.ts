import { z } from 'zod';

const text = z.union([z.string(), z.number(), z.boolean()]);
const open = z.record(z.string(), z.unknown());

/** A hub file by its keys alone: what any reader with a schema must do, and nothing more. */
export const floorSchema = z.strictObject({
  hub: text,
  revision: text.optional(),
  position: z.enum(['front', 'rear']),
  width: text,
  shell: open.optional(),
  axle: z.record(z.string(), text).optional(),
  stack: z.array(
    z.strictObject({
      'end-cap': text.optional(),
      bearing: text.optional(),
      spacer: text.optional(),
      code: text.optional(),
      seat: text.optional(),
      length: text.optional(),
      face: text.optional(),
      inside: text.optional(),
      outside: text.optional(),
      bore: text.optional(),
      socket: text.optional(),
      material: text.optional(),
    }),
  ),
  clamp: text.optional(),
  variants: z
    .record(
      z.string(),
      z.strictObject({
        width: text.optional(),
        change: z.record(z.string(), z.record(z.string(), text)).optional(),
        clamp: text.optional(),
        notes: z.string().optional(),
      }),
    )
    .optional(),
});
