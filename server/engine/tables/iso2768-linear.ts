import type { SourceId } from '../base/sources.ts';

/** Source of the general tolerances. */
export const iso2768Source: SourceId = 'iso-2768-1';

/** Fine, medium, coarse and very coarse. */
export type GeneralClass = 'f' | 'm' | 'c' | 'v';

/** Upper ends of the size steps, mm; the first step starts at 0.5 mm, every other is over the end before it. */
const steps: readonly number[] = [3, 6, 30, 120, 400, 1000, 2000, 4000];

/** Below this size the standard wants the deviation written at the dimension itself, mm. */
const SMALLEST_SIZE = 0.5;

/** Permissible deviations ± of linear dimensions as printed (ISO 2768-1 table 1), mm, by the steps above. */
const deviations: Readonly<Record<GeneralClass, readonly (number | null)[]>> = {
  f: [0.05, 0.05, 0.1, 0.15, 0.2, 0.3, 0.5, null],
  m: [0.1, 0.1, 0.2, 0.3, 0.5, 0.8, 1.2, 2],
  c: [0.2, 0.3, 0.5, 0.8, 1.2, 2, 3, 4],
  v: [null, 0.5, 1, 1.5, 2.5, 4, 6, 8],
};

/** The general tolerance ± of a length without one of its own, mm; null where the standard gives none. */
export function generalTolerance(size: number, generalClass: GeneralClass): number | null {
  if (!(size >= SMALLEST_SIZE)) return null;
  const step = steps.findIndex((end) => size <= end);
  return deviations[generalClass][step] ?? null;
}
