import { length, millimetres, plain, signed } from '../../engine/base/figures.ts';
import { setValue } from '../../spec/edit.ts';
import { withNominal } from '../../spec/with-nominal.ts';
import type { Check } from '../check.ts';
import { pageWheel } from '../page-wheel.ts';
import { areSwapped, beyondBand, type WrittenGroup, writtenGroups } from './lengths-of.ts';

/** A spoke is longer or shorter than its nipple allows. */
export const spokeLengthOff: Check = {
  code: 'spoke-length-off',
  group: 'wheel',
  severity: 'error',
  summary: 'A spoke is longer or shorter than its nipple allows.',
  page: {
    why: 'The end of a spoke is wanted level with the bottom of the slot of its nipple. Longer, the nipple runs off the thread or the end stands out towards the tube; shorter, the load hangs on few threads and on the shank of the nipple, which breaks. The length is that of the stretched spoke in the rim as it is drawn in.',
    bad: pageWheel(['left: { length: 292', 'left: { length: 288']),
    good: pageWheel(),
    sources: [
      'spoke length from the three-dimensional vector between hub hole and nipple seat',
      'from memory: the end −2 to +1 mm from the bottom of the slot in brass, −1 to +1 in aluminium',
    ],
  },
  *run(analysis) {
    const spec = analysis.spec.wheel;
    const groups = writtenGroups(analysis);
    if (!spec || areSwapped(groups)) return;
    const byPath = new Map<string, WrittenGroup[]>();
    for (const group of groups) {
      const key = JSON.stringify(group.fit.length.written.path);
      byPath.set(key, [...(byPath.get(key) ?? []), group]);
    }
    for (const same of byPath.values()) {
      const [worst] = same.toSorted((a, b) => Math.abs(beyondBand(b)) - Math.abs(beyondBand(a)));
      if (!worst || beyondBand(worst) === 0) continue;
      const { side, fit } = worst;
      const { written, corrected, proposed } = fit.length;
      const end = written.value - corrected;
      const values = spec.spokes[side]?.values;
      const dimension = [values?.length, values?.['head-in-length'], values?.['head-out-length']].find(
        (one) => one?.path === written.path,
      )?.value;
      const suits = same.every((group) => beyondBand(group, proposed) === 0);
      const over = beyondBand(worst);
      yield {
        path: written.path,
        message: `spokes of ${plain(written.value)} mm on the ${side} end ${signed(end, 1)} mm from the bottom of the slot, wanted ${length(fit.band.lo, 0)} to +${length(fit.band.hi, 0)}: ${millimetres(Math.abs(over), 1)} too ${over < 0 ? 'short' : 'long'}, ${length(corrected, 1)} would be level — ${plain(proposed)} mm${fit.length.fromStock ? ' from the stock' : ''}`,
        data: {
          written: written.value,
          exact: fit.length.exact,
          corrected,
          end,
          engagement: fit.nipple.engagement,
          threadLeft: fit.nipple.threadLeft,
        },
        fixes:
          dimension && suits
            ? [
                {
                  title: `Change length to ${plain(proposed)}: the end then stands ${signed(proposed - corrected, 1)} mm from the bottom of the slot`,
                  changes: setValue(analysis.spec, written.path, withNominal(dimension, proposed)),
                  preferred: true,
                },
              ]
            : [],
      };
    }
  },
};
