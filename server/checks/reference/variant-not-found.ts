import { removeKey, setValue } from '../../spec/edit.ts';
import { nearestOf } from '../../spec/nearest.ts';
import type { Check } from '../check.ts';
import { referencesThat } from './reference-of.ts';

/** A wheel names a variant that its hub does not have. */
export const variantNotFound: Check = {
  code: 'variant-not-found',
  group: 'reference',
  severity: 'error',
  summary: 'A wheel names a variant that its hub does not have.',
  page: {
    why: 'The variant decides the end caps, and with them the width and where the flanges lie from the middle. Without it the wheel would be dished for another axle. Leave variant out for the hub as written.',
    bad: 'wheel: Dunlin touring front\nhub: ./dunlin-front.hub.yaml\nvariant: thru-15\n',
    good: 'wheel: Dunlin touring front\nhub: ./dunlin-front.hub.yaml\n',
    sources: ['common practice'],
  },
  *run(analysis) {
    const variant = analysis.spec.wheel?.values.variant;
    if (!variant) return;
    for (const { written, state } of referencesThat(analysis, 'found')) {
      const names = state.document.hub?.variants.map(({ name }) => name) ?? [];
      if (!state.document.hub || names.includes(variant.value)) continue;
      const near = nearestOf(variant.value, names);
      const has = names.length === 0 ? 'has no variants' : `has ${names.slice(0, 8).join(', ')}`;
      yield {
        path: variant.path,
        message: `${variant.value} is no variant of ${written}, which ${has} — ${near ? `write ${near}` : 'leave variant out for the hub as written'}`,
        data: { variant: variant.value, variants: names },
        fixes: [
          ...(near
            ? [
                {
                  title: `Change to ${near}`,
                  changes: setValue(analysis.spec, variant.path, near),
                  preferred: true,
                },
              ]
            : []),
          {
            title: 'Remove variant: the hub as written is taken',
            changes: removeKey(analysis.spec, variant.path),
          },
        ],
      };
    }
  },
};
