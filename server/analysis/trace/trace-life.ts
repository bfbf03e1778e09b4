import type { Workshop } from '../../spec/workshop-model.ts';
import type { VariantAnalysis } from '../analyze.ts';
import { lifeOf } from '../life/life-of.ts';
import { input, step, type TraceStep } from './trace-step.ts';

/** How the lives of `life` come about, bearing by bearing; null where none is reckoned. */
export function traceLife(
  variant: VariantAnalysis,
  workshop: Workshop | null,
  how: 'drawn' | 'built',
): readonly TraceStep[] | null {
  const life = lifeOf(variant, workshop, { how, rider: null });
  if (life.bearings.length === 0) return null;
  const steps = life.bearings.flatMap(({ address, ratings, cases, equivalent, kilometres }) => [
    step(
      input(`mean load of ${address}`, equivalent, 'N'),
      'P = X·Fr + Y·Fa of each case, then (Σ P³·share)^⅓',
      'iso-281',
      cases.flatMap(({ name, share, load }) => [
        input(`share ${name}`, share, '1'),
        input(`Fr ${name}`, load.radial, 'N'),
        input(`Fa ${name}`, load.axial, 'N'),
      ]),
    ),
    step(
      input(`life of ${address}`, kilometres, 'km'),
      'L10 = (C/P)³ million turns, times the circumference of the tyre',
      'iso-281',
      [input('C', ratings.dynamic, 'N'), input('P', equivalent, 'N')],
    ),
  ]);
  if (life.kilometres === null) return steps;
  return [
    ...steps,
    step(
      input('life of all together', life.kilometres, 'km'),
      'L = (Σ Li^−10/9)^−9/10',
      'iso-281',
      life.bearings.map(({ address, kilometres }) => input(address, kilometres, 'km')),
      ['for comparison only', ...life.assumed],
    ),
  ];
}
