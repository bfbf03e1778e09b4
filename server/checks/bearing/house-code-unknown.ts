import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import { setValue } from '../../spec/edit.ts';
import { nearestOf } from '../../spec/nearest.ts';
import type { Check, Draft } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
import { pageHub } from '../page-hub.ts';

const bad = [
  '    code: 6803-2RS\n    seat: shell.right',
  '    house-code: DB-71\n    seat: shell.right',
] as const;

/** No workshop file says what a house code stands for. */
export const houseCodeUnknown: Check = {
  code: 'house-code-unknown',
  group: 'bearing',
  severity: 'error',
  summary: 'No workshop file says what a house code stands for.',
  page: {
    why: 'A house code is the name a workshop gives a bearing on its own shelf. What it stands for is written under bearings in the workshop file beside or above the hub. A hub that is passed on without that file should carry the code stamped on the bearing too.',
    bad: pageHub(bad),
    good: pageHub([bad[0], bad[1].replace('DB-71', 'DB-17')]),
    sources: ['common practice'],
  },
  run: (analysis) => eachVariant(analysis, (variant) => unknown(analysis, variant)),
};

function* unknown(analysis: Analysis, variant: VariantAnalysis): Iterable<Draft> {
  const known = Object.keys(analysis.workshop?.bearings ?? {});
  for (const { part, bearing } of variant.assembly.bearings) {
    const house = part.values['house-code'];
    if (!house || known.includes(house.value)) continue;
    const near = nearestOf(house.value, known);
    const told = near ? `nearest is ${near}` : listed(known);
    yield {
      path: house.path,
      severity: bearing ? 'warning' : 'error',
      message: `${house.value} is no bearing of the workshop; ${told} — ${near ? `write ${near}` : 'write the code of the bearing here, or the house code in the workshop file'}`,
      data: { houseCode: house.value, known },
      fixes: near
        ? [
            {
              title: `Change to ${near}`,
              changes: setValue(analysis.spec, house.path, near),
              preferred: true,
            },
          ]
        : [],
    };
  }
}

function listed(known: readonly string[]): string {
  if (known.length === 0) return 'no workshop file beside or above this hub names bearings';
  return `it knows ${known.slice(0, 8).join(', ')}${8 < known.length ? ' …' : ''}`;
}
