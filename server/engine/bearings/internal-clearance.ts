import type { SourceId } from '../base/sources.ts';
import {
  miniatureClearance,
  miniatureClearanceSource,
  radialClearance,
  radialClearanceSource,
} from '../tables/iso5753-clearance.ts';
import type { BearingKind, ClearanceGroup } from './decoded-bearing.ts';

/** A clearance group with its limits, where they were read and what was assumed. */
export interface ReadClearance {
  readonly clearance: ClearanceGroup;
  readonly source: SourceId | null;
  readonly note: string | null;
}

/**
 * Radial internal clearance before mounting, µm, of a group for a bore (mm). ISO 5753-1 holds for single row deep
 * groove bearings with a straight bore; H, L and P name half groups. Limits are null where no table has them.
 */
export function internalClearance(kind: BearingKind, group: string, bore: number): ReadClearance {
  const miniature = miniatureClearance[group];
  if (miniature && bore < 10) {
    const [minUm, maxUm] = miniature;
    return { clearance: { group, minUm, maxUm }, source: miniatureClearanceSource, note: null };
  }
  const unknown = { group, minUm: null, maxUm: null };
  if (kind !== 'deep-groove') {
    return {
      clearance: unknown,
      source: null,
      note: 'ISO 5753-1 gives no clearance for this kind of bearing; it is set by mounting or by the maker.',
    };
  }
  const limits = groupLimits(group, bore);
  if (!limits) {
    return {
      clearance: unknown,
      source: null,
      note: `Clearance group ${group} has no published limits for this bore.`,
    };
  }
  return {
    clearance: { group, minUm: limits[0], maxUm: limits[1] },
    source: radialClearanceSource,
    note: null,
  };
}

function groupLimits(group: string, bore: number): readonly [number, number] | null {
  const half = /^C([2-5N])([HLP])$/.exec(group);
  if (!half) return tableLimits(group, bore);
  const name = half[1] === 'N' ? 'N' : `C${half[1]}`;
  const whole = tableLimits(name, bore);
  if (!whole) return null;
  const middle = (whole[0] + whole[1]) / 2;
  if (half[2] === 'L') return [whole[0], middle];
  if (half[2] === 'H') return [middle, whole[1]];
  const next = tableLimits(nextGroup(name), bore);
  return next ? [middle, (next[0] + next[1]) / 2] : null;
}

function tableLimits(group: string, bore: number): readonly [number, number] | null {
  const rows = radialClearance[group as keyof typeof radialClearance];
  const row = rows?.find(([over, upTo]) => over < bore && bore <= upTo);
  return row ? [row[2], row[3]] : null;
}

function nextGroup(group: string): string {
  const order = ['C2', 'N', 'C3', 'C4', 'C5'];
  return order[order.indexOf(group) + 1] ?? '';
}
