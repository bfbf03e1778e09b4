import type { Analysis } from '../../analysis/analyze.ts';
import type { StackBearing } from '../../assembly/bearings.ts';
import type { DecodedBearing } from '../../engine/bearings/decode-bearing.ts';
import { setValue } from '../../spec/edit.ts';
import type { Fix } from '../../spec/problem.ts';
import { ownCode, saySize } from './fitting.ts';

/** A bearing of the stack that could be decoded. */
export interface Known {
  readonly stacked: StackBearing;
  readonly bearing: DecodedBearing;
}

/** The fix that gives one bearing the code of another; none where a code of the house or a size decides. */
export function copyCode(analysis: Analysis, from: Known, to: Known, preferred: boolean): readonly Fix[] {
  const [source, target] = [ownCode(from.stacked), ownCode(to.stacked)];
  if (!source || !target || to.stacked.part.values.size) return [];
  return [
    {
      title: `Change ${to.stacked.address} to ${source.value} (${saySize(from.bearing)}), the same as ${from.stacked.address}`,
      changes: setValue(analysis.spec, target.path, source.value),
      preferred,
    },
  ];
}
