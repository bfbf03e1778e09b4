import { type BasicReading, readIsoNumber } from './basic-number.ts';
import { readDigits, readMiniature, readSlash } from './read-number.ts';
import { specialBearing } from './special-numbers.ts';

/** A code taken apart: letters in front, the basic number and where it stands, what follows. */
export interface FoundBasic {
  readonly prefix: readonly string[];
  /** Start and end of the basic number within the code. */
  readonly start: number;
  readonly end: number;
  readonly reading: BasicReading;
}

const prefixPattern = /(HYB|INOX|CER|CB|HC|D\/W|SS|FL|S|W|F)[ .-]*(?=\d|MR|MF|FL|F|S|R)/y;
const numberPattern = /(\d+)(?: ?\/ ?(\d+(?:\.\d+)?))?/y;
const inchPattern = /R[ -]?(LS[ -]?\d+|1-4|1-5|2-5|2-6|\d+A?)/y;
const makerPattern = /(ML|[ALR]|Y)[ -]?\d{2,4}(?:Y05)?/y;
const miniaturePattern = /MR[ -]?(\d+)/y;

/** Finds and reads the basic number of a code. The text must be upper case and as long as the code. */
export function findBasic(text: string): FoundBasic {
  const prefix: string[] = [];
  let start = skip(text, 0);
  const maker = findMaker(text, start);
  if (maker) return maker;
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

function findMaker(text: string, start: number): FoundBasic | null {
  const found = at(makerPattern, text, start)?.[0];
  if (!found) return null;
  const end = start + found.length;
  for (const written of withoutClosure(found, text, end)) {
    const thin = text.startsWith('ZZY05', start + written.length) ? 'Y05' : '';
    const basic = specialBearing(written.replace(/[ -]/, '') + thin);
    if (basic) return { prefix: [], start, end: start + written.length, reading: { basic } };
  }
  return null;
}

function findMiniature(text: string, start: number, prefix: readonly string[]): FoundBasic | null {
  const found = at(miniaturePattern, text, start);
  const run = found?.[1];
  if (!found || !run) return null;
  const end = start + found[0].length;
  for (const digits of withoutClosure(run, text, end)) {
    const reading = readMiniature(digits);
    if ('basic' in reading) return { prefix, start, end: end - (run.length - digits.length), reading };
  }
  return { prefix, start, end, reading: readMiniature(run) };
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

/** The run itself, then the run without a last 2 that belongs to a closure: 69022RS is 6902 and 2RS. */
function withoutClosure(run: string, text: string, end: number): readonly string[] {
  return run.length > 1 &&
    run.endsWith('2') &&
    /^(RS|RZ|RU|RD|RK|Z|TS|TZ|LFS|NSE|NSL|NK)/.test(text.slice(end, end + 3))
    ? [run, run.slice(0, -1)]
    : [run];
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
