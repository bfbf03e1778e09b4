import type { Analysis } from '../../analysis/analyze.ts';
import { tension as newtons } from '../../engine/base/figures.ts';
import { setValue } from '../../spec/edit.ts';
import type { Check, Draft } from '../check.ts';
import { pageWheel } from '../page-wheel.ts';

/** One side comes to less tension than a new wheel should have. */
export const slackSideLow: Check = {
  code: 'slack-side-low',
  group: 'wheel',
  severity: 'warning',
  summary: 'One side comes to less tension than a new wheel should have.',
  page: {
    why: 'The flange nearer to the middle pulls at a flatter angle, so its spokes must pull harder; the other side gets what balance leaves it. Too little, and its spokes go slack at the bottom of each turn, nipples unscrew and elbows break. More tension, an off-centre rim or fewer spokes on that side help.',
    bad: pageWheel(['value: 1000 ±100 N', 'value: 320 ±20 N']),
    good: pageWheel(),
    sources: ['JIS D 9301, mean tension of a side of a new wheel', 'balance of the two sides from statics'],
  },
  *run(analysis) {
    yield* wantedLow(analysis);
    yield* readLow(analysis);
  },
};

function* wantedLow(analysis: Analysis): Iterable<Draft> {
  const spec = analysis.spec.wheel;
  const tension = analysis.wheel()?.tension;
  const value = spec?.tension?.values.value;
  if (!spec || !tension || !value) return;
  const low = (['left', 'right'] as const)
    .map((side) => ({ side, ...tension.sides[side] }))
    .filter((one) => one.value < one.least)
    .toSorted((a, b) => a.value / a.least - b.value / b.least || (a.side === tension.set.side ? -1 : 1));
  const [worst] = low;
  if (!worst) return;
  // Balance holds for a tension of nothing too.
  const shareOf = (side: 'left' | 'right'): number =>
    side === tension.set.side ? 1 : side === 'left' ? tension.ratio : 1 / tension.ratio;
  const best = Math.ceil(worst.least / shareOf(worst.side) / 10) * 10;
  const room = (['left', 'right'] as const).every((side) => {
    const single = side === tension.set.side ? (tension.set.spread ?? 0) : 0;
    return shareOf(side) * best + single <= tension.sides[side].most;
  });
  const spread = tension.set.spread === null ? '' : ` ±${tension.set.spread}`;
  yield {
    path: value.path,
    message: `balance leaves the ${worst.side} side ${newtons(worst.value)}, wanted ${newtons(worst.least)} at least in a new wheel: ${newtons(worst.least - worst.value)} short — ${room ? `${best} N on the ${tension.set.side} side` : 'the limit leaves no room: an off-centre rim or other flanges'}`,
    data: { side: worst.side, tension: worst.value, least: worst.least, ratio: tension.ratio },
    fixes: room
      ? [
          {
            title: `Change the tension to ${best}${spread} N: the ${worst.side} side then has ${newtons(shareOf(worst.side) * best)}`,
            changes: setValue(analysis.spec, value.path, `${best}${spread} N`),
            preferred: true,
          },
        ]
      : [],
  };
}

/** What a meter read: the mean of a side. Single slack spokes stray from it and are said to be that. */
function* readLow(analysis: Analysis): Iterable<Draft> {
  const { tension, measured } = analysis.wheel() ?? {};
  if (!tension || !measured) return;
  for (const side of ['left', 'right'] as const) {
    const read = measured.sides[side];
    const { least } = tension.sides[side];
    if (!read || least <= read.mean) continue;
    yield {
      path: read.path,
      part: 'key',
      message: `the ${side} side reads ${newtons(read.mean)} on average, wanted ${newtons(least)} at least in a new wheel: ${newtons(least - read.mean)} short — tighten both sides evenly, true the wheel and read again before it is ridden`,
      data: { side, mean: read.mean, least },
    };
  }
}
