import type { VariantAnalysis } from '../analysis/analyze.ts';
import type { Closed, LoopAnalysis } from '../analysis/close.ts';
import type { GapLoop, Loop, PairLoop, SeatLoop, Wanted, WidthLoop } from '../assembly/loop.ts';
import { length, millimetres, plain, range, share } from '../engine/base/figures.ts';

export type AnyLoop = WidthLoop | PairLoop | SeatLoop | GapLoop;

/** Every loop of a variant, the clamped width first. */
export function loopsOf(variant: VariantAnalysis): readonly LoopAnalysis<AnyLoop>[] {
  return [variant.width, ...variant.pairs, ...variant.seats, ...variant.gaps];
}

/** What a loop is called on a drawing. */
export function loopName(loop: AnyLoop): string {
  switch (loop.kind) {
    case 'width':
      return 'clamped width';
    case 'pair':
      return `spacer against shoulders, ${loop.bearings.join(' and ')}`;
    case 'seat':
      return `depth of ${loop.seat} beyond its bearing`;
    case 'gap':
      return `gap between ${loop.between.join(' and ')}`;
  }
}

/** `100.00 mm on average, wanted 100 ±0.1, worst 99.65 to 100.35 mm`. */
export function resultWords(closed: Closed, wanted: Wanted | null): string {
  const outside = closed.shareOutside === null ? '' : `, ${share(closed.shareOutside)} of builds outside`;
  const against = wanted ? `, wanted ${wantedWords(wanted)}` : '';
  const digits = Math.abs(closed.mean) < 1 ? 3 : 2;
  return `${millimetres(closed.mean, digits)} on average${against}; worst case ${range(...closed.worst, digits)}${outside}`;
}

export function wantedWords(wanted: Wanted): string {
  if (!Number.isFinite(wanted.hi)) return `at least ${plain(wanted.lo)}`;
  const half = (wanted.hi - wanted.lo) / 2;
  const centred = Math.abs((wanted.hi + wanted.lo) / 2 - wanted.nominal) < 1e-9;
  if (centred) return half === 0 ? plain(wanted.nominal) : `${plain(wanted.nominal)} ±${plain(half)}`;
  return `${length(wanted.lo)} to ${length(wanted.hi)}`;
}

/** The share of one term in the variation of its loop, 0 to 1; null where nothing is known. */
export function shareOf(loop: LoopAnalysis<Loop>, index: number): number | null {
  const closed = loop.built ?? loop.drawn;
  return closed?.contributions.find(({ id }) => id === String(index))?.share ?? null;
}
