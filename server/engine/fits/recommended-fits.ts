import type { SourceId } from '../base/sources.ts';
import { type FitClass, toleranceZone } from './tolerance-zone.ts';

/** One line of advice that several makers' tables share. */
export interface Recommendation {
  /** Tolerance class as written. */
  readonly fit: string;
  /** The same position one grade finer, where the tables name it. */
  readonly finer: readonly string[];
  /** When to take it, as part of a sentence. */
  readonly when: string;
  readonly sources: readonly SourceId[];
}

/*
 * The wheel turns and the load stays where it is: each point of the outer ring passes under the load, so it
 * creeps in a loose seat; the inner ring is loaded in one place and may slide on its axle.
 */

/** Housing classes for an outer ring that turns with the wheel, loosest first. They are for steel and cast iron. */
export const rotatingOuterRingHousings: readonly Recommendation[] = [
  {
    fit: 'M7',
    finer: ['M6'],
    when: 'light or changing load, up to a twentieth of the dynamic rating',
    sources: ['nsk-e1102e', 'ntn-2203e', 'skf-2017', 'schaeffler-hr1'],
  },
  {
    fit: 'N7',
    finer: ['N6'],
    when: 'normal to heavy load, a wheel hub on ball bearings',
    sources: ['nsk-e1102e', 'ntn-2203e', 'skf-2017', 'schaeffler-hr1'],
  },
  {
    fit: 'P7',
    finer: ['P6'],
    when: 'heavy or shock load, or a thin wall round the bearing',
    sources: ['nsk-e1102e', 'ntn-2203e', 'skf-2017', 'schaeffler-hr1'],
  },
];

/** Axle classes under an inner ring that stands still, loosest first. */
export const stationaryInnerRingAxles: readonly Recommendation[] = [
  {
    fit: 'g6',
    finer: ['g5'],
    when: 'an inner ring that is to slide on the axle by hand, as in a wheel on a standing axle',
    sources: ['nsk-e1102e', 'ntn-2203e', 'skf-general', 'schaeffler-hr1'],
  },
  {
    fit: 'h6',
    finer: ['h5'],
    when: 'an inner ring that need not slide by hand',
    sources: ['nsk-e1102e', 'ntn-2203e', 'schaeffler-hr1'],
  },
];

/** What else the makers' tables say of light alloy and thin walls: tighter than the class above, no number given. */
export const lightAlloyAdvice: { readonly text: string; readonly sources: readonly SourceId[] } = {
  text: 'the tables are for steel and cast iron; in a light alloy or thin-walled shell the seat is to be tighter',
  sources: ['nsk-e1102e', 'ntn-2203e', 'skf-2017', 'schaeffler-hr1'],
};

/**
 * Interference wanted in an aluminium shell for each millimetre of outside diameter, mm/mm. The only number
 * found, and written for tapered roller bearings of cars.
 */
export const aluminiumInterferencePerDiameter: {
  readonly value: number;
  readonly sources: readonly SourceId[];
} = { value: 0.001, sources: ['timken-taper'] };

/** Where a class stands against what is usual for a wheel. */
export interface Usualness {
  readonly verdict: 'usual' | 'tighter' | 'looser';
  /** The usual classes, loosest first. */
  readonly usual: readonly string[];
  /** Why, as a sentence without a full stop. */
  readonly why: string;
  readonly sources: readonly SourceId[];
}

/**
 * Whether a class at a size is usual for a wheel bearing: a housing for the turning outer ring, an axle for
 * the standing inner ring. Classes that the tables do not name are placed by the middle of their limits
 * against the loosest and the tightest usual class. Null where the class has no limits at that size.
 */
export function usualness(size: number, fit: FitClass): Usualness | null {
  const table = fit.kind === 'hole' ? rotatingOuterRingHousings : stationaryInnerRingAxles;
  const usual = table.map((line) => line.fit);
  const name = `${fit.letters}${fit.grade}`;
  const named = table.find((line) => line.fit === name || line.finer.includes(name));
  if (named) return { verdict: 'usual', usual, why: `usual for ${named.when}`, sources: named.sources };

  const middle = middleOfLimits(size, fit);
  const ends = table.flatMap((line) => middleOfLimits(size, classOf(line.fit, fit.kind)) ?? []);
  if (middle === null || ends.length === 0) return null;
  const sources: readonly SourceId[] = [...new Set(table.flatMap((line) => line.sources))];
  // A smaller hole and a larger shaft are the tighter ones.
  const tightness = fit.kind === 'hole' ? -1 : 1;
  const placed = ends.map((end) => (middle - end) * tightness);
  if (placed.every((difference) => difference < 0))
    return { verdict: 'looser', usual, why: LOOSER[fit.kind], sources };
  if (placed.every((difference) => difference > 0))
    return { verdict: 'tighter', usual, why: TIGHTER[fit.kind], sources };
  return { verdict: 'usual', usual, why: 'between the usual classes', sources };
}

const LOOSER = {
  hole: 'the outer ring turns under the load and creeps in a seat this loose',
  shaft: 'more room between inner ring and axle than the usual sliding fit leaves',
} as const;

const TIGHTER = {
  hole: 'takes more of the internal clearance than the usual classes; in a light alloy or thin-walled shell that can be wanted',
  shaft: 'the inner ring stands still under the load and need not be tight; it no longer slides into place',
} as const;

function classOf(text: string, kind: FitClass['kind']): FitClass {
  return { letters: text.slice(0, -1), grade: Number(text.slice(-1)), kind };
}

function middleOfLimits(size: number, fit: FitClass): number | null {
  const zone = toleranceZone(size, fit);
  return 'error' in zone ? null : (zone.lower + zone.upper) / 2;
}
