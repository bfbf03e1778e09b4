import { force, micrometres } from '../../engine/base/figures.ts';
import type { Clamp } from './clamp-of.ts';
import type { Ends, PairRange } from './pair-range.ts';

/** `41 to 83 µm`; what is less than nothing is no play: `none to 83 µm`. */
export function endsInBrief({ lo, hi }: Ends): string {
  const say = (value: number): string => (value < -0.0005 ? 'none' : micrometres(value));
  const [from, to] = [say(lo), say(hi)];
  return from === to ? to : `${from.replace(' µm', '')} to ${to}`;
}

/** `0 to 120 N` */
export function loadEndsInBrief({ lo, hi }: Ends): string {
  return `${force(lo)} to ${force(hi)}`;
}

/** `play 41 to 83 µm, clamped 0 to 22 µm, load 0 N to 12 N, as balls and grooves are estimated` */
export function rangeInBrief(
  { playUnclamped, playClamped, ballLoad }: PairRange,
  clamp: Clamp | null,
): string {
  const clamped = clamp
    ? [
        ...(0 < playClamped.hi ? [`clamped ${endsInBrief(playClamped)}`] : []),
        ...(0 < ballLoad.hi ? [`load ${loadEndsInBrief(ballLoad)}`] : []),
      ]
    : [];
  return [`play ${endsInBrief(playUnclamped)}`, ...clamped, 'as balls and grooves are estimated'].join(', ');
}
