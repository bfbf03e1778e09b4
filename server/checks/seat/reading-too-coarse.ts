import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import { micrometres, plain } from '../../engine/base/figures.ts';
import type { Check, Draft } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
import { pageHub } from '../page-hub.ts';
import { coarseReadings } from './coarse-readings.ts';

/** A measured diameter is too uncertain to say whether a ring fits. */
export const readingTooCoarse: Check = {
  code: 'reading-too-coarse',
  group: 'seat',
  severity: 'information',
  summary: 'A reading is too coarse to judge a fit.',
  page: {
    why: 'The difference between a ring that creeps and one that has lost its clearance is about 0.02 mm, which is what a calliper can be off by. A bore wants a bore gauge or a three-point micrometer, a journal a micrometer. Until then the fit is unchecked, not sound.',
    bad: pageHub(['left: { bore: 26 N7', 'left: { bore: measured 25.98']),
    good: pageHub(['left: { bore: 26 N7', 'left: { bore: measured 25.985 ±0.003']),
    sources: ['common practice'],
  },
  run: (analysis) => eachVariant(analysis, (variant) => tooCoarse(analysis, variant)),
};

function* tooCoarse(analysis: Analysis, variant: VariantAnalysis): Iterable<Draft> {
  for (const { name, placed, reading } of coarseReadings(analysis, variant)) {
    yield {
      path: placed.path,
      message: `${name} was read as ${plain(reading.nominal)} ±${micrometres(reading.upper)}: a fit is decided by a few micrometres, so it stays unchecked — measure it to ±5 µm and write the uncertainty`,
      data: { reading: reading.nominal, uncertaintyUm: reading.upper * 1000 },
    };
  }
}
