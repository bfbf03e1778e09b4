import { force } from '../../engine/base/figures.ts';
import { setValue } from '../../spec/edit.ts';
import type { Check } from '../check.ts';
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
    const spec = analysis.spec.wheel;
    const tension = analysis.wheel()?.tension;
    const value = spec?.tension?.values.value;
    if (!spec || !tension || !value) return;
    const over = (['left', 'right'] as const)
      .map((side) => ({ side, ...tension.sides[side] }))
      .filter((one) => one.most < one.value)
      .toSorted((a, b) => b.value / b.most - a.value / a.most || (a.side === tension.set.side ? -1 : 1));
    const [worst] = over;
    if (!worst) return;
    const factor = worst.most / worst.value;
    const spread = tension.set.spread ?? 0;
    // The band wanted ends at the limit.
    const best = Math.floor((tension.set.value * factor - spread) / 10) * 10;
    const from = worst.mostFrom === 'common practice' ? 'usual rims bear' : `${worst.mostFrom} bears`;
    const where = worst.side === tension.set.side ? '' : `, which balance asks for on the ${worst.side}`;
    yield {
      path: value.path,
      message: `${force(worst.value)} on the ${worst.side} side${where}, ${from} ${force(worst.most)}: ${force(worst.value - worst.most)} too much — ${best > 0 ? `${best} N on the ${tension.set.side} side` : 'a lower tension'}`,
      data: { side: worst.side, tension: worst.value, limit: worst.most },
      fixes:
        best > 0
          ? [
              {
                title: `Change the tension to ${best}${spread > 0 ? ` ±${spread}` : ''} N: the ${worst.side} side then has ${force((best * worst.value) / tension.set.value)} of ${force(worst.most)}`,
                changes: setValue(analysis.spec, value.path, `${best}${spread > 0 ? ` ±${spread}` : ''} N`),
                preferred: true,
              },
            ]
          : [],
    };
  },
};
