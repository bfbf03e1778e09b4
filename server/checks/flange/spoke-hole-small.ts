import { plain } from '../../engine/base/figures.ts';
import { spokeThreads } from '../../engine/tables/spoke-facts.ts';
import type { Check } from '../check.ts';
import { pageWheel } from '../page-wheel.ts';

/** The thread of a spoke does not go through the hole of its flange. */
export const spokeHoleSmall: Check = {
  code: 'spoke-hole-small',
  group: 'flange',
  severity: 'error',
  summary: 'The thread of a spoke does not go through the hole of its flange.',
  page: {
    why: 'A bent spoke is put through its hole with the thread first, and the rolled thread is thicker than its wire: FG 2.3 on a wire of 2.0 mm measures 2.30. A smaller hole would have to be drilled, which weakens the flange; thinner spokes go through.',
    bad: pageWheel([
      'left: { length: 292, profile: 2.0/1.8/2.0',
      'left: { length: 292, profile: 2.3/2.0/2.3, thread: FG 2.6',
    ]),
    good: pageWheel(),
    sources: ['DIN 79012, cycle threads: FG 2 2.096, FG 2.3 2.299, FG 2.6 2.604 mm'],
  },
  *run(analysis) {
    const spec = analysis.spec.wheel;
    const wheel = analysis.wheel();
    if (!spec || !wheel) return;
    for (const { side, flange, profile } of wheel.sides) {
      const hole = flange.hole?.value;
      if (hole === undefined || flange.straightPull) continue;
      const values = spec.spokes[side]?.values;
      const end = profile.diameters.at(-1) ?? 2;
      const name = values?.thread?.value ?? (end < 1.9 ? 'FG 2' : end < 2.2 ? 'FG 2.3' : 'FG 2.6');
      const thread = spokeThreads[name].major;
      if (thread <= hole) continue;
      const path = values?.thread?.path ?? values?.profile?.path ?? spec.spokes[side]?.path ?? [];
      yield {
        path,
        message: `thread ${name} of the ${side} spokes is ${plain(thread)} mm thick, the holes of the ${side} flange are ${plain(hole)}: it does not go through — spokes with a thinner end, or a hub with larger holes`,
        data: { thread, hole, side },
      };
    }
  },
};
