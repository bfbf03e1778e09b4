import type { SourceId } from '../base/sources.ts';
import {
  cycleSizes,
  cycleSizesSource,
  makerSizes,
  modifiedSizes,
  modifiedSizesSource,
  type OddSize,
} from '../tables/bearing-odd-sizes.ts';
import {
  inchBearings,
  lookalikeBearings,
  mrBearings,
  type SizedRow,
} from '../tables/bearings-outside-iso15.ts';
import type { BasicBearing, Ratings } from './basic-number.ts';

/** A bearing outside the ISO 15 series, by its key: '16100', 'MR105', 'R2-6', 'RLS4', 'Y17', 'L2010', '15267'. */
export function specialBearing(key: string): BasicBearing | null {
  return all().get(key) ?? null;
}

/** A printed modification of a standard bearing: key of the bearing, slash, new bore or outside; or null. */
export function modifiedBearing(key: string): OddSize | null {
  return modified().get(key) ?? null;
}

/** True when some maker prints this bore, outside and width (mm) as a modified width. */
export function isPrintedWidth(bore: number, outside: number, width: number): boolean {
  return modifiedSizes.some((row) => row[1] === bore && row[2] === outside && row[3] === width);
}

/** Printed modifications of standard bearings, for identification. */
export function printedModifications(): readonly OddSize[] {
  return modifiedSizes.filter(([code]) => !specialBearing(code));
}

/** Every special bearing, for completion and identification. */
export function specialBearings(): Iterable<BasicBearing> {
  return all().values();
}

let byKey: Map<string, BasicBearing> | null = null;
let modifiedByKey: Map<string, OddSize> | null = null;

function modified(): Map<string, OddSize> {
  modifiedByKey ??= new Map(modifiedSizes.map((row) => [row[0], row]));
  return modifiedByKey;
}

function all(): Map<string, BasicBearing> {
  if (byKey) return byKey;
  byKey = new Map();
  const add = (bearing: BasicBearing): void => void byKey?.set(bearing.key, bearing);
  for (const row of lookalikeBearings) {
    const note = `${row[0]} looks like series 160 and has another outside diameter: ${row[1]} × ${row[2]} × ${row[3]}.`;
    add(sized(row, 'table', [note]));
  }
  for (const row of mrBearings) add(sized(row, 'table', []));
  for (const row of inchBearings) {
    const inches = `An inch size: ${inch(row[1])} × ${inch(row[2])} × ${inch(row[3] ?? row[4] ?? 0)} in.`;
    add(sized(row, 'inch', [inches]));
  }
  for (const [code, bore, outside, width, source] of makerSizes) {
    const note = "One maker's own size; it has no ISO code.";
    const key = code.replace(/-|ZZ/g, '');
    const bearing = odd([key, bore, outside, width], code, source, 'table', [note]);
    add(code.includes('ZZ') ? { ...bearing, widthOpen: null } : bearing);
  }
  for (const row of cycleSizes) {
    const note =
      'A cycle size that is coded by its dimensions; no maker table was found, measure the bearing.';
    add(odd(row, row[0], cycleSizesSource, 'digits', [note]));
  }
  for (const row of modifiedSizes) {
    if (/^Y/.test(row[0])) add(odd(row, row[0], modifiedSizesSource, 'table', []));
    if (/^619\//.test(row[0])) add(odd(row, row[0], modifiedSizesSource, 'table', [oneMaker(row)]));
  }
  return byKey;
}

function oneMaker(row: OddSize): string {
  return `${row[0]} is one maker's size; ISO 15 has no bore of ${row[1]} mm in this series.`;
}

function sized(row: SizedRow, basis: 'table' | 'inch', notes: readonly string[]): BasicBearing {
  const [key, bore, outside, widthOpen, widthClosed, chamferMin, dynamic, fixed, low, high, , , source] = row;
  const range = low !== null && high !== null ? ([low, high] as const) : null;
  const ratings: Ratings | null =
    dynamic !== null && fixed !== null && source !== null
      ? { dynamic, static: fixed, dynamicRange: range, source }
      : null;
  return {
    key,
    trade: key,
    kind: 'deep-groove',
    bore,
    outside,
    widthOpen,
    widthClosed,
    closedInDispute: null,
    chamferMin,
    ratings,
    basis,
    standardEquivalent: null,
    source: source ?? 'zen-2012',
    notes,
  };
}

function odd(
  row: OddSize,
  trade: string,
  source: SourceId,
  basis: 'table' | 'digits',
  notes: readonly string[],
): BasicBearing {
  const [key, bore, outside, width] = row;
  return {
    key,
    trade,
    kind: 'deep-groove',
    bore,
    outside,
    widthOpen: width,
    widthClosed: width,
    closedInDispute: null,
    chamferMin: null,
    ratings: null,
    basis,
    standardEquivalent: null,
    source,
    notes,
  };
}

function inch(mm: number): string {
  return (mm / 25.4).toFixed(4).replace(/0+$/, '').replace(/\.$/, '');
}
