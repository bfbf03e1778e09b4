/** The JSON shape of `plan` that the README documents, strict: a key that it does not name fails. */
import { z } from 'zod';

const side = z.enum(['left', 'right']);
const address = z.string().min(1);
const force = z
  .strictObject({ min: z.number().min(0), typical: z.number().min(0), max: z.number().min(0) })
  .nullable();
const relief = z.strictObject({ from: z.number(), to: z.number() }).nullable();
const support = z.strictObject({
  under: z.enum(['housing', 'inner-ring', 'axle']),
  part: address,
  side,
  inside: z.number(),
  outside: z.number().nullable(),
});
const limits = z.strictObject({ lo: z.number(), hi: z.number() });
const toMake = z.strictObject({ nominal: z.number(), lower: z.number(), upper: z.number() });
const bare = z.number().min(0);

const pressedIn = z.strictObject({
  bearing: address,
  pushed: z.enum(['bearing', 'axle']),
  ring: z.enum(['outer', 'inner', 'both']),
  why: z.enum(['tight-in-seat', 'tight-on-axle', 'both-tight', 'stopped-by-spacer']),
  into: address,
  driver: z.strictObject({
    outside: toMake,
    inside: toMake,
    accepted: z.strictObject({ outside: limits, inside: limits }),
  }),
  onWall: z.array(z.string()).nullable(),
  pilot: z.strictObject({ from: z.number(), to: z.number(), by: z.enum(['axle', 'pin']) }),
  path: z.array(z.strictObject({ from: z.number(), to: z.number(), fit: z.enum(['tight', 'loose']) })),
  relief,
  below: z.number().nullable(),
  force,
  warming: z.strictObject({ to: z.number().max(80), dropsIn: z.boolean() }).nullable(),
  compound: z.boolean(),
  support: z.array(support),
  stop: z.enum(['shoulder', 'spacer', 'ring', 'bearing', 'axle']),
  touches: address.nullable(),
});

const pressedOut = z.strictObject({
  bearing: address,
  from: address,
  ring: z.enum(['outer', 'inner', 'both']),
  reach: z.discriminatedUnion('by', [
    z.strictObject({ by: z.literal('outer-ring'), bare }),
    z.strictObject({ by: z.literal('inner-ring'), bare }),
    z.strictObject({ by: z.literal('part'), part: address }),
    z.strictObject({ by: z.literal('drift'), bare, aside: address.nullable(), room: z.number() }),
    z.strictObject({ by: z.literal('extractor'), size: z.number(), ledge: z.number() }),
    z.strictObject({ by: z.literal('none'), bare, inTheWay: address.nullable() }),
  ]),
  scrap: z.boolean(),
  ringsFirst: z.array(address),
  relief,
  force,
  compound: z.boolean(),
  support: support.nullable(),
});

const step = {
  part: address,
  moving: z.array(address).min(1),
  held: z.array(address).min(1),
  side,
  towards: side,
  travel: z.number().min(0),
  on: z.enum(['hub', 'bench']),
  balls: z.array(
    z.strictObject({ part: address, count: z.int().nullable(), diameter: z.number().nullable() }),
  ),
  words: z.strictObject({ head: z.string().min(5), details: z.array(z.string().min(3)) }),
};
const ring = { seat: address, size: z.number().nullable(), holds: z.array(address) };
const threads = z.array(address).min(1);

/** `plan` */
export const planShape = z.strictObject({
  file: z.string(),
  variants: z.array(
    z.strictObject({
      name: z.string().nullable(),
      apart: z.array(
        z.discriminatedUnion('kind', [
          z.strictObject({ kind: z.literal('slide-off'), ...step }),
          z.strictObject({ kind: z.literal('unscrew'), ...step, threads }),
          z.strictObject({ kind: z.literal('take-ring-out'), ...step, ...ring }),
          z.strictObject({ kind: z.literal('press-out'), ...step, pressed: z.array(pressedOut).min(1) }),
        ]),
      ),
      together: z.array(
        z.discriminatedUnion('kind', [
          z.strictObject({ kind: z.literal('slide-on'), ...step }),
          z.strictObject({ kind: z.literal('screw-on'), ...step, threads }),
          z.strictObject({ kind: z.literal('put-ring-in'), ...step, ...ring }),
          z.strictObject({ kind: z.literal('press-in'), ...step, pressed: z.array(pressedIn).min(1) }),
        ]),
      ),
      locked: z.array(address).min(2).nullable(),
      overlaps: z.array(z.tuple([address, address])),
      measure: z.array(z.string()),
      assumptions: z.array(z.string()),
      cautions: z.array(z.string()).min(3),
      checks: z.array(z.string()).min(1),
    }),
  ),
});
