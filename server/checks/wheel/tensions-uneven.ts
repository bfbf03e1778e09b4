import { sayTurns } from '../../analysis/wheel/say-turns.ts';
import { tension as newtons } from '../../engine/base/figures.ts';
import { tensionSpread } from '../../engine/tables/wheel-limits.ts';
import type { Check, Draft } from '../check.ts';
import { pageWheel } from '../page-wheel.ts';

const readings = (odd: string): readonly [string, string] => [
  'tension: { side: right, value: 1000 ±100 N }',
  `tension:
  side: right
  value: 1000 ±100 N
  measured: { right: [1000, 1010, 990, ${odd}, 1005, 995, 1000, 1000, 1010, 990, 1000, 995, 1005, 1000, 990, 1010] }`,
];

/** Single spokes stray far from the mean of their side, or the sides do not balance. */
export const tensionsUneven: Check = {
  code: 'tensions-uneven',
  group: 'wheel',
  severity: 'warning',
  summary: 'Measured tensions stray far from the mean of their side, or the sides do not balance.',
  page: {
    why: 'A spoke with less than its neighbours goes slack first and unscrews; one with more breaks or pulls the rim out of true. Readings whose sides do not balance point to a meter that is read wrong, to a wheel that is not dished, or to sizes of the hub that are not those written.',
    bad: pageWheel(readings('620')),
    good: pageWheel(readings('1000')),
    sources: [
      'common practice: ±10 % of the mean is good, ±20 % acceptable',
      'balance of the two sides from statics',
    ],
  },
  *run(analysis) {
    const measured = analysis.wheel()?.measured;
    if (!measured) return;
    for (const side of ['left', 'right'] as const) {
      const read = measured.sides[side];
      const far = read?.outliers.filter((one) => tensionSpread.acceptable < Math.abs(one.share)) ?? [];
      if (!read || far.length === 0) continue;
      yield strays(side, read, far);
    }
    if (measured.doubtful && measured.ratio !== null && measured.sides.right) {
      yield {
        path: measured.sides.right.path,
        part: 'key',
        severity: 'information',
        message: `the left side has ${times(measured.ratio)} times the tension of the right, balance asks for ${times(measured.balance)} — read again; then look at dish and flange places`,
        data: { ratio: measured.ratio, balance: measured.balance },
      };
    }
  },
};

type Read = NonNullable<
  NonNullable<ReturnType<Parameters<Check['run']>[0]['wheel']>>['measured']
>['sides']['left'];

function strays(side: 'left' | 'right', read: NonNullable<Read>, far: NonNullable<Read>['outliers']): Draft {
  const told = far.slice(0, 4).map(({ at, tension, turns }) => {
    const turn = turns === null ? '' : `, ${sayTurns(turns)} ${turns > 0 ? 'tighter' : 'looser'}`;
    return `spoke ${at + 1} with ${newtons(tension)}${turn}`;
  });
  return {
    path: [...read.path, far[0]?.at ?? 0],
    message: `on the ${side} side ${told.join('; ')}; the mean is ${newtons(read.mean)}, wanted within ±${tensionSpread.acceptable * 100} % of it — turn and read again`,
    data: {
      side,
      mean: read.mean,
      strays: far.map(({ at, tension, turns }) => ({ spoke: at + 1, tension, turns })),
    },
  };
}

const times = (ratio: number): string => ratio.toFixed(2);
