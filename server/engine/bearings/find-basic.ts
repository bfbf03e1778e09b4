import { type BasicBearing, readIsoNumber } from './basic-number.ts';
import { type DigitSize, isPlausibleSize, readDimensionCode } from './dimension-code.ts';
import { encodeStandard } from './known-bearings.ts';
import { modifiedBearing, specialBearing } from './special-numbers.ts';

/** A code taken apart: letters in front, the basic number and where it stands, what follows. */
export interface FoundBasic {
  readonly prefix: readonly string[];
  /** Start and end of the basic number within the code. */
  readonly start: number;
  readonly end: number;
  readonly reading: { readonly basic: BasicBearing } | { readonly reason: string };
}

const prefixPattern = /(HYB|INOX|CER|CB|HC|D\/W|SS|FL|S|W|F)[ .-]*(?=\d|MR|MF|FL|F|S|R)/y;
const numberPattern = /(\d+)(?: ?\/ ?(\d+(?:\.\d+)?))?/y;
const inchPattern = /R[ -]?(LS[ -]?\d+|1-4|1-5|2-5|2-6|\d+A?)/y;
const makerPattern = /(ML|[ALR]|Y)[ -]?\d{2,4}/y;
const miniaturePattern = /MR[ -]?(\d+)/y;

/** Finds and reads the basic number of a code. The text must be upper case and as long as the code. */
export function findBasic(text: string): FoundBasic {
  const prefix: string[] = [];
  let start = skip(text, 0);
  const maker = at(makerPattern, text, start);
  if (maker) {
    const key = maker[0].replace(/[ -]/, '');
    const thin = text.startsWith('ZZY05', start + maker[0].length) ? specialBearing(`${key}Y05`) : null;
    const special = thin ?? specialBearing(key);
    if (special) return { prefix, start, end: start + maker[0].length, reading: { basic: special } };
  }
  for (let found = at(prefixPattern, text, start); found; found = at(prefixPattern, text, start)) {
    prefix.push(found[1] ?? '');
    start += found[0].length;
  }
  // A flanged MR size is written MF.
  const flanged = text.startsWith('MF', start);
  if (flanged) prefix.push('F');
  const readable = flanged ? `${text.slice(0, start)}MR${text.slice(start + 2)}` : text;
  return (
    findMiniature(readable, start, prefix) ??
    findInch(readable, start, prefix) ??
    findNumber(readable, start, prefix) ?? {
      prefix,
      start,
      end: text.length,
      reading: { reason: text.trim() === '' ? 'is empty' : 'does not begin with a bearing number' },
    }
  );
}

function findMiniature(text: string, start: number, prefix: readonly string[]): FoundBasic | null {
  const found = at(miniaturePattern, text, start);
  const digits = found?.[1];
  if (!found || !digits) return null;
  const end = start + found[0].length;
  const known = specialBearing(`MR${digits}`);
  if (known) return { prefix, start, end, reading: { basic: known } };
  if (digits.length === 2 || digits.length === 3) {
    const bore = Number(digits.slice(-1));
    const outside = Number(digits.slice(0, -1));
    return {
      prefix,
      start,
      end,
      reading: {
        reason: `reads as outside ${outside} mm and bore ${bore} mm; the width is not in the code and no table lists it`,
      },
    };
  }
  if (digits.length === 4) {
    const cycle = specialBearing(`${digits}7`);
    if (cycle) return { prefix, start, end, reading: { basic: cycle } };
  }
  const read = fromDigits(digits) ?? readIsoNumber(digits, null);
  return {
    prefix,
    start,
    end,
    reading: read ?? { reason: 'holds no size that the digits after MR could mean' },
  };
}

function findInch(text: string, start: number, prefix: readonly string[]): FoundBasic | null {
  const found = at(inchPattern, text, start);
  if (!found) return null;
  let key = found[0].replace(/^R[ -]?/, 'R').replace(/^RLS[ -]?/, 'RLS');
  let end = start + found[0].length;
  // The closure may follow without a hyphen: the 2 of 2RS and 2Z belongs to it, not to the number.
  if (!specialBearing(key) && /2$/.test(key) && /^(RS|RZ|Z)/.test(text.slice(end))) {
    key = key.slice(0, -1);
    end -= 1;
  }
  // An A that begins a design letter pair such as 4AA stays with the number; an unknown A is a suffix.
  if (!specialBearing(key) && key.endsWith('A')) {
    key = key.slice(0, -1);
    end -= 1;
  }
  const basic = specialBearing(key);
  const reading = basic ? { basic } : { reason: 'is an inch code that no table lists' };
  return { prefix, start, end, reading };
}

function findNumber(text: string, start: number, prefix: readonly string[]): FoundBasic | null {
  const found = at(numberPattern, text, start);
  const run = found?.[1];
  if (!found || !run) return null;
  if (found[2] !== undefined) {
    const head = found[0].length - found[2].length;
    for (const bore of withoutClosure(found[2], text, start + found[0].length)) {
      const reading = readSlash(run, bore);
      if (reading && 'basic' in reading) return { prefix, start, end: start + head + bore.length, reading };
    }
    const reading = readIsoNumber(run, found[2]);
    if (reading) return { prefix, start, end: start + found[0].length, reading };
  }
  for (const digits of withoutClosure(run, text, start + run.length)) {
    const reading = readDigits(digits);
    if ('basic' in reading) return { prefix, start, end: start + digits.length, reading };
  }
  return { prefix, start, end: start + run.length, reading: readDigits(run) };
}

function readSlash(digits: string, bore: string): FoundBasic['reading'] | null {
  const odd = specialBearing(`${digits}/${bore}`);
  return odd ? { basic: odd } : readIsoNumber(digits, bore);
}

/** The run itself, then the run without a last 2 that belongs to a closure: 69022RS is 6902 and 2RS. */
function withoutClosure(run: string, text: string, end: number): readonly string[] {
  return run.length > 1 &&
    run.endsWith('2') &&
    /^(RS|RZ|RU|RD|RK|Z|TS|TZ|LFS|NSE|NSL|NK)/.test(text.slice(end, end + 3))
    ? [run, run.slice(0, -1)]
    : [run];
}

function readDigits(digits: string): FoundBasic['reading'] {
  const known = specialBearing(digits);
  if (known) return { basic: known };
  const iso = readIsoNumber(digits, null);
  if (iso && 'basic' in iso) return iso;
  return fromDigits(digits) ?? iso ?? { reason: unreadable(digits) };
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

/**
 * The bearing with a changed bore or outside after a slash, printed or read from the number; null when the number
 * cannot be a bore.
 */
export function changedBearing(basic: BasicBearing, change: string): BasicBearing | null {
  const key = `${basic.key}/${change}`;
  const printed = modifiedBearing(key);
  if (printed) {
    const [, bore, outside, width] = printed;
    return changed(
      basic,
      key,
      bore,
      outside,
      width,
      'table',
      `${key} is one maker's modification of ${basic.key}.`,
    );
  }
  const [over, under] = change.split('/').map(Number);
  const bore = under ? ((over ?? 0) / under) * 25.4 : (over ?? 0);
  const width = basic.widthOpen ?? basic.widthClosed ?? 0;
  const near = basic.bore - 3 <= bore && bore <= basic.bore + 4 && bore !== basic.bore;
  if (!near || !isPlausibleSize(bore, basic.outside, width)) return null;
  const note = `${change} after the code is read as a changed bore of ${round(bore)} mm; no table lists it, measure the bearing.`;
  return changed(basic, key, round(bore), basic.outside, null, 'digits', note);
}

function changed(
  basic: BasicBearing,
  key: string,
  bore: number,
  outside: number,
  width: number | null,
  basis: 'table' | 'digits',
  note: string,
): BasicBearing {
  return {
    ...basic,
    key,
    trade: key,
    bore,
    outside,
    widthOpen: width ?? basic.widthOpen,
    widthClosed: width ?? basic.widthClosed,
    closedInDispute: null,
    basis,
    standardEquivalent: null,
    source: basis === 'table' ? 'zen-2012' : 'common-practice',
    notes: [...basic.notes, note],
  };
}

function unreadable(digits: string): string {
  if (digits.length > 6) return `has ${digits.length} digits; bearing numbers have three to six`;
  if (digits.length < 3)
    return `has ${digits.length === 1 ? 'one digit' : 'two digits'}; bearing numbers have three to six`;
  return 'names no series of ball bearings and holds no size its digits could mean';
}

function at(pattern: RegExp, text: string, index: number): RegExpExecArray | null {
  pattern.lastIndex = index;
  return pattern.exec(text);
}

function skip(text: string, from: number): number {
  let index = from;
  while (index < text.length && /[\s*]/.test(text[index] ?? '')) index++;
  return index;
}

function round(mm: number): number {
  return Math.round(mm * 1000) / 1000;
}
