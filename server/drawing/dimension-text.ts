import type { LinePart } from '../assembly/line.ts';
import type { Limits } from '../assembly/settle.ts';
import { length, plain } from '../engine/base/figures.ts';

type Written = NonNullable<LinePart['part']['values']['length']>['value'];

/** A written dimension as a drawing prints it: `62.06 ±0.01`, `26 N7`, a reading behind it in brackets. */
export function dimensionText(dimension: Written): string {
  const { tolerance, measured, drawn } = dimension;
  const nominal = plain(dimension.nominal);
  const reading = measured ? `[${plain(measured.value)}]` : null;
  if (!drawn && reading) return reading;
  const own =
    tolerance.kind === 'class'
      ? `${nominal} ${tolerance.letters}${tolerance.grade}`
      : tolerance.kind === 'limits'
        ? limitsText({ nominal: dimension.nominal, lower: tolerance.lower, upper: tolerance.upper })
        : nominal;
  return reading ? `${own} ${reading}` : own;
}

/** `⌀26 N7` */
export function diameterText(dimension: Written): string {
  return `⌀${dimensionText(dimension)}`;
}

/** A nominal with its deviations: `62 ±0.02`, `5 0/−0.12`. */
export function limitsText({ nominal, lower, upper }: Limits): string {
  const size = plain(nominal);
  if (lower === 0 && upper === 0) return size;
  if (Math.abs(lower + upper) < 1e-9) return `${size} ±${plain(upper)}`;
  return `${size} ${deviation(upper)}/${deviation(lower)}`;
}

function deviation(value: number): string {
  if (Math.abs(value) < 1e-9) return '0';
  return `${value < 0 ? '−' : '+'}${plain(Math.abs(value))}`;
}

/** A computed length with the digits that mean something: `100.12`. */
export function lengthText(value: number): string {
  return length(value);
}
