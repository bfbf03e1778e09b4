import fc from 'fast-check';
import type { Term } from '../../../server/engine/stack/loop.ts';

/** A term as a drawing writes it: a length with its deviations, mm. */
export function term(
  id: string,
  nominal: number,
  lower: number,
  upper: number,
  rest: Partial<Term> = {},
): Term {
  return { id, sign: 1, count: 1, nominal, lower, upper, ...rest };
}

const deviation = fc.integer({ min: -200, max: 200 }).map((micrometres) => micrometres / 1000);

/** Terms of a loop with drawing-like lengths, tolerances, counts and signs. */
export const arbitraryTerms = fc
  .array(
    fc.record({
      sign: fc.constantFrom(1 as const, -1 as const),
      count: fc.integer({ min: 0, max: 4 }),
      nominal: fc.integer({ min: 1, max: 20_000 }).map((hundredths) => hundredths / 100),
      deviations: fc.tuple(deviation, deviation),
    }),
    { minLength: 1, maxLength: 9 },
  )
  .map((records) =>
    records.map(({ sign, count, nominal, deviations: [a, b] }, index): Term => {
      return { id: `part-${index}`, sign, count, nominal, lower: Math.min(a, b), upper: Math.max(a, b) };
    }),
  );
