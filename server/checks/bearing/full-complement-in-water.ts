import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import { type DecodedBearing, decodeBearing } from '../../engine/bearings/decode-bearing.ts';
import { setValue } from '../../spec/edit.ts';
import type { Check, Draft } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
import { pageHub } from '../page-hub.ts';
import { ownCode, saySize } from './fitting.ts';
import { wetDuty } from './wet-duty.ts';
import { suffixesOf } from './with-basic.ts';

/** A bearing without a cage stands where water gets in. */
export const fullComplementInWater: Check = {
  code: 'full-complement-in-water',
  group: 'bearing',
  severity: 'warning',
  summary: 'A bearing without a cage stands where water gets in.',
  page: {
    why: 'Without a cage the balls touch, and at the touch they rub against each other in opposite directions. That takes a full film of grease; washed thin, balls and races wear quickly. Such bearings carry more while they hardly turn, as in a pivot, and suit a hub that stays dry.',
    bad: `${pageHub(['code: 6803-2RS', 'code: 6803-2RS MAX'])}duty: { water: rain }\n`,
    good: `${pageHub()}duty: { water: rain }\n`,
    sources: ['makers’ pages on full complement bearings', 'common practice'],
  },
  run: (analysis) => eachVariant(analysis, (variant) => caged(analysis, variant)),
};

function* caged(analysis: Analysis, variant: VariantAnalysis): Iterable<Draft> {
  const water = wetDuty(variant);
  if (!water) return;
  for (const stacked of variant.assembly.bearings) {
    const { bearing, address } = stacked;
    const code = ownCode(stacked);
    if (!code || !bearing?.fullComplement) continue;
    const other = withCage(code.value, bearing);
    const doubt = bearing.ambiguousSuffixes.find(({ suffix }) => /^(?:V|MAX)$/.test(suffix));
    const read = doubt ? `, as some makers read ${doubt.suffix}` : '';
    yield {
      path: code.path,
      message: `${code.value} has no cage${read}: once water thins the grease of ${address} its balls wear each other; the duty says ${water.value} — ${other ? `write ${other}, with a cage` : 'take one with a cage'}`,
      related: [{ path: water.path, message: `water: ${water.value}` }],
      data: { code: code.value, water: water.value, meanings: doubt?.meanings ?? [] },
      fixes: other
        ? [
            {
              title: `Change to ${other} (${saySize(bearing)}), the same size with a cage and seals`,
              changes: setValue(analysis.spec, code.path, other),
              preferred: true,
            },
          ]
        : [],
    };
  }
}

/** The code with its cage back, and sealed where it was open; null where that is another size. */
function withCage(code: string, bearing: DecodedBearing): string | null {
  const { text, start } = suffixesOf(code, bearing);
  const bare = text.replace(/[\s/-]*(?:MAX|V)(?![A-Z])/i, '');
  if (bare === text) return null;
  const seals = bearing.closure === 'open' ? '-2RS' : '';
  const other = code.slice(0, start) + seals + bare;
  const again = decodeBearing(other);
  if ('failure' in again || again.bearing.fullComplement || saySize(again.bearing) !== saySize(bearing))
    return null;
  return other;
}
