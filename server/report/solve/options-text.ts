import type { SpacerAnswer } from '../../analysis/mechanics/spacer-answer.ts';
import type { YieldOption } from '../../analysis/mechanics/yield-options.ts';
import { length, micrometres, plain } from '../../engine/base/figures.ts';
import { textTable } from '../text-table.ts';
import { percent } from './percent.ts';

/** What else could be changed, each with the length that goes with it and what it gives; empty where the length is enough. */
export function optionLines({ options, spacer }: SpacerAnswer): readonly string[] {
  if (options.length === 0) return [];
  const rows = options.map((option) => [
    said(option),
    `${spacer} ${length(option.to, 3)}`,
    `${percent(option.yield)} of builds right${option.reaches ? ', enough' : ''}`,
  ]);
  return ['    what would bring more, each with its best length', ...textTable(rows, { indent: 6 })];
}

function said({ kind, group, tolerance, mostPlay }: YieldOption): string {
  switch (kind) {
    case 'spacer-tolerance':
      return `the spacer ±${plain(tolerance ?? 0)}`;
    case 'length-tolerances':
      return 'all lengths between the rings twice as close';
    case 'clearance-group':
      return `both bearings of group ${group ?? ''}`;
    case 'group-and-lengths':
      return `group ${group ?? ''}, and all lengths twice as close`;
    case 'play-limit':
      return `up to ${micrometres(mostPlay)} of play allowed`;
  }
}
