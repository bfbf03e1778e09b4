import { defaultLimits, type LimitName } from '../engine/tables/limits.ts';
import type { Workshop } from '../spec/workshop-model.ts';

/** Every limit with the workshop's own value in place of the built-in one. */
export interface ResolvedLimits {
  readonly value: (name: LimitName) => number;
  /** Whether the workshop set it. */
  readonly set: (name: LimitName) => boolean;
}

/** The limits that hold for a file below this workshop. */
export function resolveLimits(workshop: Workshop | null): ResolvedLimits {
  const own = (name: LimitName): number | undefined =>
    name === 'measuring' ? workshop?.measuring?.value : workshop?.limits[name]?.value;
  return {
    value: (name) => own(name) ?? defaultLimits[name].value,
    set: (name) => own(name) !== undefined,
  };
}
