import { insertKey } from '../../spec/edit.ts';
import type { Check } from '../check.ts';

const wheel = (phase: string): string => `wheel: Ruff gravel rear
hub: ./ruff-rear.hub.yaml
rim: { erd: 594, erd-to: nipple-seat, holes: 24, drilling: 2:1 }
lacing:
  left: { crosses: 0, heads: in }
  right: { crosses: 2, heads: alternate${phase} }
`;

/** Holes are not even, and nothing says which of a pair a spoke goes to. */
export const phaseMissing: Check = {
  code: 'phase-missing',
  group: 'wheel',
  severity: 'warning',
  summary: 'Holes do not stand evenly, and nothing says to which of two a spoke goes.',
  page: {
    why: 'Where the holes of a rim or a flange stand in twos, a spoke may go to the one that widens the angle from its hub hole or to the one that narrows it. The two differ by some millimetres of spoke, so neither length is right until it is said which.',
    bad: wheel(''),
    good: wheel(', phase: wider'),
    sources: [
      'geometry of uneven holes: the two angles lie 90° over the number of rim holes on either side of the even one',
    ],
  },
  *run(analysis) {
    const spec = analysis.spec.wheel;
    const analysed = analysis.wheel();
    if (!spec || !analysed) return;
    for (const { side, lacing } of analysed.sides) {
      const section = spec.lacing[side];
      if (lacing.phaseKnown || !section) continue;
      const crosses = section.values.crosses;
      yield {
        path: crosses?.path ?? section.path,
        message: `the ${side} spokes may go to the hole that widens their angle or to the one that narrows it, some millimetres of spoke apart: their length is not worked out — say phase: wider or phase: narrower`,
        data: { side },
        fixes: (['wider', 'narrower'] as const).map((phase) => ({
          title: `Write phase: ${phase} on the ${side} side`,
          changes: insertKey(analysis.spec, section.path, 'phase', phase),
          preferred: phase === 'wider',
        })),
      };
    }
  },
};
