import type { Analysis, VariantAnalysis } from '../analysis/analyze.ts';
import type { ToMeasure } from './bodies.ts';
import type { Body } from './body.ts';
import { type Hubwork, hubworkOf } from './hubwork.ts';
import { priceOf } from './price.ts';
import type { Step } from './step.ts';
import { stepApart, stepTogether } from './steps.ts';
import { lockedBodies, takeApart } from './take-apart.ts';

/** The order of work at one hub. */
export interface Plan {
  readonly variant: string | null;
  /** The pieces in their places, as the order was found with. */
  readonly bodies: readonly Body[];
  /** From the whole hub to single parts; as far as it goes where parts lock each other. */
  readonly apart: readonly Step[];
  /** From single parts to the whole hub; empty where parts lock each other. */
  readonly together: readonly Step[];
  /** Parts that hold each other both ways for good, with nothing else needed to hold them; null where all comes apart. */
  readonly locked: readonly string[] | null;
  /** Parts drawn into each other: what is said of them may be wrong. */
  readonly clashes: readonly (readonly [string, string])[];
  /** Dimensions nobody wrote that the order rests on. */
  readonly measure: readonly ToMeasure[];
  /** Sentences, one for each thing assumed. */
  readonly assumed: readonly string[];
}

/**
 * The order in which a variant comes apart and goes together, found from its rings alone. Each half of it is worked
 * out when first asked for and kept as long as the variant, so typing never waits for it.
 */
export function planOf(variant: VariantAnalysis, analysis: Pick<Analysis, 'workshop' | 'limits'>): Plan {
  const known = kept.get(variant);
  if (known) return known;
  const { workshop, limits } = analysis;
  const made =
    mostParts < variant.assembly.line.length
      ? tooMany(variant)
      : makePlan(hubworkOf(variant, { workshop, warmest: limits.value('fitting-temperature') }));
  kept.set(variant, made);
  return made;
}

const kept = new WeakMap<VariantAnalysis, Plan>();

/** No hub has as many; the search grows with the cube of them, and nobody should wait for a slip of the keyboard. */
const mostParts = 60;

function tooMany(variant: VariantAnalysis): Plan {
  const count = variant.assembly.line.length;
  return {
    variant: variant.name,
    bodies: [],
    apart: [],
    together: [],
    locked: null,
    clashes: [],
    measure: [],
    assumed: [`no order is looked for: the stack has ${count} parts, ${mostParts} at most`],
  };
}

function makePlan(work: Hubwork): Plan {
  const { variant, bodies, blocking, ties, measure, assumed } = work;
  const locked = once(() => lockedBodies(bodies, blocking));
  const apart = once(() =>
    takeApart(bodies, blocking, ties, priceOf('apart', work)).moves.map((move) => stepApart(move, work)),
  );
  const together = once(() => {
    if (locked()) return [];
    const { moves } = takeApart(bodies, blocking, ties, priceOf('together', work));
    return [...moves].reverse().map((move) => stepTogether(move, work));
  });
  return {
    variant: variant.name,
    bodies,
    get apart() {
      return apart();
    },
    get together() {
      return together();
    },
    get locked() {
      return locked();
    },
    clashes: blocking.clashes,
    measure,
    assumed: [...assumed, ...untold(work)],
  };
}

/** Works something out when first asked. */
function once<T>(make: () => T): () => T {
  let made: { readonly value: T } | null = null;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}

/** Fits that are taken to be tight since a dimension of theirs is not written. */
function untold({ ties }: Hubwork): readonly string[] {
  return ties.flatMap((tie) =>
    tie.kind === 'press' && tie.fit === null
      ? [
          `${tie.a} is taken to be tight in the ${tie.b}: bore of its seat or outside of the ${tie.b} is not written with its limits`,
        ]
      : [],
  );
}
