import { setValue } from '../../spec/edit.ts';
import type { Check } from '../check.ts';
import { pageWheel } from '../page-wheel.ts';

/** A spoke cannot lie on its flange with so many crossings. */
export const crossingImpossible: Check = {
  code: 'crossing-impossible',
  group: 'wheel',
  severity: 'error',
  summary: 'A spoke cannot lie on its flange with so many crossings.',
  page: {
    why: 'With every crossing a spoke leans further round the flange. Past the tangent it would leave the flange backwards, over the hole or the head of its neighbour; the elbow is bent and the spoke breaks there. Fewer crossings of the same spokes carry as well.',
    bad: pageWheel(['left: { crosses: 3', 'left: { crosses: 4']),
    good: pageWheel(),
    sources: [
      'geometry: angle of the spoke to its flange, distance to the next hole',
      'common practice: no more crossings than a ninth of the holes',
    ],
  },
  *run(analysis) {
    const spec = analysis.spec.wheel;
    const wheel = analysis.wheel();
    if (!spec || !wheel) return;
    for (const side of ['left', 'right'] as const) {
      const crosses = spec.lacing[side]?.values.crosses;
      const holes = wheel.hub?.flanges[side]?.holes ?? null;
      if (crosses && 0 < crosses.value && holes !== null && holes % 2 === 1) {
        yield {
          path: crosses.path,
          message: `${crosses.value} crossings on the ${side} flange with its ${holes} holes: crossed spokes lean forwards and backwards in turn, and one is left over — a hub with an even number of holes, or crosses: 0 where the hub’s maker allows radial spokes`,
          data: { crosses: crosses.value, holes },
          doubts: [crosses.path],
        };
        continue;
      }
      const group = wheel.groups.find((one) => one.side === side && one.crossing !== null);
      const crossing = group?.crossing;
      if (!crosses || !crossing || crosses.value === 0 || crossing.verdict === 'free') continue;
      const lies = crossing.verdict === 'over the next head';
      const degrees = Math.round((crossing.lean * 180) / Math.PI);
      const { most } = crossing;
      // Whether a flange bears radial spokes is for its maker to say: none are proposed.
      const better = 0 < most && most < crosses.value;
      yield {
        path: crosses.path,
        severity: lies ? 'warning' : 'error',
        message: `with ${crosses.value} crossings the ${side} spokes leave their flange at ${degrees}° and lie ${crossing.verdict === 'past the tangent' ? 'past the tangent' : crossing.verdict}, ${crossing.neighbour.toFixed(1)} mm from the middle of the next hole — ${better ? `${most} at most lie free` : 'look at rim.erd and the circle of the flange'}`,
        data: { crosses: crosses.value, most, leanDegrees: degrees, neighbour: crossing.neighbour },
        doubts: [crosses.path],
        fixes: better
          ? [
              {
                title: `Change crosses to ${most}: the spokes lie free of their neighbours`,
                changes: setValue(analysis.spec, crosses.path, String(most)),
                preferred: true,
              },
            ]
          : [],
      };
    }
  },
};
