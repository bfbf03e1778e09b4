import { force, micrometres } from '../../engine/base/figures.ts';
import type { Clamp } from './clamp-of.ts';
import type { PairMechanics } from './pair-mechanics.ts';

/** `play 33 µm, clamped 16 µm`: what the fingers feel of a pair, in as few words as fit behind a length. */
export function playInBrief({ result, setting }: PairMechanics, clamp: Clamp | null): string {
  if (setting?.kind === 'spring' && Number.isFinite(result.playUnclamped))
    return `preload ${force(result.ballLoad)} by spring, axially soft`;
  const { playUnclamped, playClamped, ballLoad, slid } = result;
  const before = Number.isFinite(playUnclamped) ? `play ${micrometres(playUnclamped)}` : 'play not closed';
  if (!clamp || !Number.isFinite(playUnclamped)) return before;
  if (ballLoad <= 0 && slid !== 'no') return `${before}, clamped none, outer rings pushed along`;
  return `${before}, clamped ${ballLoad > 0 ? `none, ${force(ballLoad)} on the balls` : micrometres(playClamped)}`;
}
