import { plain } from '../../engine/base/figures.ts';
import { setValue } from '../../spec/edit.ts';
import type { Check } from '../check.ts';
import { pageWheel } from '../page-wheel.ts';
import { areSwapped, writtenGroups } from './lengths-of.ts';

const dished: readonly [string, string] = ['rim: { bead-seat: 622,', 'rim: { bead-seat: 622, offset: 6,'];

/** The spokes of each side suit the other. */
export const lengthsSwapped: Check = {
  code: 'lengths-swapped',
  group: 'wheel',
  severity: 'error',
  summary: 'The spoke lengths of the two sides stand for each other.',
  page: {
    why: 'On a dished wheel the two sides want spokes of two lengths, a millimetre or two apart. Written the wrong way round, each side ends outside of what its nipples allow, and the wheel comes to tension with one side short of thread and the other run out of it.',
    bad: pageWheel(
      dished,
      ['left: { length: 292', 'left: { length: 293'],
      ['right: { length: 292', 'right: { length: 292'],
      ['material: brass', 'material: aluminium'],
      ['value: 1000', 'value: 800'],
    ),
    good: pageWheel(
      dished,
      ['left: { length: 292', 'left: { length: 292'],
      ['right: { length: 292', 'right: { length: 293'],
      ['material: brass', 'material: aluminium'],
      ['value: 1000', 'value: 800'],
    ),
    sources: [
      'spoke length from the three-dimensional vector between hub hole and nipple seat',
      'common practice',
    ],
  },
  *run(analysis) {
    const groups = writtenGroups(analysis);
    if (!areSwapped(groups)) return;
    const [left, right] = (['left', 'right'] as const).map((side) =>
      groups.find((group) => group.side === side),
    );
    if (!left || !right) return;
    const [a, b] = [left.fit.length.written, right.fit.length.written];
    yield {
      path: a.path,
      message: `${plain(a.value)} mm on the left and ${plain(b.value)} on the right each suit the other side, where ${left.fit.length.corrected.toFixed(1)} and ${right.fit.length.corrected.toFixed(1)} would be level — swap the two`,
      related: [{ path: b.path, message: `${plain(b.value)} here` }],
      data: { left: a.value, right: b.value },
      fixes: [
        {
          title: `Swap the lengths: ${plain(b.value)} left, ${plain(a.value)} right`,
          changes: [
            ...setValue(analysis.spec, a.path, plain(b.value)),
            ...setValue(analysis.spec, b.path, plain(a.value)),
          ],
          preferred: true,
        },
      ],
    };
  },
};
