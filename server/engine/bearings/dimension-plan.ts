import type { SourceId } from '../base/sources.ts';
import { iso15Additions, iso15Plan, iso15PlanSource, type PlanRow } from '../tables/iso15-dimension-plan.ts';

/** One line of the ISO 15 plan with where it was read; lengths in mm. */
export interface PlanEntry {
  readonly bore: number;
  readonly outside: number;
  readonly width: number;
  readonly chamferMin: number | null;
  readonly source: SourceId;
}

let bySeries: Map<string, Map<number, PlanEntry>> | null = null;

/** The plan's line for a dimension series and a bore (mm), or null when the plan has none. */
export function planEntry(dimension: string, bore: number): PlanEntry | null {
  return plan().get(dimension)?.get(bore) ?? null;
}

/** All lines of one dimension series, by rising bore. */
export function planSeries(dimension: string): readonly PlanEntry[] {
  return [...(plan().get(dimension)?.values() ?? [])].sort((a, b) => a.bore - b.bore);
}

function plan(): Map<string, Map<number, PlanEntry>> {
  if (bySeries) return bySeries;
  const made = new Map<string, Map<number, PlanEntry>>();
  const add = (series: string, rows: readonly PlanRow[], source: SourceId): void => {
    const entries = made.get(series) ?? new Map<number, PlanEntry>();
    for (const [bore, outside, width, chamferMin] of rows) {
      if (!entries.has(bore)) entries.set(bore, { bore, outside, width, chamferMin, source });
    }
    made.set(series, entries);
  };
  for (const [series, rows] of Object.entries(iso15Plan)) add(series, rows, iso15PlanSource);
  for (const { series, rows, source } of iso15Additions) add(series, rows, source);
  bySeries = made;
  return made;
}
