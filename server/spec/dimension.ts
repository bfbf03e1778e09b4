import { decimalComma } from './decimal-comma.ts';
import { checked, DimensionScanner, type DimensionTokens } from './dimension-scanner.ts';
import type { DimensionContext } from './dimension-text.ts';
import type { Dimension, Tolerance } from './model.ts';
import type { ValueProblem } from './value-problem.ts';

export type DimensionReading = { readonly dimension: Dimension } | { readonly problem: ValueProblem };

const plainNumber = /^\d+(?:\.\d+)?$/;
const symmetric = /^(\d+(?:\.\d+)?) ?± ?(\d+(?:\.\d+)?)$/;

/**
 * Reads a length or a diameter in any of its notations; all numbers come out in mm.
 * Inches are converted at 25.4 exactly (international yard and pound agreement, 1959).
 */
export function readDimension(written: string, context: DimensionContext): DimensionReading {
  const scan = scanDimension(written, context);
  return 'problem' in scan ? scan : { dimension: scan.dimension };
}

/** As `readDimension`, with the places of the nominal's figures. */
export function scanDimension(
  written: string,
  context: DimensionContext,
): DimensionTokens | { readonly problem: ValueProblem } {
  if (plainNumber.test(written)) {
    const nominal = Number(written);
    const token = { at: [0, written.length], value: nominal, fraction: false } as const;
    return checked({ nominal: [token], dimension: dimensionOf(written, nominal, { kind: 'none' }) }, context);
  }
  const pair = symmetric.exec(written);
  if (pair?.[1] !== undefined && pair[2] !== undefined) {
    const nominal = Number(pair[1]);
    const half = Number(pair[2]);
    const token = { at: [0, pair[1].length], value: nominal, fraction: false } as const;
    const tolerance = { kind: 'limits', lower: half === 0 ? 0 : -half, upper: half } as const;
    return checked({ nominal: [token], dimension: dimensionOf(written, nominal, tolerance) }, context);
  }
  const comma = decimalComma(written);
  if (comma) return { problem: comma };
  return new DimensionScanner(written, context).scan();
}

function dimensionOf(written: string, nominal: number, tolerance: Tolerance): Dimension {
  return { written, nominal, tolerance, drawn: true, measured: null, unit: 'mm' };
}
