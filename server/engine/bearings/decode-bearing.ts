import { assembleBearing } from './assemble-bearing.ts';
import type { BasicBearing } from './basic-number.ts';
import { changedBearing } from './changed-bearing.ts';
import type { DecodedBearing, NotDecoded } from './decoded-bearing.ts';
import { type FoundBasic, findBasic } from './find-basic.ts';
import { bearingsOfSize } from './known-bearings.ts';
import { readAffixes } from './read-affixes.ts';
import { suggestCodes } from './suggest-codes.ts';

export type {
  AmbiguousSuffix,
  BallSet,
  BearingKind,
  ClearanceGroup,
  Closure,
  DecodedBearing,
  NotDecoded,
  ToleranceClass,
} from './decoded-bearing.ts';

/**
 * Decodes a bearing code. The ISO rule comes first, then tables of sizes outside it, then the digits as dimensions.
 * Case, spaces, hyphens and slashes are tolerated. A code that is none gives a failure with codes close to it.
 */
export function decodeBearing(code: string): Decoded {
  const known = decoded.get(code);
  if (known) return known;
  const fresh = decodeAnew(code);
  if (decoded.size < KEPT_CODES && code.length <= LONGEST_KEPT) decoded.set(code, fresh);
  return fresh;
}

type Decoded = { readonly bearing: DecodedBearing } | { readonly failure: NotDecoded };

/** Codes decoded so far: a pure function of the code, kept because every variant and check asks for the same few. */
const decoded = new Map<string, Decoded>();
const KEPT_CODES = 500;
const LONGEST_KEPT = 40;

function decodeAnew(code: string): Decoded {
  const clean = plain(code);
  const text = upper(clean);
  const found = findBasic(text);
  if ('reason' in found.reading) return { failure: failure(code, text, found, found.reading.reason) };
  let { basic } = found.reading;
  const affixes = readAffixes(clean.slice(found.end), found.prefix, basic.kind);
  let extra: string | null = null;
  if (affixes.change !== null) {
    const changed = changedBearing(basic, affixes.change);
    if (changed) basic = changed;
    else
      extra = `/${affixes.change} is in no list of changed sizes that was read; it is left out of account.`;
  }
  const all = extra === null ? affixes : { ...affixes, notes: [...affixes.notes, extra] };
  return { bearing: assembleBearing(code, code.slice(found.start, found.end).trim(), basic, all) };
}

/**
 * A bearing known by its size alone, mm. When a standard bearing has exactly that size its chamfer, ratings and
 * balls are taken over and the bearing is named in the notes.
 */
export function bearingFromSize(bore: number, outside: number, width: number): DecodedBearing {
  const same = bearingsOfSize(bore, outside, width);
  const standard = same.find(({ basic }) => basic.kind === 'deep-groove') ?? null;
  const code = `${bore}x${outside}x${width}`;
  const notes = standard
    ? [
        `The size is that of ${standard.code}; its chamfer, ratings and balls are taken, and a deep groove bearing.`,
      ]
    : ['No standard bearing of this size is known; a deep groove bearing is taken.'];
  const basic: BasicBearing = {
    key: standard?.basic.key ?? code,
    trade: code,
    kind: 'deep-groove',
    bore,
    outside,
    widthOpen: width,
    widthClosed: width,
    closedInDispute: null,
    chamferMin: standard?.basic.chamferMin ?? null,
    ratings: standard?.basic.ratings ?? null,
    basis: 'size',
    standardEquivalent: null,
    source: standard?.basic.source ?? 'common-practice',
    notes,
  };
  const bearing = assembleBearing(code, code, basic, readAffixes('', [], 'deep-groove'));
  return {
    ...bearing,
    normalised: code,
    material: 'unknown',
    rubs: null,
    sources: standard ? bearing.sources : bearing.sources.slice(1),
  };
}

function failure(code: string, text: string, found: FoundBasic, reason: string): NotDecoded {
  const { start } = found;
  // A letter O or I among the digits belongs to the number that was meant.
  const slip = /^[OI]+\d[\dOI]*/.exec(text.slice(found.end))?.[0].length ?? 0;
  const end = found.end + slip;
  const written = code.slice(start, end).trim();
  const why = slip > 0 ? 'has a letter among its digits' : reason;
  return {
    code,
    error: written === '' ? 'No bearing code is written.' : `${shorten(written)} ${why}.`,
    didYouMean: withoutLetters(code, text, start) ?? near(code, written, start, end),
    at: [start, end],
  };
}

function near(code: string, written: string, start: number, end: number): NotDecoded['didYouMean'] {
  const put = (basic: string): string => `${code.slice(0, start)}${basic}${code.slice(end)}`;
  return suggestCodes(written).map(({ code: basic, size }) => ({ code: put(basic), size }));
}

/** Letters in front that nobody lists: what follows them may be the code. */
function withoutLetters(code: string, text: string, start: number): NotDecoded['didYouMean'] | null {
  const letters = /^[A-Z]+[ .-]*(?=\d{3,6}(?!\d))/.exec(text.slice(start));
  if (!letters) return null;
  const rest = decodeBearing(code.slice(start + letters[0].length));
  if ('failure' in rest) return null;
  const { bore, outside, width } = rest.bearing;
  return [{ code: rest.bearing.code, size: `${bore} × ${outside} × ${width}` }];
}

function shorten(written: string): string {
  return written.length <= 40 ? written : `${written.slice(0, 40)}…`;
}

/** Plain hyphens and spaces for the ones that text editors put in their place; the length stays. */
function plain(code: string): string {
  return code.replace(/[\u2010-\u2015\u2212]/g, '-').replace(/[\u00a0\u2007\u202f]/g, ' ');
}

/** Upper case of the same length, so that positions stay those of the code. */
function upper(code: string): string {
  const text = code.toUpperCase();
  return text.length === code.length ? text : code.replace(/[a-z]/g, (letter) => letter.toUpperCase());
}
