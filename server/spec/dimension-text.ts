import { plainSigns } from './plain-signs.ts';
import type { ValueProblem } from './value-problem.ts';

/** `bore` and `shaft` take the ISO 286 classes of their letters; `offset` may be negative. */
export type DimensionContext = 'length' | 'bore' | 'shaft' | 'offset';

/** Where a number stands in the written text. */
export interface NumberToken {
  readonly at: readonly [number, number];
  /** As written, before any unit. */
  readonly value: number;
  readonly fraction: boolean;
}

export const mmInInch = 25.4;
/** mm in other units of length. */
const otherScales = new Map([
  ['cm', 10],
  ['m', 1000],
  ['dm', 100],
  ['µm', 0.001],
  ['um', 0.001],
]);
const number = /\s*(?:(\d+)\s+(\d+)\/(\d+)|(\d+)\/(\d+)|(\d+(?:\.(?!\.)\d*)?|\.\d+))/y;
const unitWord = /\s*(millimetres?|millimeters?|inches|inch|[a-zµ·]+|["″'′°])(?![a-z0-9])/iy;
/** What is a unit, though not of a length. */
const otherUnit =
  /^(?:[kdcmµu]?m|km|ft|feet|yd|mil|thou|[kM]?N|kgf|lbf?|k?g|oz|[GMk]?Pa|bar|psi|°[CF]?|deg|rad|N[·.]?m|N\/mm|['′])$/i;
/** Letters of the ISO 286 classes, as of a bore. */
export const classLetters = /^(?:[A-HK-NPR-VX-Z]|J|JS|CD|EF|FG|Z[ABC])$/;

/** Float noise away: a billionth of a millimetre is enough. */
export const clean = (x: number): number => Math.round(x * 1e9) / 1e9 + 0;

/** A written dimension being read from left to right: numbers, units, and the first thing not understood. */
export class DimensionText {
  protected readonly written: string;
  protected readonly context: DimensionContext;
  protected readonly text: string;
  protected at = 0;
  protected problem: ValueProblem | null = null;
  protected unit: 'mm' | 'in' | null = null;

  constructor(written: string, context: DimensionContext) {
    this.written = written;
    this.context = context;
    this.text = plainSigns(written);
  }

  protected take(pattern: RegExp): RegExpExecArray | null {
    pattern.lastIndex = this.at;
    const match = pattern.exec(this.text);
    if (match) this.at = pattern.lastIndex;
    return match;
  }

  protected number(): NumberToken | null {
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

  /** A deviation in the unit of the nominal; `20 µm` after it is taken at its word. */
  protected deviationNumber(): number | null {
    const start = this.at;
    const token = this.number();
    if (!token && this.text.slice(this.at).trim() === '') {
      const sign = this.written.slice(0, start).trimEnd();
      this.fail([sign.length - 1, sign.length], `a value is missing after ${sign}`);
      return null;
    }
    if (!token) {
      this.notUnderstood(start);
      return null;
    }
    const micron = this.take(/\s*(?:µm|um)(?![a-z])/iy);
    if (!micron) return token.value;
    const mm = token.value / 1000;
    return clean(this.unit === 'in' ? mm / mmInInch : mm);
  }

  /** Takes `mm` or `in` where it stands; any other unit is a problem. */
  protected unitAfter(afterNominal: boolean): void {
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

  protected setUnit(unit: 'mm' | 'in', start: number): void {
    if (this.unit !== null && this.unit !== unit) {
      this.fail([start, this.at], 'mm and in stand in one dimension; one unit is wanted');
    }
    this.unit = unit;
  }

  protected wrongUnit(word: string, start: number): void {
    const scale = otherScales.get(word.toLowerCase());
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
    if (!otherUnit.test(word)) {
      this.at = start;
      this.notUnderstood(start);
      return;
    }
    this.problem = {
      code: 'wrong-unit',
      message: `${word} is no unit of length here; mm (the number alone) or in is wanted`,
      at,
    };
  }

  protected end(): void {
    this.take(/\s*/y);
    if (this.at < this.text.length) this.notUnderstood(this.at);
  }

  protected slice(at: readonly [number, number]): string {
    return this.written.slice(at[0], at[1]);
  }

  protected fail(at: readonly [number, number], message: string, suggestion?: string): void {
    if (this.problem) return;
    const base = { code: 'dimension-not-understood', message, at } as const;
    this.problem = suggestion === undefined ? base : { ...base, suggestion };
  }

  protected notUnderstood(from: number): void {
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
