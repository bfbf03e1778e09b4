import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import { type Settled, settle } from '../../assembly/settle.ts';
import { micrometres, plain } from '../../engine/base/figures.ts';
import type { Dimension } from '../../spec/model.ts';
import type { Placed } from '../../spec/place.ts';
import type { Check, Draft } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
import { interference } from '../fit-of.ts';
import { journalOf, pushesOn } from '../journal-of.ts';
import { pageHub } from '../page-hub.ts';
import { seatsOf } from '../seat-of.ts';
import { canJudge, isDecided } from './fitted.ts';

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
  for (const { name, placed, decided } of [...bores(analysis, variant), ...journals(analysis, variant)]) {
    const settled = settle(placed, variant.assembly.rules);
    if (canJudge(settled) || !settled.built || decided(settled)) continue;
    yield {
      path: placed.path,
      message: `${name} was read as ${plain(settled.built.nominal)} ±${micrometres(settled.built.upper)}: a fit is decided by a few micrometres, so it stays unchecked — measure it to ±5 µm and write the uncertainty`,
      data: { reading: settled.built.nominal, uncertaintyUm: settled.built.upper * 1000 },
    };
  }
}

interface Diameter {
  readonly name: string;
  readonly placed: Placed<Dimension>;
  /** Whether even the coarse reading leaves no doubt: then it is judged, and not too coarse. */
  readonly decided: (settled: Settled) => boolean;
}

function bores(analysis: Analysis, variant: VariantAnalysis): readonly Diameter[] {
  return seatsOf(variant).flatMap((seat): readonly Diameter[] => {
    const placed = seat.seat.values.bore;
    if (!placed || seat.bearings.length === 0) return [];
    const ring = seat.contact?.bearing?.outside;
    const least = analysis.limits.value('seat-interference');
    const most = analysis.limits.value('seat-interference-per-diameter') * (ring?.drawn.nominal ?? 0);
    const decided = (settled: Settled): boolean =>
      ring !== undefined && ring !== null && isDecided(settled, interference(settled, ring), least, most);
    return [{ name: `bore of ${seat.address}`, placed, decided }];
  });
}

function journals(analysis: Analysis, variant: VariantAnalysis): readonly Diameter[] {
  const most = analysis.limits.value('journal-clearance');
  const seen = new Set<unknown>();
  return variant.assembly.bearings.flatMap((bearing): readonly Diameter[] => {
    const journal = journalOf(variant, bearing);
    if (!journal || seen.has(journal.placed)) return [];
    seen.add(journal.placed);
    const decided = (settled: Settled): boolean =>
      bearing.bore !== null && isDecided(settled, interference(bearing.bore, settled), -most, pushesOn);
    return [{ ...journal, decided }];
  });
}
