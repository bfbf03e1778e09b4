import { type ClampedPair, loadedBearing } from './clamped-pair.ts';
import { type PairSide, travel } from './pair-side.ts';

/**
 * A pair whose inner rings a spring pushes together or apart with `preload` N: the play is taken up and both
 * bearings carry the spring's force, no more than what holds their outer rings. Along the axle the pair is as soft
 * as the spring. Where the bearings do not carry that way, nothing closes the pair.
 */
export function sprungPair(
  left: PairSide,
  right: PairSide,
  preload: number,
  way: 'inward' | 'outward',
): ClampedPair {
  const carries = Number.isFinite(travel(left, way) + travel(right, way));
  const [holdLeft, holdRight] =
    way === 'inward' ? [left.holdInward, right.holdInward] : [left.holdOutward, right.holdOutward];
  const hold = Math.min(holdLeft, holdRight);
  const force = carries ? Math.min(preload, hold) : 0;
  const play = carries ? 0 : Number.POSITIVE_INFINITY;
  const slid = carries && hold < preload ? (holdLeft < holdRight ? 'left' : 'right') : 'no';
  return {
    playUnclamped: play,
    playShoulders: play,
    playClampedSigned: play,
    playClamped: play,
    playClampedShoulders: play,
    clampShortening: 0,
    ballLoad: force,
    spacerLoad: force,
    loadedBy: force > 0 ? (way === 'inward' ? 'short' : 'long') : 'nothing',
    spacerReached: true,
    slid: holdLeft === holdRight && slid !== 'no' ? 'either' : slid,
    left: loadedBearing(left, force),
    right: loadedBearing(right, force),
    valid: left.bearing.valid && right.bearing.valid,
  };
}
