import type { Analysis } from '../../analysis/analyze.ts';
import type { SideTension } from '../../analysis/wheel/wheel-tension.ts';
import { tension as newtons } from '../../engine/base/figures.ts';
import { tensionSpread } from '../../engine/tables/wheel-limits.ts';
import { setValue } from '../../spec/edit.ts';
import type { Check, Draft } from '../check.ts';
import { pageWheel } from '../page-wheel.ts';

/** More tension is wanted than the rim or the spoke bears. */
export const tensionOverLimit: Check = {
  code: 'tension-over-limit',
  group: 'wheel',
  severity: 'error',
  summary: 'More tension is wanted than the rim or the spoke bears.',
  page: {
    why: 'The side with the higher tension sets what a wheel may have. Above the limit of the rim its holes crack, sooner or later, and close to the tension that folds it a wheel takes two waves when the spokes are stressed. The limit of the rim’s maker holds, spread of the single spokes included.',
    bad: pageWheel(['value: 1000 ±100 N', 'value: 1400 ±100 N']),
    good: pageWheel(),
    sources: [
      'balance of the two sides from statics',
      'common practice: some 1200 N a spoke where the maker of the rim says nothing',
    ],
  },
  *run(analysis) {
    yield* wantedOver(analysis);
    yield* readOver(analysis);
  },
};

/** What is wanted, the spread of single spokes included on the side it is written for. */
function* wantedOver(analysis: Analysis): Iterable<Draft> {
  const tension = analysis.wheel()?.tension;
  const value = analysis.spec.wheel?.tension?.values.value;
  if (!tension || !value) return;
  const spread = tension.set.spread ?? 0;
  const over = (['left', 'right'] as const)
    .map((side) => ({ side, ...tension.sides[side] }))
    .map((one) => ({ ...one, highest: one.value + (one.side === tension.set.side ? spread : 0) }))
    .filter((one) => one.most < one.highest - 0.5)
    .toSorted((a, b) => b.value / b.most - a.value / a.most || (a.side === tension.set.side ? -1 : 1));
  const [worst] = over;
  if (!worst) return;
  const factor = worst.most / worst.value;
  // The band wanted ends at the limit.
  const best = Math.floor((tension.set.value * factor - spread) / 10) * 10;
  const from = bears(worst.mostFrom);
  const where = worst.side === tension.set.side ? '' : ', which balance asks for';
  const mean = worst.most < worst.value;
  const said = mean
    ? `${newtons(worst.value)} on the ${worst.side} side${where}`
    : `${newtons(worst.value)} on the ${worst.side} side${where}, single spokes up to ${newtons(worst.highest)}`;
  yield {
    path: value.path,
    ...(mean ? {} : { severity: 'warning' }),
    message: `${said}, ${from} ${newtons(worst.most)}: ${newtons((mean ? worst.value : worst.highest) - worst.most)} too much — ${best > 0 ? `${best} N on the ${tension.set.side} side` : 'a lower tension'}`,
    data: { side: worst.side, tension: worst.value, highest: worst.highest, limit: worst.most },
    fixes:
      best > 0
        ? [
            {
              title: `Change the tension to ${best}${spread > 0 ? ` ±${spread}` : ''} N: the ${worst.side} side then has ${newtons((best * worst.value) / tension.set.value)} of ${newtons(worst.most)}`,
              changes: setValue(analysis.spec, value.path, `${best}${spread > 0 ? ` ±${spread}` : ''} N`),
              preferred: true,
            },
          ]
        : [],
  };
}

/** What a meter read. Single spokes far from their side are said to be that, and to be turned. */
function* readOver(analysis: Analysis): Iterable<Draft> {
  const wheel = analysis.wheel();
  const { tension, measured } = wheel ?? {};
  if (!tension || !measured) return;
  for (const side of ['left', 'right'] as const) {
    const read = measured.sides[side];
    const { most, mostFrom } = tension.sides[side];
    if (!read) continue;
    const over = read.readings
      .map((value, at) => ({ value, at }))
      .filter(({ value }) => most < value && value <= read.mean * (1 + tensionSpread.acceptable))
      .toSorted((a, b) => b.value - a.value);
    const [highest] = over;
    if (!highest) continue;
    const others = over.length === 1 ? '' : ` and ${over.length - 1} more`;
    yield {
      path: [...read.path, highest.at],
      message: `on the ${side} side spoke ${highest.at + 1}${others} read up to ${newtons(highest.value)}, ${bears(mostFrom)} ${newtons(most)}: ${newtons(highest.value - most)} too much — loosen both sides evenly, true the wheel and read again before it is ridden`,
      data: { side, limit: most, strays: over.map(({ at, value }) => ({ spoke: at + 1, tension: value })) },
    };
  }
}

const bears = (from: SideTension['mostFrom']): string =>
  from === 'common practice' ? 'usual rims bear' : `${from} bears`;
