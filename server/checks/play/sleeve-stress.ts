import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import { isWorked } from '../../analysis/mechanics/pair-mechanics.ts';
import { force, stress as megapascals, plain } from '../../engine/base/figures.ts';
import { area } from '../../engine/play/clamp-compression.ts';
import type { Check, Draft } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
import { pageHub } from '../page-hub.ts';
import { rewriteFix } from '../rewrite.ts';
import { type Overstressed, overstressed } from './overstressed.ts';

/** The clamp squeezes a spacer beyond its share of yield. */
export const sleeveStress: Check = {
  code: 'sleeve-stress',
  group: 'play',
  severity: 'warning',
  summary: 'The clamp squeezes a spacer close to its yield, or beyond it.',
  page: {
    why: 'The whole clamp force goes through the wall of the spacer. A thin wall is squeezed short, and past its yield it stays short: the bearings are tighter after every clamping. A wall as thick as the inner rings allow costs a few grams and gives back most of the play that the clamp takes.',
    bad: `${pageHub(['outside: 19.6', 'outside: 17.8'])}clamp: 5 kN\n`,
    good: `${pageHub()}clamp: 5 kN\n`,
    sources: [
      'stress of a tube F/A',
      'common practice: two thirds of yield',
      'yield of the material as its table prints it',
    ],
  },
  run: (analysis) => eachVariant(analysis, (variant) => squeezed(analysis, variant)),
};

/** Room between a spacer and the seal beside the inner ring, on the diameter, mm. */
const clearOfSeal = 0.1;

function* squeezed(analysis: Analysis, variant: VariantAnalysis): Iterable<Draft> {
  const { clamp, pairs } = variant.mechanics('built');
  if (!clamp) return;
  for (const pair of pairs) {
    if (!isWorked(pair)) continue;
    const ring = Math.min(
      pair.left.stack.innerOutside?.value ?? 0,
      pair.right.stack.innerOutside?.value ?? 0,
    );
    for (const over of overstressed(analysis, pair)) {
      const draft = ofSleeve(analysis, variant, over, clamp.force, ring - clearOfSeal);
      if (draft)
        yield {
          ...draft,
          related: [
            ...(draft.related ?? []),
            {
              path: clamp.path,
              message: `clamped with ${force(clamp.force)}${clamp.assumed.map((text) => `; ${text}`).join('')}`,
            },
          ],
        };
    }
  }
}

function ofSleeve(
  analysis: Analysis,
  variant: VariantAnalysis,
  { part: sleeve, stress, most }: Overstressed,
  clampForce: number,
  widest: number,
): Draft | null {
  const part = variant.assembly.line.find(({ address }) => address === sleeve.address)?.part;
  if (!part) return null;
  const { outside, material } = part.values;
  const name = `outside of ${sleeve.address}`;
  // As thick as the rings allow: the play that the clamp takes is the smaller for it.
  const to = Math.floor(widest * 10 + 1e-6) / 10;
  const then = clampForce / area({ ...sleeve, outer: to });
  const helps = outside && sleeve.outer < to && then <= most;
  const yields = sleeve.yield ?? most;
  return {
    path: outside?.path ?? part.path,
    severity: yields < stress ? 'error' : 'warning',
    message: `${force(clampForce)} squeezes ${sleeve.address} with ${megapascals(stress)}, wanted ${megapascals(most)} at most: ${megapascals(stress - most)} too much${yields < stress ? `, and beyond its yield of ${megapascals(yields)}` : ''} — ${helps ? `${plain(to)} outside` : 'a thicker wall or a stronger material'}`,
    related: [
      ...(outside
        ? [
            {
              path: outside.path,
              message: `wall ${plain(sleeve.inner)} to ${plain(sleeve.outer)}, ${area(sleeve).toFixed(1)} mm²`,
            },
          ]
        : []),
      ...(material ? [{ path: material.path, message: `yield ${megapascals(yields)}` }] : []),
    ],
    data: { stress, most, yield: yields, area: area(sleeve), clampForce },
    fixes:
      helps && !outside.value.measured
        ? [
            rewriteFix(analysis, outside, to, {
              name,
              result: `${megapascals(then)} of ${megapascals(most)}`,
            }),
          ]
        : [],
  };
}
