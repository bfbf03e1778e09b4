import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import type { MountedBearing } from '../../analysis/mechanics/mounted-bearing.ts';
import { type Settled, settle } from '../../assembly/settle.ts';
import type { Dimension } from '../../spec/model.ts';
import type { Placed } from '../../spec/place.ts';
import { interference } from '../fit-of.ts';
import { journalOf, pushesOn } from '../journal-of.ts';
import { findSeat, seatsOf } from '../seat-of.ts';
import { canJudge, isDecided } from './fitted.ts';

/** A diameter that was read too coarsely to say how its ring fits. */
export interface CoarseReading {
  readonly name: string;
  readonly placed: Placed<Dimension>;
  readonly reading: NonNullable<Settled['built']>;
}

/** Bores and journals whose readings leave their fit open. */
export function coarseReadings(analysis: Analysis, variant: VariantAnalysis): readonly CoarseReading[] {
  return [...bores(analysis, variant), ...journals(analysis, variant)].flatMap(
    ({ name, placed, decided }) => {
      const settled = settle(placed, variant.assembly.rules);
      if (canJudge(settled) || !settled.built || decided(settled)) return [];
      return [{ name, placed, reading: settled.built }];
    },
  );
}

/** Whether the clearance of a bearing rests on such a reading: then it is as open as the fit. */
export function restsOnCoarseReading(
  analysis: Analysis,
  variant: VariantAnalysis,
  { stack, outerFit, innerFit }: MountedBearing,
): boolean {
  const seat = outerFit ? findSeat(variant, stack.part.values.seat?.value ?? '') : null;
  const read = [seat?.seat.values.bore, innerFit ? journalOf(variant, stack)?.placed : null];
  return coarseReadings(analysis, variant).some(({ placed }) => read.includes(placed));
}

interface Diameter {
  readonly name: string;
  readonly placed: Placed<Dimension>;
  /** Whether even the coarse reading leaves no doubt: then it is judged, and not too coarse. */
  readonly decided: (settled: Settled) => boolean;
}

function bores(analysis: Analysis, variant: VariantAnalysis): readonly Diameter[] {
  return seatsOf(variant).flatMap((seat): readonly Diameter[] => {
    const placed = seat.seat.values.bore;
    if (!placed || seat.bearings.length === 0) return [];
    const ring = seat.contact?.bearing?.outside;
    const least = analysis.limits.value('seat-interference');
    const most = analysis.limits.value('seat-interference-per-diameter') * (ring?.drawn.nominal ?? 0);
    const decided = (settled: Settled): boolean =>
      ring !== undefined && ring !== null && isDecided(settled, interference(settled, ring), least, most);
    return [{ name: `bore of ${seat.address}`, placed, decided }];
  });
}

function journals(analysis: Analysis, variant: VariantAnalysis): readonly Diameter[] {
  const most = analysis.limits.value('journal-clearance');
  const seen = new Set<unknown>();
  return variant.assembly.bearings.flatMap((bearing): readonly Diameter[] => {
    const journal = journalOf(variant, bearing);
    if (!journal || seen.has(journal.placed)) return [];
    seen.add(journal.placed);
    const decided = (settled: Settled): boolean =>
      bearing.bore !== null && isDecided(settled, interference(bearing.bore, settled), -most, pushesOn);
    return [{ ...journal, decided }];
  });
}
