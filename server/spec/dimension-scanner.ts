import {
  classLetters,
  clean,
  type DimensionContext,
  DimensionText,
  mmInInch,
  type NumberToken,
} from './dimension-text.ts';
import type { Dimension, Reading, Tolerance } from './model.ts';
import type { ValueProblem } from './value-problem.ts';

/** What stands where: for rewriting a dimension with another nominal. */
export interface DimensionTokens {
  /** One number; two for limits; none where only a measured value stands. */
  readonly nominal: readonly NumberToken[];
  readonly dimension: Dimension;
}

/** Reads the notations of a dimension; the first thing not understood ends it with a problem. */
export class DimensionScanner extends DimensionText {
  scan(): DimensionTokens | { readonly problem: ValueProblem } {
    const tokens = this.read();
    return this.problem ? { problem: this.problem } : tokens;
  }

  private read(): DimensionTokens {
    const nominal: NumberToken[] = [];
    let value = 0;
    let tolerance: Tolerance = { kind: 'none' };
    let measured: Reading | null = null;
    const drawn = !this.take(/\s*measured(?![a-z])/iy);
    if (drawn) {
      this.take(/\s*Ø/y);
      const first = this.nominal();
      if (first) {
        nominal.push(first);
        value = first.value;
        tolerance = this.tolerance(first, nominal);
        if (tolerance.kind === 'limits' && nominal.length === 2)
          value = clean((tolerance.upper + tolerance.lower) / 2);
      }
      const drawnScale = this.unit === 'in' ? mmInInch : 1;
      if (tolerance.kind === 'limits') {
        const base = nominal.length === 2 ? value : 0;
        tolerance = {
          kind: 'limits',
          lower: clean((tolerance.lower - base) * drawnScale),
          upper: clean((tolerance.upper - base) * drawnScale),
        };
      }
      value = clean(value * drawnScale);
    }
    const drawnUnit = this.unit ?? 'mm';
    if (!this.problem && (!drawn || this.take(/\s*,?\s*measured(?![a-z])/iy))) {
      measured = this.reading();
      if (!drawn) value = measured.value;
    }
    const unit = drawn ? drawnUnit : (this.unit ?? 'mm');
    if (!this.problem) this.end();
    const dimension: Dimension = { written: this.written, nominal: value, tolerance, drawn, measured, unit };
    if (!this.problem) {
      const result = checked({ nominal, dimension }, this.context);
      if ('problem' in result) this.problem = result.problem;
    }
    return { nominal, dimension };
  }

  private nominal(): NumberToken | null {
    const start = this.at;
    const minus = this.take(/\s*-/y);
    const token = this.number();
    if (!token) {
      this.notUnderstood(start);
      return null;
    }
    if (minus && this.context !== 'offset') {
      this.fail(
        [start, token.at[1]],
        `${this.slice([start, token.at[1]]).trim()} is negative; a length or diameter is written without a sign`,
      );
    }
    this.unitAfter(true);
    const sign = minus ? -1 : 1;
    const at = minus ? ([this.text.indexOf('-', start), token.at[1]] as const) : token.at;
    if (token.fraction && this.unit === null && !/["″]|\bin/i.test(this.text.slice(this.at))) {
      this.fail(
        token.at,
        `${this.slice(token.at)} is a fraction without a unit; fractions are read in inches: ${this.slice(token.at)} in`,
        `${this.written.trim()} in`,
      );
    }
    return { at, value: sign * token.value, fraction: token.fraction };
  }

  /** For limits the result holds the two limits themselves; they are made deviations by the caller. */
  private tolerance(first: NumberToken, nominal: NumberToken[]): Tolerance {
    if (this.problem) return { kind: 'none' };
    if (this.take(/\s*(?:±|\+\s?\/?\s?-(?=\s*[\d.]))/y)) {
      const half = this.deviationNumber();
      this.unitAfter(false);
      return half === null
        ? { kind: 'none' }
        : { kind: 'limits', lower: half === 0 ? 0 : -half, upper: half };
    }
    if (this.take(/\s*(?:\.\.\.?|…)/y)) return this.limits(first, nominal);
    if (this.isDashRange(first)) return this.dashRange(first);
    const start = this.at;
    const sign = this.take(/\s*(?:([+-])(?=\s*[\d.])|(?=0(?:\s*\/|\s+[+-])))/y);
    if (sign) return this.deviations(start, sign[1]);
    return this.fitClass();
  }

  private limits(first: NumberToken, nominal: NumberToken[]): Tolerance {
    const second = this.number();
    if (!second) {
      this.fail(
        [first.at[0], this.at],
        `the upper limit is missing after ${this.slice([first.at[0], this.at])}`,
      );
      return { kind: 'none' };
    }
    this.unitAfter(false);
    nominal.push(second);
    if (second.value < first.value) {
      this.fail(
        [first.at[0], second.at[1]],
        `the limits stand the wrong way round: ${this.slice(first.at)} is above ${this.slice(second.at)}; the lower one comes first`,
        `${this.slice(second.at)}..${this.slice(first.at)}${this.written.slice(this.at)}`,
      );
    }
    return { kind: 'limits', lower: first.value, upper: second.value };
  }

  /** `61.98–62.02`, or a hyphen before a number too large for a deviation. */
  private isDashRange(first: NumberToken): boolean {
    const match = /^\s*(?:[–—]|-\s*(\d+(?:\.\d+)?)\s*$)/.exec(this.text.slice(this.at));
    return match !== null && (match[1] === undefined || (0 < first.value && first.value <= Number(match[1])));
  }

  private dashRange(first: NumberToken): Tolerance {
    const start = this.at;
    this.take(/\s*[–—-]/y);
    const second = this.number();
    if (second && first.value <= second.value) {
      const wanted = `${this.slice(first.at)}..${this.slice(second.at)}`;
      this.fail(
        [first.at[0], second.at[1]],
        `a dash between two values is not read; limits are written ${wanted}`,
        wanted,
      );
    } else this.notUnderstood(start);
    return { kind: 'none' };
  }

  private deviations(start: number, firstSign: string | undefined): Tolerance {
    const first = this.deviationNumber();
    this.unitAfter(false);
    const gap = this.take(/\s*\/\s*|\s+|(?=[+-])/y);
    const secondSign = gap ? this.take(/([+-])?(?=[\d.])/y) : null;
    if (!secondSign) {
      const one = this.slice([start, this.at]).trim();
      const both = firstSign === '-' ? `0/${one}` : `${one}/0`;
      this.fail(
        [start, this.at],
        `${one} is one deviation; both are wanted, as in ${both}`,
        `${this.written.slice(0, start)} ${both}${this.written.slice(this.at)}`,
      );
      return { kind: 'none' };
    }
    const second = this.deviationNumber();
    this.unitAfter(false);
    if (first === null || second === null) return { kind: 'none' };
    if ((firstSign === undefined && first !== 0) || (secondSign[1] === undefined && second !== 0)) {
      this.fail(
        [start, this.at],
        `a deviation other than 0 needs its sign: ${this.slice([start, this.at]).trim()}`,
      );
      return { kind: 'none' };
    }
    const a = firstSign === '-' ? -first : first;
    const b = secondSign[1] === '-' ? -second : second;
    return { kind: 'limits', lower: Math.min(a, b) + 0, upper: Math.max(a, b) + 0 };
  }

  private fitClass(): Tolerance {
    const start = this.at;
    const match = this.take(/\s*(?!measured|mm|in)([A-Za-z]{1,2})\s?(\d{1,2})?(?![A-Za-z0-9.])/y);
    if (!match) return { kind: 'none' };
    const letters = match[1] ?? '';
    const from = this.at - match[0].trimStart().length;
    const at = [from, this.at] as const;
    const upper = letters.toUpperCase();
    const grade = Number(match[2] ?? -1);
    if (!classLetters.test(upper) || 18 < grade) {
      this.at = start;
      this.notUnderstood(start);
      return { kind: 'none' };
    }
    if (match[2] === undefined) {
      this.fail(
        at,
        `${letters} is a fit class without its grade, as in ${this.context === 'shaft' ? 'h6' : 'N7'}`,
      );
    } else if (this.context !== 'bore' && this.context !== 'shaft') {
      this.fail(
        at,
        `${this.slice(at)} is a fit class; a length takes deviations or limits, as in 14.03 ±0.02`,
      );
    } else {
      const hole = this.context === 'bore';
      const wanted = hole ? upper : letters.toLowerCase();
      if (letters !== wanted) {
        const kinds = hole
          ? `a shaft's class; a bore takes a capital letter`
          : `a bore's class; a shaft takes a small letter`;
        const suggestion = `${this.written.slice(0, from)}${wanted}${grade}${this.written.slice(this.at)}`;
        this.fail(at, `${this.slice(at)} is ${kinds}: ${wanted}${grade}`, suggestion);
      }
      return { kind: 'class', letters: wanted, grade };
    }
    return { kind: 'none' };
  }

  private reading(): Reading {
    const start = this.at;
    const before = this.unit;
    const token = this.number();
    if (!token) {
      this.fail(
        [Math.max(0, start - 'measured'.length), start],
        'the measured value is missing, as in measured 62.03',
      );
      return { value: 0, uncertainty: null };
    }
    this.unit = null;
    this.unitAfter(false);
    let uncertainty: number | null = null;
    if (!this.problem && this.take(/\s*(?:±|\+\s?\/?\s?-)/y)) {
      uncertainty = this.deviationNumber();
      this.unitAfter(false);
    }
    const scale = (this.unit ?? before) === 'in' ? mmInInch : 1;
    this.unit ??= before;
    return {
      value: clean(token.value * scale),
      uncertainty: uncertainty === null ? null : clean(uncertainty * scale),
    };
  }
}

/** Nothing of a bicycle wheel is longer than this, mm: a larger number is a slip of the keyboard. */
const largest = 10_000;

/** A diameter of 0 is none. */
export function checked(
  tokens: DimensionTokens,
  context: DimensionContext,
): DimensionTokens | { readonly problem: ValueProblem } {
  const { dimension } = tokens;
  const { nominal, tolerance, measured } = dimension;
  const spread = tolerance.kind === 'limits' ? Math.max(Math.abs(tolerance.lower), tolerance.upper) : 0;
  if (!(Math.max(nominal, spread, measured?.value ?? 0) <= largest)) {
    return {
      problem: {
        code: 'dimension-not-understood',
        message: `${dimension.written} is above ${largest} mm, more than any part of a wheel: a length in mm is wanted`,
        at: [0, dimension.written.length],
      },
    };
  }
  if ((context === 'bore' || context === 'shaft') && dimension.nominal === 0) {
    return {
      problem: {
        code: 'dimension-not-understood',
        message: `${dimension.written} is no diameter: a value above 0 mm is wanted`,
        at: [0, dimension.written.length],
      },
    };
  }
  return tokens;
}
