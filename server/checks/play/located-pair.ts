import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import type { Closed } from '../../analysis/close.ts';
import type { Clamp } from '../../analysis/mechanics/clamp-of.ts';
import { isWorked, type PairMechanics } from '../../analysis/mechanics/pair-mechanics.ts';
import type { PairLoop } from '../../assembly/loop.ts';
import { clampedPair } from '../../engine/play/clamped-pair.ts';
import { emptySeats } from '../empty-seats.ts';
import { lengthChanges } from '../length-fixes.ts';
import { findSeat } from '../seat-of.ts';
import { widthDraft } from '../stack/width-off.ts';
import { hasUnreadParts } from '../unread-parts.ts';
import { overstressed } from './overstressed.ts';

/** A pair of bearings whose play can be judged, as it is today: measured where it was measured, else as drawn. */
export interface LocatedPair {
  readonly variant: VariantAnalysis;
  readonly loop: PairLoop;
  readonly closed: Closed;
  readonly how: 'drawn' | 'built';
  readonly pair: PairMechanics;
  /** Null where nobody says with what force the stack is clamped. */
  readonly clamp: Clamp | null;
}

/** Travel less than this is not told from none, mm. */
export const leastTravel = 0.001;

/**
 * Pairs whose play is a question of the lengths between them. Where a fit has used the clearance up, where a sleeve
 * gives way under the clamp, or where the length that puts the width right puts the pair right too, that is the
 * cause and is said there. Angular-contact bearings are meant to be loaded and are left to `spacer-short`.
 */
export function locatedPairs(analysis: Analysis, variant: VariantAnalysis): readonly LocatedPair[] {
  if (hasUnreadParts(analysis) || emptySeats(variant).length > 0) return [];
  const { pairs, clamp } = variant.mechanics('built');
  return pairs.flatMap((pair, index) => {
    const result = variant.pairs[index];
    const closed = result?.built ?? result?.drawn;
    if (!isWorked(pair) || !result || !closed || pair.setting) return [];
    const located: LocatedPair = {
      variant,
      loop: result.loop,
      closed,
      how: result.built ? 'built' : 'drawn',
      pair,
      clamp,
    };
    if (isCrossed(variant, located)) return [];
    const usedUp = [pair.left, pair.right].some(({ mounted }) => (mounted?.mean ?? 0) <= 0);
    if (usedUp || overstressed(analysis, pair).length > 0 || isMendedByWidth(analysis, located)) return [];
    return [located];
  });
}

/** Whether both bearings carry both ways. */
export function isDeepGroove({ pair }: LocatedPair): boolean {
  return pair.input.left.carries === 'both' && pair.input.right.carries === 'both';
}

/** Whether the bearings name each the seat of the other, which is said there. */
function isCrossed(variant: VariantAnalysis, { pair }: LocatedPair): boolean {
  const [left, right] = [pair.left, pair.right].map(
    ({ stack }) => findSeat(variant, stack.part.values.seat?.value ?? '')?.seat.name,
  );
  return left === 'right' && right === 'left';
}

/** Whether the length that puts the clamped width right frees this pair as well. */
function isMendedByWidth(analysis: Analysis, { variant, loop, how, pair }: LocatedPair): boolean {
  const { wanted } = variant.width.loop;
  // A width that only some builds miss is the lesser fault, and waits for the play.
  if (!wanted || (widthDraft(analysis, variant)?.severity ?? null) !== 'error') return false;
  const [best] = lengthChanges(variant, variant.width.loop, (wanted.lo + wanted.hi) / 2, how);
  const shared = best && loop.terms.find((item) => item.path === best.path);
  if (!best || !shared) return false;
  const mismatch = pair.input.mismatch + shared.sign * shared.count * (best.to - best.from);
  return 0 <= clampedPair({ ...pair.input, mismatch }).playClampedSigned;
}
