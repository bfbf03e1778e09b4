import type { Analysis } from '../../analysis/analyze.ts';
import type { PairMechanics } from '../../analysis/mechanics/pair-mechanics.ts';
import type { Squeezed } from '../../analysis/mechanics/squeezed-between.ts';
import { area } from '../../engine/play/clamp-compression.ts';

/** A sleeve that the clamp squeezes harder than it should be. */
export interface Overstressed {
  readonly part: Squeezed;
  /** MPa, of the clamped sleeve and the most it should have. */
  readonly stress: number;
  readonly most: number;
}

/** Parts between the inner rings that the clamp squeezes beyond their share of yield. */
export function overstressed(
  analysis: Analysis,
  { squeezed, input }: PairMechanics,
): readonly Overstressed[] {
  const part = analysis.limits.value('sleeve-yield');
  return squeezed.flatMap((sleeve) => {
    const section = area(sleeve);
    if (sleeve.yield === null || section <= 0) return [];
    const stress = input.clampForce / section;
    const most = part * sleeve.yield;
    return most < stress ? [{ part: sleeve, stress, most }] : [];
  });
}
