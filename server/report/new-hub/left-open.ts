import type { Snapshot } from '../../workspace/workspace.ts';

/** What a hub just written down leaves open. */
export interface LeftOpen {
  /** What could not be checked, each with what it would take; a sentence each. */
  readonly unchecked: readonly string[];
  /** How many faults the checks find in it. */
  readonly findings: number;
}

/** What stays unchecked in a hub as it stands, and what its checks find. */
export function leftOpen({ analysis, findings }: Snapshot): LeftOpen {
  const unchecked = (analysis.variants[0]?.unchecked ?? []).map(
    ({ what, missing }) => `not checked: ${what}; it takes ${missing}`,
  );
  return { unchecked: [...new Set(unchecked)], findings: findings.findings.length };
}
