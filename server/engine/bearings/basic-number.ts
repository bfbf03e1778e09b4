import type { SourceId } from '../base/sources.ts';
import { bearingCatalogue } from '../tables/bearing-catalogue.ts';
import { doubleRowBearings, doubleRowBearingsSource } from '../tables/bearing-double-row.ts';
import {
  type BearingSeries,
  bearingSeries,
  closedWidthsInDispute,
  smallBoreCodes,
} from '../tables/bearing-series.ts';
import { iso15PlanSource } from '../tables/iso15-dimension-plan.ts';
import type { BearingKind, DecodedBearing } from './decoded-bearing.ts';
import { type PlanEntry, planEntry } from './dimension-plan.ts';

/** Load ratings of one bearing: one maker's values and the range over all makers read, N. */
export interface Ratings {
  readonly dynamic: number;
  readonly static: number;
  readonly dynamicRange: readonly [number, number] | null;
  readonly source: SourceId;
}

/** What a basic number says before its affixes; lengths in mm. */
export interface BasicBearing {
  /** Normalised basic number, the key of the tables: '619/6', '61902'. */
  readonly key: string;
  /** The spelling stamped most often: '696', '6902'. */
  readonly trade: string;
  readonly kind: BearingKind;
  readonly bore: number;
  readonly outside: number;
  readonly widthOpen: number | null;
  readonly widthClosed: number | null;
  /** Both widths that makers print for the closed version, where they disagree. */
  readonly closedInDispute: { readonly narrow: number; readonly wide: number } | null;
  readonly chamferMin: number | null;
  readonly ratings: Ratings | null;
  readonly basis: DecodedBearing['basis'];
  readonly standardEquivalent: string | null;
  readonly source: SourceId;
  readonly notes: readonly string[];
}

/** Reading a number ends in a bearing, or in the reason why it is none. */
export type BasicReading = { readonly basic: BasicBearing } | { readonly reason: string };

/** Smallest and largest bore read, mm. */
export const boreRange: readonly [number, number] = [3, 50];

interface Published {
  readonly widthOpen: number | null;
  readonly widthClosed: number | null;
  readonly ratings: Ratings | null;
}

const seriesByPrefix = new Map(bearingSeries.map((series) => [series.prefix, series]));
const disputes = new Map(closedWidthsInDispute.map(([key, narrow, wide]) => [key, { narrow, wide }]));
let published: Map<string, Published> | null = null;
let doubleRows: Map<string, { readonly width: number; readonly ratings: Ratings | null }> | null = null;

/**
 * Reads a number by the ISO rule: series digits, then a bore code of two digits, one digit from 3 to 9, or a bore
 * in mm after a slash. Null when the digits name no series at all.
 */
export function readIsoNumber(digits: string, slash: string | null): BasicReading | null {
  const split = splitNumber(digits, slash);
  if (!split) return null;
  const { series, bore } = split;
  if (bore < boreRange[0] || boreRange[1] < bore) {
    const how =
      slash === null && digits.length > 3 ? ` with bore code ${digits.slice(series.prefix.length)}` : '';
    return {
      reason: `reads as series ${series.prefix}${how}, a bore of ${bore} mm; bores from ${boreRange[0]} to ${boreRange[1]} mm are known`,
    };
  }
  const basic = isoBearing(series, bore, slash === null && digits.length === 3);
  if (!basic)
    return { reason: `reads as series ${series.prefix}, which has no size with a bore of ${bore} mm` };
  return { basic };
}

/** The bearing of a series and a bore (mm), or null when the dimension plan has no such line. */
export function isoBearing(series: BearingSeries, bore: number, threeDigits: boolean): BasicBearing | null {
  const plan = planEntry(series.dimension, bore);
  if (!plan) return null;
  const key = spell(series.iso, bore);
  const facts = series.kind === 'deep-groove' ? catalogue().get(key) : undefined;
  const row = series.kind === 'double-row-angular-contact' ? doubleRow().get(key) : undefined;
  const dispute = series.kind === 'deep-groove' ? (disputes.get(key) ?? null) : null;
  const width = row?.width ?? plan.width;
  const spelling = series.older ? key : null;
  return {
    key,
    trade: spell(series.trade, bore),
    kind: series.kind,
    bore,
    outside: plan.outside,
    widthOpen: facts ? facts.widthOpen : width,
    widthClosed: dispute ? closedWidth(key, dispute, threeDigits) : (facts?.widthClosed ?? width),
    closedInDispute: dispute,
    chamferMin: plan.chamferMin,
    ratings: facts?.ratings ?? row?.ratings ?? null,
    basis: 'iso-rule',
    standardEquivalent: spelling,
    source: row ? doubleRowBearingsSource : plan.source,
    notes: sizeNotes(series, key, bore, facts !== undefined || row !== undefined, width, plan),
  };
}

/** A basic number from series digits and a bore, mm: '6902', '696', '60/22', '628/8'. */
export function spell(series: string, bore: number): string {
  const small = smallBoreCodes.indexOf(bore);
  if (small >= 0) return `${series}0${small}`;
  if (bore >= 20 && bore % 5 === 0) return `${series}${String(bore / 5).padStart(2, '0')}`;
  const oneDigit = bore < 10 && Number.isInteger(bore) && series.length === 2 && !/^3/.test(series);
  return oneDigit ? `${series}${bore}` : `${series}/${bore}`;
}

function splitNumber(digits: string, slash: string | null): { series: BearingSeries; bore: number } | null {
  if (slash !== null) {
    const series = seriesByPrefix.get(digits);
    return series ? { series, bore: Number(slash) } : null;
  }
  if (digits.length === 3) {
    const series = seriesByPrefix.get(digits.slice(0, 2));
    if (!series || series.kind === 'double-row-angular-contact') return null;
    return { series, bore: Number(digits.slice(2)) };
  }
  if (digits.length !== 4 && digits.length !== 5) return null;
  const series = seriesByPrefix.get(digits.slice(0, -2));
  if (!series || series.slashOnly) return null;
  const code = Number(digits.slice(-2));
  return { series, bore: smallBoreCodes[code] ?? code * 5 };
}

function closedWidth(key: string, dispute: { narrow: number; wide: number }, threeDigits: boolean): number {
  return threeDigits || key.startsWith('617') ? dispute.wide : dispute.narrow;
}

function sizeNotes(
  series: BearingSeries,
  key: string,
  bore: number,
  printed: boolean,
  width: number,
  plan: PlanEntry,
): readonly string[] {
  const notes: string[] = [];
  if (series.kind === 'deep-groove' && !printed) {
    const same = plan.source !== iso15PlanSource;
    notes.push(
      same
        ? `No catalogue row was found for ${key}; the size is that of the double row bearing of the same dimension series.`
        : bore < 10
          ? `No catalogue row was found for ${key}; the size is the ISO 15 plan's, and closed versions of small sizes are often wider.`
          : `No catalogue row was found for ${key}; the size is the ISO 15 plan's, which some makers do not follow.`,
    );
  }
  if (width !== plan.width) {
    notes.push(`Makers print a width of ${width} mm or ${plan.width} mm for ${key}; ${width} mm is taken.`);
  }
  if (key === '629') notes.push('Makers print a smallest chamfer of 0.3 mm or 0.6 mm; 0.3 mm is taken.');
  if (key === '618/4') notes.push('Makers print a smallest chamfer of 0.1 mm or 0.15 mm; 0.1 mm is taken.');
  if (bore < 10 && /^6[23][789]$/.test(key)) {
    notes.push(
      `${key} is one bearing of bore ${bore} mm; a number such as ${key}/8 or ${key}00 belongs to the wide series ${key}.`,
    );
  }
  return notes;
}

function catalogue(): Map<string, Published> {
  if (published) return published;
  published = new Map();
  for (const [key, widthOpen, widthClosed, dynamic, fixed, low, high, , , source] of bearingCatalogue) {
    const range = low !== null && high !== null ? ([low, high] as const) : null;
    const ratings =
      dynamic !== null && fixed !== null && source !== null
        ? { dynamic, static: fixed, dynamicRange: range, source }
        : null;
    published.set(key, { widthOpen, widthClosed, ratings });
  }
  return published;
}

function doubleRow(): Map<string, { readonly width: number; readonly ratings: Ratings | null }> {
  if (doubleRows) return doubleRows;
  doubleRows = new Map();
  for (const [key, , , width, , dynamic, fixed] of doubleRowBearings) {
    const ratings =
      dynamic !== null && fixed !== null
        ? { dynamic, static: fixed, dynamicRange: null, source: doubleRowBearingsSource }
        : null;
    doubleRows.set(key, { width, ratings });
  }
  return doubleRows;
}
