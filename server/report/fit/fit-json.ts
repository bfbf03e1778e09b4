import type { DecodedBearing } from '../../engine/bearings/decoded-bearing.ts';
import type { FitAnswer, FitSide } from './fit-answer.ts';

/** What `fit --json` prints: a stable shape, documented in the README. Nominals in mm, deviations in µm. */
export function fitJson(
  code: string,
  bearing: DecodedBearing,
  answer: FitAnswer | { readonly error: string },
) {
  if ('error' in answer) return { code, error: answer.error };
  const { written, on, part, ring, clearance, kind, sameSize, usual, assumed, source, advice } = answer;
  const { min, mean, max } = clearance;
  return {
    fit: written,
    code,
    size: { bore: bearing.bore, outside: bearing.outside, width: bearing.width },
    on,
    part: side(part),
    ring: side(ring),
    clearance: { minUm: um(min), meanUm: um(mean), maxUm: um(max) },
    kind,
    sameSize,
    usual: usual && { verdict: usual.verdict, classes: usual.usual, why: usual.why },
    sources: [source],
    notes: [assumed, advice].filter((text) => text !== null),
  };
}

function side({ nominal, lower, upper }: FitSide) {
  return { nominal, lowerUm: um(lower), upperUm: um(upper) };
}

const um = (mm: number): number => mm * 1000;
