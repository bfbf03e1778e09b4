/** The JSON shapes that the README documents, strict: a key that it does not name fails. */
import { z } from 'zod';

const place = z.strictObject({ line: z.int().min(0), character: z.int().min(0) });
const range = z.strictObject({ start: place, end: place });
const finding = z.strictObject({
  code: z.string().regex(/^[a-z]+(-[a-z]+)*$/),
  severity: z.enum(['error', 'warning', 'information', 'hint']),
  message: z.string().min(10),
  range,
  related: z.array(z.strictObject({ path: z.string(), range, message: z.string() })),
  data: z.record(z.string(), z.unknown()),
});

/** `check` */
export const checkShape = z.strictObject({
  files: z.array(
    z.strictObject({
      path: z.string(),
      findings: z.array(finding),
      allowed: z.array(finding.extend({ reason: z.string().min(1) })),
    }),
  ),
  unread: z.array(z.strictObject({ path: z.string(), message: z.string() })).optional(),
});

const pair = z.tuple([z.number(), z.number()]);
const open = z.tuple([z.number(), z.number().nullable()]);
const share = z.number().min(0).max(1);
const figures = {
  nominal: z.number().nullable(),
  mean: z.number().nullable(),
  worst: pair.nullable(),
  rss: pair.nullable(),
};
const width = z.strictObject({
  ...figures,
  limits: pair.nullable(),
  shareOutside: share.nullable(),
  shareOutsideOneBatch: share.nullable(),
  contributions: z.array(z.strictObject({ address: z.string(), share })),
});
const yields = { yield: share, shareLoaded: share, sharePlayHigh: share };
const contributions = z.array(z.strictObject({ address: z.string(), share }));
const builds = {
  yield: share.nullable(),
  shareLoaded: share.nullable(),
  sharePlayHigh: share.nullable(),
  shareLoose: share.nullable(),
  oneBatch: z.strictObject(yields).nullable(),
  playContributions: contributions,
};
const distances = {
  inner: z.number().nullable(),
  outer: z.number().nullable(),
  delta: z.number().nullable(),
  deltaMean: z.number().nullable(),
  deltaWorst: pair.nullable(),
  deltaRss: pair.nullable(),
};
const spread = z.strictObject({ min: z.number(), mean: z.number(), max: z.number() });
const addressed = z.strictObject({ address: z.string() });
const known = z.number().nullable();
const angles = z.strictObject({ nominal: z.number(), mounted: z.number() });
const ends = z
  .strictObject({ playUnclamped: pair, playClamped: pair, ballLoad: pair, contactStress: pair })
  .optional();
const setBy = z
  .strictObject({
    kind: z.enum(['adjuster', 'spring']),
    address: z.string(),
    play: known,
    preload: known,
    rate: known,
    rings: z.enum(['together', 'apart']),
  })
  .optional();
const play = {
  axialClearanceUm: z.number().min(0).nullable(),
  playUnclamped: known,
  playShoulders: known,
  playClamped: z.number().min(0).nullable(),
  clampShortening: known,
  ballLoad: z.number().min(0).nullable(),
  spacerLoad: known,
  staticShare: known,
  turningTorque: z.strictObject({ load: z.number().min(0), seals: known }).nullable(),
  contactStress: z.number().min(0).nullable(),
  ...builds,
  setBy,
  range: ends,
  assumptions: z.array(z.string()),
  missing: z.string().optional(),
};
const bearings = z
  .array(
    addressed.extend({
      interferenceUm: spread.nullable(),
      pressure: z.number().min(0).nullable(),
      clearanceLossUm: z.number().min(0).nullable(),
      mountedClearanceUm: spread.nullable(),
      axialClearanceUm: z.number().min(0).nullable(),
      contactAngle: angles.optional(),
      ballLoad: z.number().min(0).nullable(),
      contactStress: z.number().min(0).nullable(),
    }),
  )
  .length(2);
const line = {
  housing: z.enum(['shell', 'freehub']),
  playUnclamped: known,
  playClamped: z.number().min(0).nullable(),
  bearings: z
    .array(
      addressed.extend({
        force: known,
        contactStress: z.number().min(0).nullable(),
        outerRingSlides: z.boolean().nullable(),
      }),
    )
    .min(3),
  spacerLoads: z.array(z.number().min(0)).nullable(),
};
const cones = z
  .strictObject({
    races: z.tuple([z.string(), z.string()]),
    cones: z.array(
      addressed.extend({
        balls: z
          .strictObject({
            count: z.int(),
            diameter: z.number(),
            circle: z.number(),
            gap: z.number(),
            most: z.int(),
          })
          .nullable(),
        contactAngle: z.number(),
      }),
    ),
    leave: known,
    turn: known,
    set: known,
    axleForce: known,
    playClamped: known,
    ballLoad: known,
    contactStress: known,
    dentShare: known,
    shareLoaded: known,
    sharePlayHigh: known,
    missing: z.array(z.string()),
    assumptions: z.array(z.string()),
  })
  .or(z.strictObject({ missing: z.array(z.string()) }))
  .nullable();
const gap = { ...figures, shareOutside: share.nullable() };

/** `stack` */
export const stackShape = z.strictObject({
  file: z.string(),
  variants: z.array(
    z.strictObject({
      name: z.string().nullable(),
      width: width.extend({ measured: width.optional() }),
      pairs: z.array(
        z.strictObject({
          housing: z.enum(['shell', 'freehub']),
          ...distances,
          ...play,
          located: z.enum(['shoulders', 'spacer', 'side-by-side']),
          bearings,
          measured: z.strictObject({ ...distances, ...play, bearings }).optional(),
        }),
      ),
      lines: z.array(z.strictObject({ ...line, measured: z.strictObject(line).optional() })),
      cones,
      gaps: z.array(
        z.strictObject({
          between: z.tuple([z.string(), z.string()]),
          role: z.string(),
          ...gap,
          wanted: open.optional(),
          measured: z.strictObject(gap).optional(),
        }),
      ),
      seats: z.array(
        z.strictObject({
          seat: z.string(),
          bearings: z.array(addressed).min(1),
          recess: z.strictObject(figures),
          measured: z.strictObject({ recess: z.strictObject(figures) }).optional(),
        }),
      ),
      unchecked: z.array(z.strictObject({ what: z.string(), missing: z.string() })),
      assumed: z.array(z.string()),
    }),
  ),
});

const deviation = z.strictObject({ lower: z.number(), upper: z.number() });

/** `bearing`, decoded */
export const bearingShape = z.strictObject({
  code: z.string(),
  kind: z.enum(['deep-groove', 'angular-contact', 'double-row-angular-contact']),
  bore: z.number(),
  outside: z.number(),
  width: z.number(),
  chamferMin: z.number().nullable(),
  closure: z.enum(['open', 'shield', 'seal']),
  rubs: z.boolean().nullable(),
  clearance: z.strictObject({
    group: z.string(),
    minUm: z.number().nullable(),
    maxUm: z.number().nullable(),
  }),
  toleranceClass: z.enum(['Normal', '6', '5', '4', '2']),
  contactAngle: z.number().optional(),
  dynamicRating: z.number().optional(),
  staticRating: z.number().optional(),
  balls: z.strictObject({ count: z.int(), diameter: z.number(), source: z.string() }).optional(),
  sources: z.array(z.string()).min(1),
  notes: z.array(z.string()),
  normalised: z.string(),
  houseCode: z.string().nullable(),
  standardEquivalent: z.string().nullable(),
  basis: z.enum(['iso-rule', 'table', 'digits', 'size', 'inch']),
  widthOpen: z.number().nullable(),
  widthClosed: z.number().nullable(),
  closedSides: z.int().min(0).max(2),
  material: z.enum(['steel', 'stainless', 'hybrid', 'unknown']),
  fullComplement: z.boolean(),
  cage: z.string().nullable(),
  ambiguousSuffixes: z.array(z.strictObject({ suffix: z.string(), meanings: z.array(z.string()) })),
  deviations: z.strictObject({ bore: deviation, outside: deviation, width: deviation, source: z.string() }),
});

/** `bearing`, not decoded */
export const notDecodedShape = z.strictObject({
  code: z.string(),
  error: z.string(),
  didYouMean: z.array(z.string()),
});

const size = z.strictObject({ bore: z.number(), outside: z.number(), width: z.number() });
const candidate = size.extend({
  code: z.string(),
  closed: z.boolean().nullable(),
  off: size,
  within: z.boolean(),
  trap: z.string().nullable(),
  basis: z.string(),
  note: z.string().nullable(),
});

/** `identify` */
export const identifyShape = z.strictObject({
  measured: size,
  uncertainty: size,
  candidates: z.array(candidate),
  nearMisses: z.array(candidate),
});

const side = z.strictObject({ nominal: z.number(), lowerUm: z.number(), upperUm: z.number() });

/** `fit` */
export const fitShape = z.strictObject({
  fit: z.string(),
  code: z.string(),
  size,
  on: z.enum(['outside', 'bore']),
  part: side,
  ring: side,
  clearance: z.strictObject({ minUm: z.number(), meanUm: z.number(), maxUm: z.number() }),
  kind: z.enum(['clearance', 'transition', 'interference']),
  sameSize: z.boolean(),
  usual: z
    .strictObject({
      verdict: z.enum(['usual', 'tighter', 'looser']),
      classes: z.array(z.string()),
      why: z.string(),
    })
    .nullable(),
  sources: z.array(z.string()),
  notes: z.array(z.string()),
});

const fitMount = z.strictObject({
  madeUm: spread,
  interferenceUm: spread,
  pressure: spread,
  clearanceLossUm: spread,
  wallHoop: z.number(),
  wallHoopRange: spread,
  ringHoop: z.number(),
  wallYield: known,
  pressForce: z.strictObject({ min: z.number(), typical: z.number(), max: z.number() }),
  freeAt: known,
  freeAtRange: pair.nullable(),
  warming: z
    .strictObject({
      part: z.enum(['housing', 'inner ring']),
      difference: z.number().min(0),
      to: z.number(),
      possible: z.boolean(),
    })
    .nullable(),
});
const between = z.tuple([z.string(), z.string()]);
const mounting = {
  name: z.string().nullable(),
  temperature: z.number(),
  temperatures: z.strictObject({ inner: z.number(), outer: z.number() }).optional(),
  clampForce: known,
  bearings: z.array(
    z.strictObject({
      address: z.string(),
      code: z.string(),
      seat: z.string().nullable(),
      outer: fitMount.nullable(),
      inner: fitMount.nullable(),
      compoundHolds: z.strictObject({ min: z.number(), typical: z.number(), max: z.number() }).optional(),
      freeClearanceUm: pair.nullable(),
      thermalLossUm: z.number(),
      shareWithoutClearance: share.nullable(),
      mountedClearanceUm: spread.nullable(),
      axialClearanceUm: known,
      axialRangeUm: pair.optional(),
      contactAngle: angles.optional(),
    }),
  ),
  pairs: z.array(
    z.strictObject({
      housing: z.enum(['shell', 'freehub']),
      bearings: between,
      delta: z.number(),
      axialClearanceUm: z.number().min(0).nullable(),
      playUnclamped: known,
      playShoulders: known,
      playClamped: known,
      clampShortening: known,
      ballLoad: known,
      spacerLoad: known,
      contactStress: known,
      dentShare: known,
      turningTorque: z.strictObject({ load: z.number().min(0), seals: known }).nullable(),
      staticShare: known,
      loadedBy: z.enum(['nothing', 'short', 'long']).nullable(),
      grip: z.number(),
      slid: z.enum(['no', 'left', 'right', 'either']),
      rimRock: known,
      ...builds,
      setBy,
      range: ends,
      assumptions: z.array(z.string()),
    }),
  ),
  lines: z.array(z.strictObject(line)),
  cones,
  unchecked: z.array(z.strictObject({ what: z.string(), missing: z.string() })),
  service: z.array(
    z.strictObject({
      temperature: z.number(),
      bearings: z.array(
        z.strictObject({
          address: z.string(),
          interferenceUm: known,
          mountedClearanceUm: known,
          shareWithoutClearance: share.nullable(),
        }),
      ),
      pairs: z.array(z.strictObject({ bearings: between, playClamped: known, ballLoad: known })),
    }),
  ),
  assumptions: z.array(z.string()),
  cautions: z.array(z.string()),
};

/** `mount` */
export const mountShape = z.strictObject({
  file: z.string(),
  variants: z.array(z.strictObject({ ...mounting, measured: z.strictObject(mounting).optional() })),
});

const spacer = z.union([
  z.strictObject({ bearings: between, missing: z.string() }),
  z.strictObject({
    bearings: between,
    spacer: z.string(),
    from: z.number(),
    tolerance: pair,
    to: z.number(),
    ...yields,
    now: z.strictObject(yields),
    oneBatch: z.strictObject(yields),
    shareLoose: share,
    shareWithoutClearance: share,
    playClamped: z.number(),
    range: pair.nullable(),
    widestTolerance: z.number().min(0).nullable(),
    contributions,
    allocation: z
      .strictObject({
        yieldAllExact: share,
        clearanceGroup: z.string().nullable(),
        proposals: z.array(
          z.strictObject({
            method: z.enum(['proportional', 'equal']),
            to: z.number(),
            yield: share,
            tolerances: z.array(
              z.strictObject({ address: z.string(), from: z.number().min(0), to: z.number().min(0), share }),
            ),
          }),
        ),
      })
      .nullable(),
    options: z.array(
      z.strictObject({
        kind: z.enum([
          'spacer-tolerance',
          'length-tolerances',
          'clearance-group',
          'group-and-lengths',
          'play-limit',
        ]),
        group: z.string().nullable(),
        tolerance: known,
        mostPlay: z.number(),
        to: z.number(),
        yield: share,
        reaches: z.boolean(),
      }),
    ),
    assumptions: z.array(z.string()),
  }),
]);

/** `solve` */
export const solveShape = z.strictObject({
  file: z.string(),
  for: z.literal('play'),
  wanted: z.strictObject({ yield: share, playLeast: z.number(), playMost: z.number() }),
  variants: z.array(
    z.strictObject({
      name: z.string().nullable(),
      pairs: z.array(spacer),
      measured: z.array(spacer).optional(),
    }),
  ),
});

const traced = {
  name: z.string(),
  value: z.number(),
  unit: z.enum(['mm', 'N', 'MPa', '°C', 'mm/N', 'mm²', 'km', '°', '1']),
};

/** `explain FILE ADDRESS` */
export const traceShape = z.strictObject({
  file: z.string(),
  variant: z.string().nullable(),
  address: z.string(),
  steps: z
    .array(
      z.strictObject({
        ...traced,
        formula: z.string().nullable(),
        source: z.string().nullable(),
        inputs: z.array(z.strictObject(traced)),
        assumptions: z.array(z.string()),
      }),
    )
    .min(1),
});
