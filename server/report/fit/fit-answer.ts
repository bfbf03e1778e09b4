import { classWithoutLimits, settle } from '../../assembly/settle.ts';
import type { DecodedBearing } from '../../engine/bearings/decoded-bearing.ts';
import { ringDeviations } from '../../engine/bearings/ring-deviations.ts';
import { type Fit, fit as fitOf } from '../../engine/fits/fit.ts';
import { lightAlloyAdvice, type Usualness, usualness } from '../../engine/fits/recommended-fits.ts';
import { parseFitClass } from '../../engine/fits/tolerance-zone.ts';
import { readDimension } from '../../spec/dimension.ts';
import type { Dimension } from '../../spec/model.ts';

/** A size with its deviations, mm. */
export interface FitSide {
  readonly nominal: number;
  readonly lower: number;
  readonly upper: number;
}

/** A seat or a journal held against a ring. Clearances in mm, negative is interference. */
export interface FitAnswer {
  readonly written: string;
  readonly on: 'outside' | 'bore';
  readonly part: FitSide;
  readonly ring: FitSide;
  readonly clearance: { readonly min: number; readonly mean: number; readonly max: number };
  readonly kind: Fit['kind'];
  /** False where the two are different sizes and no fit at all. */
  readonly sameSize: boolean;
  readonly usual: Usualness | null;
  readonly assumed: string | null;
  /** ISO 492 class the ring limits are taken from. */
  readonly ringClass: string;
  /** The same with the documents it was read in: for a list of sources. */
  readonly source: string;
  readonly advice: string | null;
}

/** Nominals further apart than this, mm, are two sizes and not a fit. */
const sameSizeWithin = 0.2;

/**
 * Holds a written diameter (`26 N7`, `17 h6`, `N7`, `26 -0.01/-0.03`) against the ring of a bearing it fits: a
 * capital letter is a seat for the outside, a small one a journal for the bore; without a class the nearer diameter
 * decides. An error where the text is no diameter.
 */
export function fitAnswer(written: string, bearing: DecodedBearing): FitAnswer | { readonly error: string } {
  const text = withSize(written, bearing);
  const on = sideOf(text, bearing);
  const read = readDimension(text, on === 'outside' ? 'bore' : 'shaft');
  if ('problem' in read) return { error: read.problem.message };
  const unknown = classWithoutLimits(read.dimension);
  if (unknown !== null) return { error: `${text} has no limits: ${unknown}` };
  const { drawn, built, assumed } = settle(
    { value: read.dimension, path: [] },
    { untoleranced: null, measuring: 0.02 },
  );
  const part = built ?? drawn;
  const deviations = ringDeviations(bearing);
  const ring: FitSide = { nominal: bearing[on], ...deviations[on] };
  const relative = {
    lower: part.nominal + part.lower - ring.nominal,
    upper: part.nominal + part.upper - ring.nominal,
  };
  const { minClearance, maxClearance, kind } =
    on === 'outside' ? fitOf(relative, ring) : fitOf(ring, relative);
  return {
    written: text,
    on,
    part,
    ring,
    clearance: { min: minClearance, mean: (minClearance + maxClearance) / 2, max: maxClearance },
    kind,
    sameSize: Math.abs(part.nominal - ring.nominal) <= sameSizeWithin,
    usual: usualFor(read.dimension, on),
    assumed,
    ringClass: deviations.class,
    source: deviations.source,
    advice: on === 'outside' ? lightAlloyAdvice.text : null,
  };
}

/** A class alone takes the nominal of the ring it is for. */
function withSize(written: string, bearing: DecodedBearing): string {
  const text = written.trim();
  const alone = parseFitClass(text);
  if (!alone) return text.replace(/^([\d.]+)\s*(?=[A-Za-z]{1,2}\d{1,2}$)/, '$1 ');
  return `${alone.kind === 'hole' ? bearing.outside : bearing.bore} ${text}`;
}

function sideOf(text: string, bearing: DecodedBearing): FitAnswer['on'] {
  const fitClass = parseFitClass(/[A-Za-z]{1,2}\d{1,2}$/.exec(text)?.[0] ?? '');
  if (fitClass) return fitClass.kind === 'hole' ? 'outside' : 'bore';
  const size = Number.parseFloat(text.replace(/^[^\d]*/, ''));
  return Math.abs(size - bearing.bore) < Math.abs(size - bearing.outside) ? 'bore' : 'outside';
}

function usualFor({ nominal, tolerance }: Dimension, on: FitAnswer['on']): Usualness | null {
  if (tolerance.kind !== 'class') return null;
  const { letters, grade } = tolerance;
  return usualness(nominal, { letters, grade, kind: on === 'outside' ? 'hole' : 'shaft' });
}
