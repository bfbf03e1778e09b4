import { type AllocatedYield, allocateYield } from '../../engine/play/allocate-yield.ts';
import type { WantedShare } from '../../engine/play/best-yield.ts';
import type { VaryingPair } from '../../engine/play/play-statistics.ts';
import { otherGroups } from './other-groups.ts';
import type { PairMechanics } from './pair-mechanics.ts';

/** What the tolerances of a drawing may be, in bearings of the written group or the nearest with which it can be done. */
export interface DrawingAllocation extends AllocatedYield {
  /** Null for the group as written. */
  readonly group: string | null;
  /** Yield with all of them exact in the group as written. */
  readonly ceiling: number;
}

/** How wide the tolerances of a drawing may be; those of several parts alike are of one of them. */
export function drawingAllocation(
  pair: PairMechanics,
  varying: VaryingPair,
  wanted: WantedShare,
): DrawingAllocation {
  const written = allocateYield(varying, isChosen, wanted);
  if (written.proposals.length > 0) return forEachPart({ ...written, group: null }, pair);
  for (const { group, varying: changed } of otherGroups(pair, varying)) {
    const { proposals } = allocateYield(changed, isChosen, wanted);
    if (proposals.length > 0) return forEachPart({ ceiling: written.ceiling, proposals, group }, pair);
  }
  return { ...written, group: null };
}

/** Whether a dimension is on the drawing: rings and their clearance come as they are bought. */
export function isChosen(id: string): boolean {
  return !/(^| of )bearing\./.test(id);
}

/** An allocation of the whole line as one of its parts has it: of several alike each takes its share, tolerances by the root. */
function forEachPart(allocation: DrawingAllocation, { loop }: PairMechanics): DrawingAllocation {
  const countOf = (id: string): number => loop.terms.find(({ address }) => address === id)?.count ?? 1;
  const down = (half: number, count: number): number =>
    count === 1 ? half : Math.floor((half / Math.sqrt(count)) * 1000 + 1e-9) / 1000;
  return {
    ...allocation,
    proposals: allocation.proposals.map((proposal) => ({
      ...proposal,
      tolerances: proposal.tolerances.map((item) => ({
        ...item,
        from: item.from / Math.sqrt(countOf(item.id)),
        to: down(item.to, countOf(item.id)),
      })),
    })),
  };
}
