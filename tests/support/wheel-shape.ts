/** The JSON shape of `wheel` that the README documents, strict: a key that it does not name fails. */
import { z } from 'zod';

const number = z.number();
const side = z.enum(['left', 'right']);

const group = z.strictObject({
  side,
  group: z.enum(['head-in', 'head-out', 'straight-pull']),
  direction: z.enum(['leading', 'trailing', 'both']),
  count: number,
  length: z
    .strictObject({
      exact: number,
      corrected: number,
      chosen: number,
      proposed: number,
      written: number.nullable(),
      stray: number,
    })
    .nullable(),
  span: number,
  angle: number,
  engagement: number.nullable(),
  end: number.nullable(),
  crossing: z
    .strictObject({
      crosses: number,
      lean: number,
      neighbour: number,
      verdict: z.enum(['free', 'over the next head', 'over the next hole', 'past the tangent']),
      most: number,
    })
    .nullable(),
});

const sideTension = z.strictObject({
  value: number,
  most: number,
  mostFrom: z.enum(['the rim', 'the spoke', 'the hub', 'common practice']),
  least: number,
  withTyre: z.strictObject({ lo: number, hi: number }).nullable(),
});

const readings = z
  .strictObject({
    count: number,
    mean: number,
    least: number,
    most: number,
    spread: number,
    deviation: number,
    outliers: z.array(
      z.strictObject({ spoke: number, tension: number, share: number, turns: number.nullable() }),
    ),
  })
  .nullable();

export const wheelShape = z.strictObject({
  file: z.string(),
  hub: z.strictObject({ file: z.string(), name: z.string(), variant: z.string().nullable() }).nullable(),
  groups: z.array(group),
  tension: z
    .strictObject({
      left: number,
      right: number,
      ratio: number,
      rimCompression: number,
      set: z.strictObject({ side, value: number, spread: number.nullable(), written: z.boolean() }),
      sides: z.strictObject({ left: sideTension, right: sideTension }),
    })
    .nullable(),
  stiffness: z.strictObject({ lateral: number, radial: number, tangential: number }).nullable(),
  buckling: z.strictObject({ tension: number, mode: number, share: number }).nullable(),
  slackLoad: z
    .strictObject({
      radial: number,
      radialSide: side,
      lateral: z.strictObject({ left: number, right: number }),
      ridden: z.strictObject({ weight: number, sideForce: number, left: number, right: number }),
    })
    .nullable(),
  measured: z
    .strictObject({
      left: readings,
      right: readings,
      ratio: number.nullable(),
      balance: number,
      off: number.nullable(),
    })
    .nullable(),
  unchecked: z.array(z.strictObject({ what: z.string(), missing: z.string() })),
  assumptions: z.array(z.string()),
});
