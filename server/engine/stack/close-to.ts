import { closeLoop, type Term } from './loop.ts';

/**
 * The nominal of the term named `id` that brings the mean of the loop to `target`, rounded to `step`; mm.
 * With a count above one every part of that term takes an equal share of the change. Rounding leaves at most
 * half a step times the count. Null when the loop has no such term or the term enters zero times.
 */
export function lengthThatCloses(
  terms: readonly Term[],
  id: string,
  target: number,
  step = 0.01,
): number | null {
  const term = terms.find((candidate) => candidate.id === id);
  if (!term || term.count === 0) return null;
  const missing = target - closeLoop(terms).mean;
  const exact = term.nominal + (term.sign * missing) / term.count;
  if (step <= 0) return exact;
  return Number((Math.round(exact / step) * step).toFixed(decimals(step)));
}

/** Decimals that a multiple of `step` can show, so that 13.910000000000002 is written 13.91. */
function decimals(step: number): number {
  for (let digits = 0; digits < 9; digits++) {
    const scaled = step * 10 ** digits;
    if (Math.abs(scaled - Math.round(scaled)) < 1e-9) return digits;
  }
  return 9;
}
