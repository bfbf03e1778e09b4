import type { Closed } from '../analysis/close.ts';
import type { Loop, LoopTerm, Wanted } from '../assembly/loop.ts';
import { asBuilt, type Limits, meanOf } from '../assembly/settle.ts';
import { length, plain, share, signed } from '../engine/base/figures.ts';
import type { Related } from './check.ts';

/** Every term of a loop as a related place, in the order of the sum, and the width or gap wanted last. */
export function relatedTerms(loop: Loop, closed: Closed, how: 'drawn' | 'built'): readonly Related[] {
  const terms = loop.terms.map((item, index): Related => {
    const part = closed.contributions.find(({ id }) => id === String(index));
    const of = part && 0 < part.share ? `, ${share(part.share)} of the variation` : '';
    return { path: item.path, message: `${sayTerm(item, how)}${of}` };
  });
  const { wanted } = loop;
  return wanted ? [...terms, { path: wanted.path, message: `wanted here: ${sayWanted(wanted)}` }] : terms;
}

function sayTerm(item: LoopTerm, how: 'drawn' | 'built'): string {
  const limits = how === 'built' ? asBuilt(item.settled) : item.settled.drawn;
  const measured = how === 'built' && item.settled.built ? ', measured' : '';
  const times = item.count === 1 ? '' : `${item.count} × `;
  const sign = item.sign === 1 ? '+' : '−';
  return `${sign} ${times}${sayLimits(limits)} ${item.address}${measured}`;
}

/** `14.03 ±0.02`, `5.00 +0/−0.12 (mean 4.94)`, `100.00`. */
export function sayLimits(limits: Limits): string {
  const { nominal, lower, upper } = limits;
  if (lower === 0 && upper === 0) return length(nominal);
  if (Math.abs(lower + upper) < 1e-9) return `${length(nominal)} ±${plain(upper)}`;
  return `${length(nominal)} ${signedPlain(upper)}/${signedPlain(lower)} (mean ${length(meanOf(limits))})`;
}

const signedPlain = (value: number): string =>
  value === 0 ? '0' : `${value < 0 ? '−' : '+'}${plain(Math.abs(value))}`;

/** `100 ±0.1`, `at least 0.3`. */
export function sayWanted(wanted: Wanted): string {
  const assumed = wanted.assumed ? ' (assumed)' : '';
  if (wanted.hi === Number.POSITIVE_INFINITY) return `at least ${plain(wanted.lo)}${assumed}`;
  const half = (wanted.hi - wanted.lo) / 2;
  const centred = Math.abs((wanted.hi + wanted.lo) / 2 - wanted.nominal) < 1e-9;
  if (centred) return `${plain(wanted.nominal)} ±${plain(half)}${assumed}`;
  return `${length(wanted.lo)} to ${length(wanted.hi)}${assumed}`;
}

/** How a mean lies against its limits, in words. */
export function sayAgainst(mean: number, wanted: Wanted): string {
  if (wanted.hi < mean) return `${length(mean - wanted.hi)} mm over the upper limit`;
  if (mean < wanted.lo) return `${length(wanted.lo - mean)} mm under the lower limit`;
  return `${signed(mean - (wanted.lo + wanted.hi) / 2)} mm off the middle`;
}

/** The numbers of a loop for `data`, mm. */
export function loopData(loop: Loop, closed: Closed): Record<string, unknown> {
  const { wanted } = loop;
  return {
    nominal: round(closed.nominal),
    mean: round(closed.mean),
    worst: closed.worst.map(round),
    rss: closed.rss.map(round),
    shareOutside: closed.shareOutside,
    ...(wanted ? { limits: [round(wanted.lo), Number.isFinite(wanted.hi) ? round(wanted.hi) : null] } : {}),
  };
}

/** Rounded to a nanometre, so that sums of decimals print as they were written. */
export function round(value: number): number {
  return Number(value.toFixed(6));
}
