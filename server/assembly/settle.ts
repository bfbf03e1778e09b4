import { micrometres, plain } from '../engine/base/figures.ts';
import { toleranceZone } from '../engine/fits/tolerance-zone.ts';
import { generalTolerance } from '../engine/tables/iso2768-linear.ts';
import type { Dimension, GeneralTolerance } from '../spec/model.ts';
import type { Placed, SpecPath } from '../spec/place.ts';

/** A nominal with its deviations, mm. */
export interface Limits {
  readonly nominal: number;
  readonly lower: number;
  readonly upper: number;
}

/** A written dimension with its tolerance settled: as drawn, and as built where it was measured. */
export interface Settled {
  readonly drawn: Limits;
  /** The reading with its uncertainty, or null where nothing was measured. */
  readonly built: Limits | null;
  readonly path: SpecPath;
  /** What was taken for granted, as a sentence; null when everything was written. */
  readonly assumed: string | null;
}

/** What a file says of dimensions without a tolerance and readings without an uncertainty. */
export interface SettlingRules {
  readonly untoleranced: GeneralTolerance | null;
  /** ± mm */
  readonly measuring: number;
}

/** Nominal plus the middle of its deviations, mm. */
export function meanOf(limits: Limits): number {
  return limits.nominal + (limits.lower + limits.upper) / 2;
}

/** Lowest and highest size, mm. */
export function sizeRange(limits: Limits): readonly [number, number] {
  return [limits.nominal + limits.lower, limits.nominal + limits.upper];
}

/** The limits a part has today: measured where it was measured, else as drawn. */
export function asBuilt(settled: Settled): Limits {
  return settled.built ?? settled.drawn;
}

/** Settles the tolerance of a dimension: written, by class, by the general tolerance, or exact and said so. */
export function settle(placed: Placed<Dimension>, rules: SettlingRules): Settled {
  const known = settledBefore.get(placed);
  if (known && known.untoleranced === rules.untoleranced && known.measuring === rules.measuring) {
    return known.settled;
  }
  const settled = settleAnew(placed, rules);
  settledBefore.set(placed, { settled, untoleranced: rules.untoleranced, measuring: rules.measuring });
  return settled;
}

/** What a dimension came to: variants share most of theirs with the hub as written. */
const settledBefore = new WeakMap<Placed<Dimension>, SettlingRules & { readonly settled: Settled }>();

function settleAnew(placed: Placed<Dimension>, rules: SettlingRules): Settled {
  const { value: dimension, path } = placed;
  const reading = dimension.measured;
  const uncertainty = reading ? (reading.uncertainty ?? rules.measuring) : 0;
  const built = reading ? { nominal: reading.value, lower: -uncertainty, upper: uncertainty } : null;
  const readingAssumed =
    reading && reading.uncertainty === null
      ? `reading taken as ±${micrometres(uncertainty)}, the workshop's measuring uncertainty`
      : null;
  if (!dimension.drawn && built) return { drawn: built, built, path, assumed: readingAssumed };

  const drawn = drawnLimits(dimension, rules);
  const assumed = [drawn.assumed, readingAssumed].filter((text) => text !== null).join('; ');
  return { drawn: drawn.limits, built, path, assumed: assumed === '' ? null : assumed };
}

function drawnLimits(dimension: Dimension, rules: SettlingRules): { limits: Limits; assumed: string | null } {
  const { nominal, tolerance } = dimension;
  if (tolerance.kind === 'limits') {
    return { limits: { nominal, lower: tolerance.lower, upper: tolerance.upper }, assumed: null };
  }
  if (tolerance.kind === 'class') {
    const { letters, grade } = tolerance;
    const zone = zoneOf(nominal, letters, grade);
    if (!('error' in zone))
      return { limits: { nominal, lower: zone.lower, upper: zone.upper }, assumed: null };
    return {
      limits: { nominal, lower: 0, upper: 0 },
      assumed: `${plain(nominal)} ${letters}${grade} taken as exact: ${zone.error}`,
    };
  }
  const general = rules.untoleranced ? generalTolerance(nominal, rules.untoleranced) : null;
  if (general !== null) {
    return {
      limits: { nominal, lower: -general, upper: general },
      assumed: `${plain(nominal)} taken as ±${plain(general)} by ISO 2768-${rules.untoleranced}`,
    };
  }
  return {
    limits: { nominal, lower: 0, upper: 0 },
    assumed: `${plain(nominal)} taken as exact: no tolerance is written`,
  };
}

/** Why the fit class of a dimension has no limits; null where it has, or where no class is written. */
export function classWithoutLimits({ nominal, tolerance }: Dimension): string | null {
  if (tolerance.kind !== 'class') return null;
  const zone = zoneOf(nominal, tolerance.letters, tolerance.grade);
  return 'error' in zone ? zone.error : null;
}

function zoneOf(nominal: number, letters: string, grade: number): ReturnType<typeof toleranceZone> {
  return toleranceZone(nominal, {
    letters,
    grade,
    kind: letters === letters.toUpperCase() ? 'hole' : 'shaft',
  });
}
