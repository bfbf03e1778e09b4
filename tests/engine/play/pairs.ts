import { type AxialBearing, axialBearing } from '../../../server/engine/contact/axial-load.ts';
import type { BallGeometry } from '../../../server/engine/contact/ball-geometry.ts';
import {
  type ClampedPair,
  type ClampedPairInput,
  clampedPair,
} from '../../../server/engine/play/clamped-pair.ts';
import { deepGrooveSide } from '../../../server/engine/play/pair-side.ts';

/** A thin-section bearing of a hub: 15 × 28, eleven balls of 5/32 inch. */
export const thinRow: BallGeometry = {
  count: 11,
  diameter: 3.969,
  pitch: 21.5,
  innerConformity: 0.52,
  outerConformity: 0.52,
};

/** A smaller one for the other side. */
export const smallRow: BallGeometry = { ...thinRow, count: 9, diameter: 3.175, pitch: 16 };

/** The thin-section bearing with a mounted clearance, mm. */
export const thin = (clearance = 0.01): AxialBearing => axialBearing(thinRow, clearance);

/** An aluminium sleeve of 15 to 19 mm, 50 mm long, in a shell, under 5 kN; grips of 2 kN. */
export const hub: ClampedPairInput = {
  left: deepGrooveSide(thin(), 2000),
  right: deepGrooveSide(thin(), 2000),
  mismatch: 0,
  clampForce: 5000,
  spacerCompliance: 50 / (68_900 * 106.8),
  housingCompliance: 50 / (68_900 * 300),
  heldBy: 'clamp',
};

/** The hub with some of it changed, worked out. */
export function clamped(change: Partial<ClampedPairInput> = {}): ClampedPair {
  return clampedPair({ ...hub, ...change });
}
