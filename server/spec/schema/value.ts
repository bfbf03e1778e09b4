import * as z from 'zod';
import { readDimension } from '../dimension.ts';
import type { DimensionContext } from '../dimension-text.ts';
import type { Dimension, Quantity } from '../model.ts';
import { nearestOf } from '../nearest.ts';
import { type QuantityKind, readQuantity } from '../quantity.ts';
import { type Reading, readCount, readNumber } from '../small-values.ts';
import type { SectionId, ValueType } from './key-info.ts';

// Under a strict content security policy zod may not build functions from text.
z.config({ jitless: true });

/** What a key means, for people: the one place hover, completion and the exported schema read it from. */
export interface ValueMeta {
  readonly title: string;
  /** One or two sentences, with the unit. */
  readonly description: string;
  readonly examples: readonly string[];
}

/** A value read from its written text; its issue carries the `ValueProblem` in `params`. */
export type Value<T> = z.ZodPipe<z.ZodString, z.ZodTransform<T, string>>;

export function value<T>(
  valueType: ValueType,
  read: (written: string) => Reading<T>,
  meta: ValueMeta,
  more: Readonly<Record<string, unknown>> = {},
): Value<T> {
  const schema = z.string().transform((written, context): T => {
    const reading = read(written);
    if ('value' in reading) return reading.value;
    context.addIssue({
      code: 'custom',
      message: reading.problem.message,
      params: { problem: reading.problem },
    });
    return z.NEVER;
  });
  return schema.meta({ ...meta, examples: [...meta.examples], valueType, ...more });
}

/** A key that opens a section or a list of its own; the readers go into it. */
export function opens(section: SectionId, meta: ValueMeta, valueType: ValueType = 'section'): z.ZodAny {
  return z.any().meta({ ...meta, examples: [...meta.examples], valueType, section });
}

const dimension =
  (context: DimensionContext) =>
  (title: string, description: string, ...examples: readonly string[]): Value<Dimension> =>
    value(
      context,
      (written) => {
        const reading = readDimension(written, context);
        return 'problem' in reading ? reading : { value: reading.dimension };
      },
      { title, description, examples },
    );

/** A length along the axle, or a diameter that takes no fit class. */
export const length = dimension('length');
export const bore = dimension('bore');
export const shaft = dimension('shaft');
/** A distance that may be negative. */
export const offset = dimension('offset');

export function quantity(
  kind: QuantityKind,
  title: string,
  description: string,
  ...examples: readonly string[]
): Value<Quantity> {
  return value(
    kind,
    (written) => {
      const reading = readQuantity(written, kind);
      return 'problem' in reading ? reading : { value: reading.quantity };
    },
    { title, description, examples },
  );
}

/** One of a few words, as spelled in `choices`. */
export function choice<const C extends string>(
  choices: readonly C[],
  title: string,
  description: string,
  alias: Readonly<Record<string, C>> = {},
): Value<C> {
  const read = (written: string): Reading<C> => {
    const text = written.trim();
    if ((choices as readonly string[]).includes(text)) return { value: text as C };
    const word = text.toLowerCase();
    const near = (Object.hasOwn(alias, word) ? alias[word] : undefined) ?? nearestOf(text, choices);
    const listed = choices.length <= 8 ? `: ${choices.join(', ')}` : '';
    const message = `${text === '' ? 'nothing' : text} is not one of the values of ${title}${listed}${near ? `; nearest is ${near}` : ''}`;
    const problem = { code: 'value-not-understood', message, at: [0, written.length] } as const;
    return { problem: near ? { ...problem, suggestion: near } : problem };
  };
  return value('choice', read, { title, description, examples: choices.slice(0, 1) }, { choices });
}

/** Free text of one kind; never refused unless empty. */
export function text(
  valueType: ValueType,
  title: string,
  description: string,
  ...examples: readonly string[]
): Value<string> {
  return value(valueType, (written) => ({ value: written.trim() }), { title, description, examples });
}

/** A whole number from nothing to `hi`. */
export function count(
  title: string,
  description: string,
  what: string,
  hi: number,
  example: string,
): z.ZodOptional<Value<number>> {
  return value('count', (written) => readCount(written, what, 0, hi, example), {
    title,
    description,
    examples: [example],
  }).optional();
}

/** A plain number within limits. */
export function numberBetween(
  title: string,
  description: string,
  what: string,
  lo: number,
  hi: number,
  example: string,
): z.ZodOptional<Value<number>> {
  return value('number', (written) => readNumber(written, what, lo, hi, example), {
    title,
    description,
    examples: [example],
  }).optional();
}

/** `yes` or `no`. */
export function yesNo(title: string, description: string): Value<boolean> {
  const read = (written: string): Reading<boolean> => {
    const word = written.trim().toLowerCase();
    if (['yes', 'true', 'on'].includes(word)) return { value: true };
    if (['no', 'false', 'off'].includes(word)) return { value: false };
    const message = `${written.trim()} is not one of the values of ${title}: yes, no`;
    return { problem: { code: 'value-not-understood', message, at: [0, written.length] } };
  };
  return value('choice', read, { title, description, examples: ['yes'] }, { choices: ['yes', 'no'] });
}

/** A section's shape agrees with the model: each key reads to the model's type. */
export type Shape<V> = { readonly [K in keyof V]?: z.ZodType<V[K] | undefined, string | undefined> };
