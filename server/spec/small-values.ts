import type { BesidePlace } from './beside-model.ts';
import { decimalComma } from './decimal-comma.ts';
import { type DimensionReading, readDimension } from './dimension.ts';
import type { BallSet, BearingSize, Groove } from './model.ts';
import { plainSigns } from './plain-signs.ts';
import type { ValueProblem } from './value-problem.ts';

export type Reading<T> = { readonly value: T } | { readonly problem: ValueProblem };

const figure = '(\\d+\\.?\\d*|\\.\\d+)';
const size = new RegExp(`^\\s*${figure}\\s*[x*]\\s*${figure}\\s*[x*]\\s*${figure}\\s*(?:mm)?\\s*$`, 'i');
const ballSet = new RegExp(`^\\s*(\\d+)\\s*[x*]\\s*Ø?${figure}\\s*(mm|in|")?\\s*$`, 'i');
const inchBalls = /^\s*(\d+)\s*[x*]\s*(\d+)\/(\d+)\s*(in|")?\s*$/i;
const groove = new RegExp(`^\\s*${figure}(?:\\s*/\\s*${figure})?\\s*$`);

/** `17x26x5`: bore × outside × width of a bearing, mm. */
export function readSize(written: string): Reading<BearingSize> {
  const comma = decimalComma(written);
  if (comma) return { problem: comma };
  const match = size.exec(plainSigns(written));
  if (!match) return notUnderstood(written, 'a bearing size, bore × outside × width', '17x26x5');
  const [bore, outside, width] = [Number(match[1]), Number(match[2]), Number(match[3])];
  if (outside <= bore || width === 0 || bore === 0) {
    const message = `${written.trim()} is no bearing: the outside diameter is wanted above the bore, in the order bore × outside × width`;
    return { problem: { code: 'value-not-understood', message, at: [0, written.length] } };
  }
  return { value: { written, bore, outside, width } };
}

/** `13 × 2.778`: number of balls × ball diameter, mm; `10 x 3/16 in` too. */
export function readBalls(written: string): Reading<BallSet> {
  const comma = decimalComma(written);
  if (comma) return { problem: comma };
  const text = plainSigns(written);
  const inches = inchBalls.exec(text);
  const match = ballSet.exec(text);
  const scale = inches || match?.[3]?.match(/in|"/i) ? 25.4 : 1;
  const diameter = inches ? Number(inches[2]) / Number(inches[3]) : Number(match?.[2]);
  const count = Number((inches ?? match)?.[1]);
  if (!(0 < count && 0 < diameter && Number.isFinite(diameter))) {
    return notUnderstood(written, 'a set of balls, number × diameter', '13 × 2.778');
  }
  return { value: { count, diameter: Math.round(diameter * scale * 1e9) / 1e9 } };
}

/** `0.52`, or `0.515/0.525` inner and outer: groove radius ÷ ball diameter. A groove is wider than its ball: above 0.5. */
export function readGroove(written: string): Reading<Groove> {
  const comma = decimalComma(written);
  if (comma) return { problem: comma };
  const match = groove.exec(plainSigns(written));
  const inner = Number(match?.[1]);
  const outer = Number(match?.[2] ?? match?.[1]);
  if (!match) return notUnderstood(written, 'groove radius ÷ ball diameter', '0.52 or 0.515/0.525');
  if (!(0.5 < inner && inner < 0.7 && 0.5 < outer && outer < 0.7)) {
    const message = `${written.trim()} is no groove radius ÷ ball diameter: a value above 0.5 and below 0.7 is wanted`;
    return { problem: { code: 'value-not-understood', message, at: [0, written.length] } };
  }
  return { value: { inner, outer } };
}

/** A plain number within limits. */
export function readNumber(
  written: string,
  what: string,
  lo: number,
  hi: number,
  example: string,
): Reading<number> {
  const comma = decimalComma(written);
  if (comma) return { problem: comma };
  const text = plainSigns(written).trim();
  if (!/^[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?$/i.test(text)) return notUnderstood(written, what, example);
  const value = Number(text);
  if (lo <= value && value <= hi) return { value };
  const message = `${text} is out of range; ${what} is wanted between ${lo} and ${hi}`;
  return { problem: { code: 'value-not-understood', message, at: [0, written.length] } };
}

/** A whole number within limits. */
export function readCount(
  written: string,
  what: string,
  lo: number,
  hi: number,
  example: string,
): Reading<number> {
  const reading = readNumber(written, what, lo, hi, example);
  if ('problem' in reading || Number.isInteger(reading.value)) return reading;
  return notUnderstood(written, `${what}, a whole number`, example);
}

/** `14.2 ±0.1`, or `2.5 from bearing.left`. */
export function readBesidePlace(written: string): Reading<BesidePlace> {
  const match = /^(.*?)\s+from\s+(\S+)\s*$/.exec(written);
  const reading: DimensionReading = readDimension(match?.[1] ?? written, 'offset');
  if ('problem' in reading) return reading;
  return { value: { distance: reading.dimension, from: match?.[2] ?? null } };
}

function notUnderstood(written: string, what: string, example: string): { readonly problem: ValueProblem } {
  const text = written.trim() === '' ? 'nothing' : written.trim();
  const message = `${text} is not understood as ${what}; wanted is e.g. ${example}`;
  return { problem: { code: 'value-not-understood', message, at: [0, written.length] } };
}
