import type { WheelGroup } from '../../analysis/wheel/analyze-wheel.ts';
import { millimetres, plain, signed } from '../../engine/base/figures.ts';

/** A group of spokes as cells: which, how many, length at tension and to take, end in the nipple's slot, thread engaged. */
export const spokeCells = ({ side, head, direction, count, fit }: WheelGroup): readonly string[] => [
  `${side}, ${head.replace('-', ' ')}${direction === 'both' ? '' : `, ${direction}`}`,
  String(count),
  ...(fit
    ? [
        millimetres(fit.length.corrected, 1),
        `${plain(fit.length.chosen)} mm${fit.length.written ? '' : ' proposed'}`,
        `${signed(fit.nipple.end, 1)} mm`,
        millimetres(fit.nipple.engagement, 1),
      ]
    : ['not known', '', '', '']),
];
