import type { Check } from './check.ts';

/** Every check there is, by group. A line here is all it takes to register one. */
export const checks: readonly Check[] = [];
