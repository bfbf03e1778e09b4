import { millimetres, plain } from '../../engine/base/figures.ts';
import { nippleThread } from '../../engine/wheel/nipple-thread.ts';
import { setValue } from '../../spec/edit.ts';
import { withNominal } from '../../spec/with-nominal.ts';
import type { Check } from '../check.ts';
import { pageWheel } from '../page-wheel.ts';
import { areSwapped, beyondBand, writtenGroups } from './lengths-of.ts';

/** Threads that carry the load, at least this long, mm. */
const least = 5;
/** Lengths that nipples are made in, mm (common practice). */
const made = [12, 14, 16];

/** Too little thread of a spoke is in its nipple. */
export const threadsFew: Check = {
  code: 'threads-few',
  group: 'wheel',
  severity: 'warning',
  summary: 'Too little thread of a spoke is in its nipple.',
  page: {
    why: 'Three or four turns carry the load, and more are wanted so that none is torn. Where the thread of the spoke is short, or the nipple has little of its own, a spoke of the right length still hangs on too few. Another nipple, or spokes with a longer thread, cure it.',
    bad: pageWheel(['nipples: { length: 12', 'nipples: { length: 8']),
    good: pageWheel(),
    sources: [
      'common practice: some twelve turns of the 56-to-the-inch thread in a nipple, three or four carry',
    ],
  },
  *run(analysis) {
    const spec = analysis.spec.wheel;
    const groups = writtenGroups(analysis);
    if (!spec || areSwapped(groups)) return;
    const said = new Set<string>();
    for (const group of groups) {
      const { nipple, length } = group.fit;
      // A spoke that is too short is said to be that.
      if (beyondBand(group) !== 0 || least <= nipple.engagement) continue;
      const nippleLength = spec.nipples?.values.length;
      const thread = spec.spokes[group.side]?.values['thread-length'];
      const place = thread ?? nippleLength ?? null;
      const path = place?.path ?? length.written.path;
      if (said.has(JSON.stringify(path))) continue;
      said.add(JSON.stringify(path));
      const other =
        nippleLength && !thread
          ? made.find(
              (one) =>
                nippleLength.value.nominal < one &&
                least <= Math.min(nippleThread(one) + Math.min(nipple.end, 0), nippleThread(one)),
            )
          : undefined;
      yield {
        path,
        message: `${millimetres(nipple.engagement, 1)} of thread hold the ${group.side} spokes, wanted ${plain(least)} at least — ${other === undefined ? 'spokes with a longer thread' : `nipples of ${other} mm`}`,
        data: { engagement: nipple.engagement, wanted: least, side: group.side },
        fixes:
          other !== undefined && nippleLength
            ? [
                {
                  title: `Change the nipples to ${other} mm: ${millimetres(Math.min(nippleThread(other), nippleThread(other) + Math.min(nipple.end, 0)), 1)} of thread then hold`,
                  changes: setValue(analysis.spec, nippleLength.path, withNominal(nippleLength.value, other)),
                  preferred: true,
                },
              ]
            : [],
      };
    }
  },
};
