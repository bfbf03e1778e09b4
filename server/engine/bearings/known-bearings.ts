import { modifiedSizesSource } from '../tables/bearing-odd-sizes.ts';
import { bearingSeries } from '../tables/bearing-series.ts';
import { type BasicBearing, isoBearing } from './basic-number.ts';
import { planSeries } from './dimension-plan.ts';
import { printedModifications, specialBearings } from './special-numbers.ts';

/** One code that the tables and rules give, with its size in mm. */
export interface KnownBearing {
  readonly code: string;
  readonly basic: BasicBearing;
  readonly bore: number;
  readonly outside: number;
  readonly width: number;
  /** True when only the closed version has this width, false when only the open one, null when both do. */
  readonly closed: boolean | null;
  /** Place in the order in which hubs use the series: small is common (common practice). */
  readonly rank: number;
}

let known: readonly KnownBearing[] | null = null;
let bySize: Map<string, KnownBearing[]> | null = null;

/** Series in the order in which hubs use them (common practice). */
const hubOrder = [
  '69',
  '68',
  '60',
  '62',
  '638',
  '639',
  '63',
  '160',
  '67',
  '628',
  '630',
  '629',
  '622',
  '623',
  '79',
  '78',
  '70',
  '72',
  '73',
  '38',
  '30',
  '32',
  '33',
];

/** Every bearing the tables and rules give, commonest in hubs first. */
export function knownBearings(): readonly KnownBearing[] {
  known ??= collect().sort((a, b) => a.rank - b.rank);
  return known;
}

/** Bearings of exactly this size (mm), commonest in hubs first. */
export function bearingsOfSize(bore: number, outside: number, width: number): readonly KnownBearing[] {
  if (!bySize) {
    bySize = new Map();
    for (const bearing of knownBearings()) {
      const key = sizeKey(bearing.bore, bearing.outside, bearing.width);
      const same = bySize.get(key);
      if (same) same.push(bearing);
      else bySize.set(key, [bearing]);
    }
  }
  return bySize.get(sizeKey(bore, outside, width)) ?? [];
}

/** The deep groove bearing of the ISO series with exactly this size (mm), or null. */
export function encodeStandard(bore: number, outside: number, width: number): BasicBearing | null {
  const same = bearingsOfSize(bore, outside, width);
  return same.find(({ basic }) => basic.basis === 'iso-rule' && basic.kind === 'deep-groove')?.basic ?? null;
}

function sizeKey(bore: number, outside: number, width: number): string {
  return `${bore}|${outside}|${width}`;
}

function collect(): KnownBearing[] {
  const list: KnownBearing[] = [];
  for (const series of bearingSeries) {
    if (series.prefix !== series.trade) continue;
    const order = hubOrder.indexOf(series.trade);
    for (const { bore } of planSeries(series.dimension)) {
      const basic = isoBearing(series, bore, bore < 10);
      if (basic) add(list, basic, order < 0 ? hubOrder.length : order);
    }
  }
  for (const basic of specialBearings()) {
    const order =
      basic.basis === 'digits' ? 7 : basic.basis === 'inch' ? hubOrder.length + 1 : hubOrder.length;
    add(list, basic, order);
  }
  for (const [code, bore, outside, width] of printedModifications()) {
    const basic = modification(code, bore, outside, width);
    add(list, basic, hubOrder.length + 2);
  }
  return list;
}

function modification(code: string, bore: number, outside: number, width: number): BasicBearing {
  return {
    key: code,
    trade: code,
    kind: 'deep-groove',
    bore,
    outside,
    widthOpen: width,
    widthClosed: width,
    closedInDispute: null,
    chamferMin: null,
    ratings: null,
    basis: 'table',
    standardEquivalent: null,
    source: modifiedSizesSource,
    notes: ["One maker's modification of a standard bearing."],
  };
}

function add(list: KnownBearing[], basic: BasicBearing, order: number): void {
  const rank = order + (8 <= basic.bore && basic.bore <= 30 ? 0 : 50);
  const { bore, outside, widthOpen, widthClosed, trade } = basic;
  const one = (code: string, width: number, closed: boolean | null): void =>
    void list.push({ code, basic, bore, outside, width, closed, rank });
  if (widthOpen !== null && widthOpen === widthClosed) one(trade, widthOpen, null);
  else {
    if (widthOpen !== null) one(trade, widthOpen, false);
    // The wide closed 67 series is the shielded one.
    const suffix = basic.closedInDispute && basic.key.startsWith('617') ? '-2Z' : '-2RS';
    if (widthClosed !== null) one(`${trade}${suffix}`, widthClosed, true);
  }
}
