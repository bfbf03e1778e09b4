import type { Loop, LoopTerm } from '../assembly/loop.ts';
import { asBuilt } from '../assembly/settle.ts';
import { closeLoop, type LoopResult, type Term } from '../engine/stack/loop.ts';
import { normalShareOutside, shareOutside } from '../engine/stack/monte-carlo.ts';

/** A loop worked out one way: as drawn, or as built. */
export interface Closed extends LoopResult {
  /** Share of builds outside the limits wanted, 0 to 1; null where nothing is wanted. */
  readonly shareOutside: number | null;
}

/** A loop with its results. */
export interface LoopAnalysis<L extends Loop = Loop> {
  readonly loop: L;
  /** Null while a term is missing. */
  readonly drawn: Closed | null;
  /** With the measured values in place of the drawn ones; null where nothing in the loop was measured. */
  readonly built: Closed | null;
}

/** Numbers every loop is worked out with. */
export interface StatisticsRules {
  readonly builds: number;
  readonly seed: number;
}

/** Works a loop out as drawn and, where something was measured, as built. */
export function close<L extends Loop>(loop: L, rules: StatisticsRules): LoopAnalysis<L> {
  if (loop.missing.length > 0) return { loop, drawn: null, built: null };
  const measured = loop.terms.some((item) => item.settled.built !== null);
  return {
    loop,
    drawn: work(loop, 'drawn', rules),
    built: measured ? work(loop, 'built', rules) : null,
  };
}

function work(loop: Loop, how: 'drawn' | 'built', rules: StatisticsRules): Closed {
  const terms = loop.terms.map((item, index) => engineTerm(item, index, how));
  const { wanted } = loop;
  return {
    ...closeLoop(terms),
    shareOutside: wanted ? share(terms, [wanted.lo, wanted.hi], rules) : null,
  };
}

/** A sum of more parts than this is worked out in closed form, which is exact; drawing it would only cost time. */
const mostDrawn = 32;
/** Shares worked out before: variants mostly share their loops, and an edit leaves most loops as they were. */
const known = new Map<string, number>();
const mostKnown = 1000;

function share(terms: readonly Term[], limits: readonly [number, number], rules: StatisticsRules): number {
  if (mostDrawn < terms.length) return normalShareOutside(terms, limits);
  const numbers = terms.map(({ sign, count, nominal, lower, upper }) => [
    sign * count,
    nominal,
    lower,
    upper,
  ]);
  const key = `${numbers.join()};${limits.join()};${rules.builds},${rules.seed}`;
  const before = known.get(key);
  if (before !== undefined) return before;
  const worked = shareOutside(terms, limits, rules);
  if (mostKnown <= known.size) known.clear();
  known.set(key, worked);
  return worked;
}

/** The index keeps two parts of one address apart; results are matched back by it. */
function engineTerm(item: LoopTerm, index: number, how: 'drawn' | 'built'): Term {
  const limits = how === 'drawn' ? item.settled.drawn : asBuilt(item.settled);
  return { id: String(index), sign: item.sign, count: item.count, ...limits };
}
