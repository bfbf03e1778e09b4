import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import { classWithoutLimits } from '../../assembly/settle.ts';
import { plain } from '../../engine/base/figures.ts';
import { setValue } from '../../spec/edit.ts';
import type { Dimension } from '../../spec/model.ts';
import type { Placed } from '../../spec/place.ts';
import type { Check, Draft } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
import { pageHub } from '../page-hub.ts';
import { seatsOf } from '../seat-of.ts';

/** A fit class is written that has no limits here. */
export const fitClassUnknown: Check = {
  code: 'fit-class-unknown',
  group: 'seat',
  severity: 'warning',
  summary: 'A fit class has no limits that are known here.',
  page: {
    why: 'A class stands for two limits. Where ISO 286 gives none for the letter and the size, or the grade lies outside those known here (4 to 11, up to 80 mm), nobody can say whether the ring is tight: the fit stays unchecked, and the turner asks. Usually a digit too many or too few was written.',
    bad: pageHub(['left: { bore: 26 N7', 'left: { bore: 26 N17']),
    good: pageHub(),
    sources: ['ISO 286-1, grades and fundamental deviations'],
  },
  run: (analysis) => eachVariant(analysis, (variant) => unknown(analysis, variant)),
};

/** A diameter that may carry a class, and the class that is usual there. */
type Classed = readonly [name: string, placed: Placed<Dimension> | undefined, usual: string | null];

function* unknown(analysis: Analysis, variant: VariantAnalysis): Iterable<Draft> {
  for (const [name, placed, usual] of classed(variant)) {
    const why = placed && classWithoutLimits(placed.value);
    if (!placed || !why) continue;
    const wanted = usual && `${plain(placed.value.nominal)} ${usual}`;
    yield {
      path: placed.path,
      message: `${name} is ${placed.value.written}: ${why}, so its fit stays unchecked — ${wanted ? `write the class meant; ${wanted} is usual` : 'write the class meant, or its limits'}`,
      data: { written: placed.value.written, why },
      fixes: wanted
        ? [
            {
              title: `Change to ${wanted}, usual in a wheel`,
              changes: setValue(analysis.spec, placed.path, wanted),
            },
          ]
        : [],
    };
  }
}

function classed(variant: VariantAnalysis): readonly Classed[] {
  const { hub } = variant.assembly;
  const axle = hub.axle?.values;
  return [
    ...seatsOf(variant).map(({ address, seat }): Classed => [`bore of ${address}`, seat.values.bore, 'N7']),
    ['diameter of the axle', axle?.diameter, 'h6'],
    ['bore of the axle', axle?.bore, null],
    ...hub.stack.flatMap(({ address, values }): readonly Classed[] => [
      [`journal of ${address}`, values.journal, 'h6'],
      [`inside of ${address}`, values.inside, null],
      [`outside of ${address}`, values.outside, null],
      [`bore of ${address}`, values.bore, null],
      [`face of ${address}`, values.face, null],
      [`spigot of ${address}`, values.spigot, null],
    ]),
  ];
}
