import type { SpacerAnswer } from '../../analysis/mechanics/spacer-answer.ts';
import { length, plain, share } from '../../engine/base/figures.ts';
import type { YieldAllocation } from '../../engine/play/allocate-yield.ts';
import { textTable } from '../text-table.ts';
import { percent } from './percent.ts';

const method: Record<YieldAllocation['method'], string> = {
  proportional: 'in proportion',
  equal: 'equal effect',
};

/** How wide each tolerance of the drawing may be for the yield wanted, and where bought parts set the end to it. */
export function allocationLines(
  { allocation, from, count }: SpacerAnswer,
  wanted: number,
): readonly string[] {
  if (!allocation) return [];
  const { ceiling, group, proposals } = allocation;
  const most =
    ceiling < wanted
      ? [
          `    with every length and diameter exact ${percent(ceiling)} come right: the clearance of the bearings as bought takes the rest`,
        ]
      : [];
  const [first] = proposals;
  if (!first) return most;
  const rows = first.tolerances.map(({ id, from: now, share: part }, at) => [
    id,
    `±${plain(now)}`,
    share(part),
    ...proposals.map(({ tolerances }) => `±${plain(tolerances[at]?.to ?? 0)}`),
  ]);
  const lengths = proposals.map(({ change }) => length(from.nominal + change / count, 3));
  const yields = proposals.map(({ yield: right }) => percent(right));
  const head = ['', 'now', 'share', ...proposals.map((proposal) => method[proposal.method])];
  const withGroup = group === null ? '' : `, both bearings of group ${group}`;
  return [
    ...most,
    `    tolerances for ${percent(wanted)}${withGroup}, confirmed by other builds`,
    ...textTable(
      [head, ...rows, ['length of the spacer', '', '', ...lengths], ['builds right', '', '', ...yields]],
      { indent: 6, right: [1, 2, 3, 4] },
    ),
  ];
}
