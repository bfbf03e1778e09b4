import { type PairSide, travel } from '../../engine/play/pair-side.ts';
import type { LocatedPair } from './located-pair.ts';

/**
 * The δ, mm, as drawn that leaves a pair the play wanted once it is clamped. With more travel than that the inner
 * rings lean towards each other, so that the shoulders carry the outer rings; with less they stand level. Null
 * where nothing closes the pair.
 */
export function rightMismatch({ pair }: LocatedPair, wantedPlay: number): number | null {
  const { left, right, clampForce, spacerCompliance } = pair.input;
  const level = leaning(left, right, wantedPlay);
  return level === null ? null : level + clampForce * spacerCompliance;
}

function leaning(left: PairSide, right: PairSide, wantedPlay: number): number | null {
  const inward = travel(left, 'inward') + travel(right, 'inward');
  const outward = travel(left, 'outward') + travel(right, 'outward');
  if (Number.isFinite(inward) && Number.isFinite(outward)) return Math.min(0, wantedPlay - inward);
  if (Number.isFinite(inward)) return wantedPlay - inward;
  return Number.isFinite(outward) ? outward - wantedPlay : null;
}
