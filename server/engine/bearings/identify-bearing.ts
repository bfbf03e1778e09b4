import { ringWidthDeviation } from '../tables/iso492-deviations.ts';
import type { DecodedBearing } from './decoded-bearing.ts';
import { type KnownBearing, knownBearings } from './known-bearings.ts';

/** Three lengths of one bearing, mm. */
export interface BearingSize {
  readonly bore: number;
  readonly outside: number;
  readonly width: number;
}

/** A bearing that a measured one may be; lengths in mm. */
export interface Candidate extends BearingSize {
  readonly code: string;
  /** True when only the closed version has this width, false when only the open one, null when both do. */
  readonly closed: boolean | null;
  /** Measured less nominal. */
  readonly off: BearingSize;
  /** Whether each length agrees within the reading and the ring's own tolerance. */
  readonly within: boolean;
  /** For a near miss, what sets it apart from the measured one, in words. */
  readonly trap: string | null;
  readonly basis: DecodedBearing['basis'];
  readonly note: string | null;
}

/** Uncertainty of callipers on a worn bearing, which reads 0.02 to 0.05 off (common practice), mm. */
export const calliperUncertainty: BearingSize = { bore: 0.05, outside: 0.05, width: 0.05 };

/** Ring diameters are made up to 0.015 mm under nominal: the widest ISO 492 class Normal range used here, mm. */
const ringUnder = 0.015;
/** How far a near miss may be off and still be mistaken for the measured one, mm (common practice). */
const nearMiss: BearingSize = { bore: 0.75, outside: 2.05, width: 2.05 };
const mostNearMisses = 8;

/**
 * Names the bearings that a measured bore, outside and width (mm) may be, best first, and the near misses that are
 * easily taken for it. Ring widths run up to 0.12 mm under nominal by ISO 492, and that is allowed for.
 */
export function identifyBearing(
  measured: BearingSize,
  uncertainty: BearingSize = calliperUncertainty,
): { readonly candidates: readonly Candidate[]; readonly nearMisses: readonly Candidate[] } {
  const candidates: (Candidate & { score: number })[] = [];
  const nearMisses: (Candidate & { score: number })[] = [];
  for (const known of knownBearings()) {
    const off = difference(measured, known);
    if (!isNear(off, uncertainty)) continue;
    const within = isWithin(off, known, uncertainty);
    const candidate = {
      code: known.code,
      bore: known.bore,
      outside: known.outside,
      width: known.width,
      closed: known.closed,
      off,
      within,
      trap: within ? null : trap(off, uncertainty),
      basis: known.basic.basis,
      note: known.basic.notes[0] ?? null,
      score: score(off, known),
    };
    (within ? candidates : nearMisses).push(candidate);
  }
  const byScore = (a: { score: number }, b: { score: number }): number => a.score - b.score;
  const strip = ({ score: _, ...candidate }: Candidate & { score: number }): Candidate => candidate;
  return {
    candidates: candidates.sort(byScore).map(strip),
    nearMisses: distinct(nearMisses.sort(byScore), candidates).slice(0, mostNearMisses).map(strip),
  };
}

/**
 * Codes that the tables and rules give for a bore, an outside or a width (mm), within a tolerance (mm), commonest in
 * hubs first: the codes that fit a seat.
 */
export function bearingsFitting(
  query: Partial<BearingSize>,
  tolerance = 0.001,
): readonly ({ readonly code: string } & BearingSize)[] {
  const fits = (wanted: number | undefined, value: number): boolean =>
    wanted === undefined || Math.abs(wanted - value) <= tolerance;
  return knownBearings()
    .filter((b) => fits(query.bore, b.bore) && fits(query.outside, b.outside) && fits(query.width, b.width))
    .map(({ code, bore, outside, width }) => ({ code, bore, outside, width }));
}

function difference(measured: BearingSize, known: BearingSize): BearingSize {
  return {
    bore: round(measured.bore - known.bore),
    outside: round(measured.outside - known.outside),
    width: round(measured.width - known.width),
  };
}

function isNear(off: BearingSize, uncertainty: BearingSize): boolean {
  return (
    Math.abs(off.bore) <= nearMiss.bore + uncertainty.bore &&
    Math.abs(off.outside) <= nearMiss.outside + uncertainty.outside &&
    Math.abs(off.width) <= nearMiss.width + uncertainty.width
  );
}

function isWithin(off: BearingSize, known: KnownBearing, uncertainty: BearingSize): boolean {
  const row = ringWidthDeviation.Normal.find(([over, upTo]) => over < known.bore && known.bore <= upTo);
  const widthUnder = (row?.[2] ?? 0) / -1000;
  return (
    between(off.bore, -uncertainty.bore - ringUnder, uncertainty.bore) &&
    between(off.outside, -uncertainty.outside - ringUnder, uncertainty.outside) &&
    between(off.width, -uncertainty.width - widthUnder, uncertainty.width)
  );
}

/** Diameters tell bearings apart better than widths, which vary by a tenth; deep groove and common sizes lead. */
function score(off: BearingSize, known: KnownBearing): number {
  const kind = known.basic.kind === 'deep-groove' ? 0 : 0.01;
  const distance = 2 * Math.abs(off.bore) + Math.abs(off.outside) + Math.abs(off.width);
  return distance + kind + known.rank * 1e-5;
}

function trap(off: BearingSize, uncertainty: BearingSize): string {
  const same: string[] = [];
  const other: string[] = [];
  for (const [name, key, more, less] of [
    ['bore', 'bore', 'larger', 'smaller'],
    ['outside', 'outside', 'larger', 'smaller'],
    ['width', 'width', 'wider', 'narrower'],
  ] as const) {
    const by = -off[key];
    if (Math.abs(by) <= uncertainty[key] + 0.001) same.push(name);
    else
      other.push(`${name === 'width' ? '' : `${name} `}${length(Math.abs(by))} mm ${by > 0 ? more : less}`);
  }
  return `${same.length > 0 ? `same ${same.join(' and ')}, ` : ''}${other.join(', ')}`;
}

/** Leaves out sizes that stand among the candidates already, and repeats. */
function distinct<T extends BearingSize>(list: readonly T[], taken: readonly BearingSize[]): readonly T[] {
  const seen = new Set(taken.map(key));
  return list.filter((size) => {
    const own = key(size);
    if (seen.has(own)) return false;
    seen.add(own);
    return true;
  });
}

const key = (size: BearingSize): string => `${size.bore}|${size.outside}|${size.width}`;
const between = (x: number, lo: number, hi: number): boolean => lo - 1e-9 <= x && x <= hi + 1e-9;
const length = (mm: number): string => String(Math.round(mm * 100) / 100);
const round = (mm: number): number => Math.round(mm * 1e6) / 1e6;
