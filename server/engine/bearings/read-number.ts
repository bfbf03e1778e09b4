import { type BasicBearing, type BasicReading, readIsoNumber } from './basic-number.ts';
import { type DigitSize, readDimensionCode } from './dimension-code.ts';
import { encodeStandard } from './known-bearings.ts';
import { specialBearing } from './special-numbers.ts';

/** Reads the digits of a number: tables first, then the ISO rule, then the digits as dimensions. */
export function readDigits(digits: string): BasicReading {
  const known = specialBearing(digits);
  if (known) return { basic: known };
  const iso = readIsoNumber(digits, null);
  if (iso && 'basic' in iso) return iso;
  return fromDigits(digits) ?? iso ?? { reason: unreadable(digits) };
}

/** Reads a number with a bore in mm after its slash; null when the digits name no series. */
export function readSlash(digits: string, bore: string): BasicReading | null {
  const odd = specialBearing(`${digits}/${bore}`);
  return odd ? { basic: odd } : readIsoNumber(digits, bore);
}

/** Reads the digits after MR: outside then bore when there are two or three, else dimensions or an ISO number. */
export function readMiniature(digits: string): BasicReading {
  const known = specialBearing(`MR${digits}`);
  if (known) return { basic: known };
  if (digits.length === 2 || digits.length === 3) {
    const bore = Number(digits.slice(-1));
    const outside = Number(digits.slice(0, -1));
    return {
      reason: `reads as outside ${outside} mm and bore ${bore} mm; the width is not in the code and no table lists it`,
    };
  }
  // Some cycle codes leave the width of 7 mm out.
  const cycle = digits.length === 4 ? specialBearing(`${digits}7`) : null;
  if (cycle) return { basic: cycle };
  const read = fromDigits(digits) ?? readIsoNumber(digits, null);
  return read ?? { reason: 'holds no size that the digits after MR could mean' };
}

function fromDigits(digits: string): { readonly basic: BasicBearing } | null {
  const known = specialBearing(digits);
  if (known) return { basic: known };
  const [best, ...others] = readDimensionCode(digits);
  return best ? { basic: sizedByDigits(digits, best, others) } : null;
}

function sizedByDigits(digits: string, size: DigitSize, others: readonly DigitSize[]): BasicBearing {
  const standard = encodeStandard(size.bore, size.outside, size.width);
  const notes = [
    `Read digit by digit as ${size.bore} × ${size.outside} × ${size.width}; no table lists this code.`,
    ...others.map((o) => `The digits could also be read as ${o.bore} × ${o.outside} × ${o.width}.`),
  ];
  return {
    key: digits,
    trade: digits,
    kind: 'deep-groove',
    bore: size.bore,
    outside: size.outside,
    widthOpen: size.width,
    widthClosed: size.width,
    closedInDispute: null,
    chamferMin: standard?.chamferMin ?? null,
    ratings: standard?.ratings ?? null,
    basis: 'digits',
    standardEquivalent: standard?.key ?? null,
    source: 'common-practice',
    notes,
  };
}

function unreadable(digits: string): string {
  if (digits.length > 6) return `has ${digits.length} digits; bearing numbers have three to six`;
  if (digits.length < 3)
    return `has ${digits.length === 1 ? 'one digit' : 'two digits'}; bearing numbers have three to six`;
  return 'names no series of ball bearings and holds no size its digits could mean';
}
