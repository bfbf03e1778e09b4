import { decimalComma } from './decimal-comma.ts';
import type { Dimension, Reading, Tolerance } from './model.ts';
import { plainSigns } from './plain-signs.ts';
import type { ValueProblem } from './value-problem.ts';

/** `bore` and `shaft` take the ISO 286 classes of their letters; `offset` may be negative. */
export type DimensionContext = 'length' | 'bore' | 'shaft' | 'offset';

export type DimensionReading = { readonly dimension: Dimension } | { readonly problem: ValueProblem };

/** Where a number stands in the written text. */
interface NumberToken {
  readonly at: readonly [number, number];
  /** As written, before any unit. */
  readonly value: number;
  readonly fraction: boolean;
}

/** What stands where: for rewriting a dimension with another nominal. */
export interface DimensionTokens {
  /** One number; two for limits; none where only a measured value stands. */
  readonly nominal: readonly NumberToken[];
  readonly dimension: Dimension;
}

const mmInInch = 25.4;
const number = /\s*(?:(\d+)\s+(\d+)\/(\d+)|(\d+)\/(\d+)|(\d+\.?\d*|\.\d+))/y;
const unitWord = /\s*(millimetres?|millimeters?|inches|inch|[a-zµ·]+|["″'′°])(?![a-z0-9])/iy;
const classLetters = /^(?:[A-HK-NPR-VX-Z]|J|JS|CD|EF|FG|Z[ABC])$/;
const plainNumber = /^\d+(?:\.\d+)?$/;
const symmetric = /^(\d+(?:\.\d+)?) ?± ?(\d+(?:\.\d+)?)$/;

/**
 * Reads a length or a diameter in any of its notations; all numbers come out in mm.
 * Inches are converted at 25.4 exactly (ISO 31 / ANSI, 1959 agreement).
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

function checked(
  tokens: DimensionTokens,
  context: DimensionContext,
): DimensionTokens | { readonly problem: ValueProblem } {
  const { dimension } = tokens;
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

/** Float noise away: a billionth of a millimetre is enough. */
const clean = (x: number): number => Math.round(x * 1e9) / 1e9 + 0;

/** Reads once from left to right; the first thing not understood ends it with a problem. */
class DimensionScanner {
  private readonly written: string;
  private readonly context: DimensionContext;
  private readonly text: string;
  private at = 0;
  private problem: ValueProblem | null = null;
  private unit: 'mm' | 'in' | null = null;

  constructor(written: string, context: DimensionContext) {
    this.written = written;
    this.context = context;
    this.text = plainSigns(written);
  }

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

  private take(pattern: RegExp): RegExpExecArray | null {
    pattern.lastIndex = this.at;
    const match = pattern.exec(this.text);
    if (match) this.at = pattern.lastIndex;
    return match;
  }

  private number(): NumberToken | null {
    const start = this.at;
    const match = this.take(number);
    if (!match) return null;
    const [text, whole, over, under, over1, under1, decimal] = match;
    const blank = text.length - text.trimStart().length;
    const at = [start + blank, this.at] as const;
    if (decimal !== undefined) return { at, value: Number(decimal), fraction: false };
    const top = Number(over ?? over1);
    const bottom = Number(under ?? under1);
    if (bottom === 0) {
      this.fail(at, `${this.slice(at)} divides by 0`);
      return null;
    }
    return { at, value: Number(whole ?? 0) + top / bottom, fraction: true };
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
    if (/\s*[–—]/y.test(this.text.slice(this.at))) return this.dashRange(first);
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

  private dashRange(first: NumberToken): Tolerance {
    const start = this.at;
    this.take(/\s*[–—]/y);
    const second = this.number();
    if (second) {
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

  /** A deviation in the unit of the nominal; `20 µm` after it is taken at its word. */
  private deviationNumber(): number | null {
    const start = this.at;
    const token = this.number();
    if (!token) {
      this.notUnderstood(start);
      return null;
    }
    const micron = this.take(/\s*(?:µm|um)(?![a-z])/iy);
    if (!micron) return token.value;
    const mm = token.value / 1000;
    return clean(this.unit === 'in' ? mm / mmInInch : mm);
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

  /** Takes `mm` or `in` where it stands; any other unit is a problem. */
  private unitAfter(afterNominal: boolean): void {
    if (this.problem) return;
    const start = this.at;
    const match = this.take(unitWord);
    if (!match) return;
    const word = match[1] ?? '';
    const lower = word.toLowerCase();
    if (lower === 'mm' || lower.startsWith('millim')) this.setUnit('mm', start);
    else if (lower === 'in' || lower === 'inch' || lower === 'inches' || word === '"' || word === '″') {
      this.setUnit('in', start);
    } else if (
      lower === 'measured' ||
      (afterNominal && classLetters.test(word.toUpperCase()) && !isLengthUnit(lower))
    ) {
      this.at = start;
    } else this.wrongUnit(word, start);
  }

  private setUnit(unit: 'mm' | 'in', start: number): void {
    if (this.unit !== null && this.unit !== unit) {
      this.fail([start, this.at], 'mm and in stand in one dimension; one unit is wanted');
    }
    this.unit = unit;
  }

  private wrongUnit(word: string, start: number): void {
    const scale = { cm: 10, m: 1000, dm: 100, µm: 0.001, um: 0.001 }[word.toLowerCase()];
    const figure = Number(this.text.slice(0, start).trim().replace(/^Ø/, ''));
    const alone = this.text.slice(this.at).trim() === '' && Number.isFinite(figure);
    const at = [this.at - word.length, this.at] as const;
    if (scale !== undefined && alone) {
      const mm = String(clean(figure * scale));
      this.problem = {
        code: 'wrong-unit',
        message: `${this.written.trim()} is ${mm} mm; lengths are written in mm or in`,
        at,
        suggestion: mm,
      };
      return;
    }
    this.problem = {
      code: 'wrong-unit',
      message: `${word} is no unit of length here; mm (the number alone) or in is wanted`,
      at,
    };
  }

  private end(): void {
    this.take(/\s*/y);
    if (this.at < this.text.length) this.notUnderstood(this.at);
  }

  private slice(at: readonly [number, number]): string {
    return this.written.slice(at[0], at[1]);
  }

  private fail(at: readonly [number, number], message: string, suggestion?: string): void {
    if (this.problem) return;
    const base = { code: 'dimension-not-understood', message, at } as const;
    this.problem = suggestion === undefined ? base : { ...base, suggestion };
  }

  private notUnderstood(from: number): void {
    const rest = this.written.slice(from);
    const blank = rest.length - rest.trimStart().length;
    const examples =
      this.context === 'bore'
        ? '26, 26 N7 or 26 -0.007/-0.028'
        : this.context === 'shaft'
          ? '17, 17 h6 or 17 0/-0.011'
          : '14.03, 14.03 ±0.02 or 14 +0.05/0';
    const what =
      rest.trim() === '' ? (this.written.trim() === '' ? 'nothing' : this.written.trim()) : rest.trim();
    const known =
      from === 0
        ? `${what} is not understood as a dimension`
        : `${what} is not understood after ${this.written.slice(0, from).trim()}`;
    this.fail(
      [from + blank, Math.max(this.written.trimEnd().length, from + blank)],
      `${known}; wanted is e.g. ${examples}`,
    );
  }
}

const isLengthUnit = (word: string): boolean => ['cm', 'm', 'dm', 'km', 'ft', 'um', 'µm'].includes(word);
