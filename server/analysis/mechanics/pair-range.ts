import { clampedPair } from '../../engine/play/clamped-pair.ts';
import type { PairSide } from '../../engine/play/pair-side.ts';
import type { Side } from '../../spec/model.ts';
import { geometryRange } from './geometry-range.ts';
import type { MountedBearing } from './mounted-bearing.ts';
import { isClosed, type PairMechanics } from './pair-mechanics.ts';
import { sideWith } from './side-of.ts';

/** From least to most, with the same parts and any balls and grooves the estimate allows. */
export interface Ends {
  readonly lo: number;
  readonly hi: number;
}

/** What a pair may come to where balls or grooves of a bearing are estimated. */
export interface PairRange {
  /** Signed, mm. */
  readonly playUnclamped: Ends;
  /** mm */
  readonly playClamped: Ends;
  /** N */
  readonly ballLoad: Ends;
  /** Greatest contact stress of either bearing, MPa. */
  readonly contactStress: Ends;
}

/**
 * The pair worked again with the grooves as close and as open as they come, both bearings alike, beside what is
 * taken for them. Null where balls and grooves are known, where nothing closes the pair, where it is set by hand or
 * sprung, and where its loads are those of a line of more bearings.
 */
export function pairRange(pair: PairMechanics): PairRange | null {
  const { input, result, left, right, setting, ofLine } = pair;
  if (setting || ofLine || !isClosed(pair)) return null;
  const [ofLeft, ofRight] = [geometryRange(left), geometryRange(right)];
  if (!ofLeft && !ofRight) return null;
  const ends = (['close', 'open'] as const).flatMap((end) => {
    const [one, other] = [ofLeft?.[end] ?? left, ofRight?.[end] ?? right];
    const sides = {
      left: sideAgain(one, input.left, 'left'),
      right: sideAgain(other, input.right, 'right'),
    };
    return sides.left && sides.right ? clampedPair({ ...input, left: sides.left, right: sides.right }) : [];
  });
  if (ends.length < 2) return null;
  const all = [result, ...ends];
  return {
    playUnclamped: endsOf(all.map((one) => one.playUnclamped)),
    playClamped: endsOf(all.map((one) => one.playClamped)),
    ballLoad: endsOf(all.map((one) => one.ballLoad)),
    contactStress: endsOf(all.map((one) => Math.max(one.left.contactStress, one.right.contactStress))),
  };
}

/** A bearing with another inside, held as it was. */
function sideAgain(
  bearing: MountedBearing,
  { holdInward, holdOutward }: PairSide,
  side: Side,
): PairSide | null {
  return sideWith(bearing, side, holdOutward, holdInward);
}

const endsOf = (values: readonly number[]): Ends => ({ lo: Math.min(...values), hi: Math.max(...values) });
