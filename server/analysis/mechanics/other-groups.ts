import { internalClearance } from '../../engine/bearings/internal-clearance.ts';
import type { VaryingSide } from '../../engine/play/build-clearance.ts';
import type { VaryingPair } from '../../engine/play/play-statistics.ts';
import { spreadOf } from '../../engine/seats/interference-spread.ts';
import type { MountedBearing } from './mounted-bearing.ts';
import type { PairMechanics } from './pair-mechanics.ts';

/** A pair with both bearings of another clearance group. */
export interface OtherGroup {
  readonly group: string;
  readonly varying: VaryingPair;
}

/** From tight to wide. C5 is left out: in the sizes of hubs it is made for few bearings (common practice). */
const groups = ['C2', 'N', 'C3', 'C4'];

/**
 * The pair with the clearance groups that its bearings are also made in, the nearest to their own first. Only the
 * clearance before mounting changes; the stiffness stays that of the written group, which moves loads and no play.
 */
export function otherGroups(pair: PairMechanics, varying: VaryingPair): readonly OtherGroup[] {
  const own = groups.indexOf(pair.left.stack.bearing?.clearance.group ?? '');
  return groups
    .toSorted((a, b) => Math.abs(groups.indexOf(a) - own) - Math.abs(groups.indexOf(b) - own))
    .flatMap((group) => {
      const left = sideOfGroup(pair.left, varying.left, group);
      const right = sideOfGroup(pair.right, varying.right, group);
      if (!left || !right || (left === varying.left && right === varying.right)) return [];
      return [{ group, varying: { ...varying, left, right } }];
    });
}

/** A side of another group; itself where that is its own, null where no table has the group. */
function sideOfGroup({ stack }: MountedBearing, side: VaryingSide, group: string): VaryingSide | null {
  const decoded = stack.bearing;
  if (!decoded) return null;
  if (decoded.clearance.group === group) return side;
  const { minUm, maxUm } = internalClearance(decoded.kind, group, decoded.bore).clearance;
  if (minUm === null || maxUm === null) return null;
  const { mean, sigma } = spreadOf(minUm / 1000, maxUm / 1000);
  return { ...side, clearance: { ...side.clearance, mean, sigma } };
}
