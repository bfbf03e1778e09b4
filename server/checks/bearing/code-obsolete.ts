import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import { decodeBearing } from '../../engine/bearings/decode-bearing.ts';
import { encodeBearing } from '../../engine/bearings/encode-bearing.ts';
import { setValue } from '../../spec/edit.ts';
import type { Check, Draft } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
import { pageHub } from '../page-hub.ts';
import { ownCode, saySize } from './fitting.ts';
import { withBasic } from './with-basic.ts';

/** A code is an old or an odd spelling of a bearing that has a standard one. */
export const codeObsolete: Check = {
  code: 'code-obsolete',
  group: 'bearing',
  severity: 'hint',
  summary: 'The bearing has a standard code beside the one written.',
  page: {
    why: 'Some bearings of the cycle trade are stamped with their dimensions instead of a series. The same bearing is sold under its ISO code too, often cheaper and from more shelves. Both codes are understood; the standard one is the safer to order by.',
    bad: pageHub(['code: 6803-2RS', 'code: 17265-2RS']),
    good: pageHub(),
    sources: ['ISO 15, dimension series', 'common practice'],
  },
  run: (analysis) => eachVariant(analysis, (variant) => obsolete(analysis, variant)),
};

function* obsolete(analysis: Analysis, variant: VariantAnalysis): Iterable<Draft> {
  for (const stacked of variant.assembly.bearings) {
    const { bearing } = stacked;
    const code = ownCode(stacked);
    if (!code || !bearing?.standardEquivalent) continue;
    const usual = encodeBearing(bearing, bearing.closure !== 'open') ?? bearing.standardEquivalent;
    const other = withBasic(code.value, bearing, usual);
    const again = decodeBearing(other);
    if (
      'failure' in again ||
      saySize(again.bearing) !== saySize(bearing) ||
      again.bearing.closure !== bearing.closure
    )
      continue;
    yield {
      path: code.path,
      message: `${code.value} is ${saySize(bearing)}, whose standard code is ${other} — order by either`,
      data: { code: code.value, standard: other },
      fixes: [
        {
          title: `Change to ${other} (${saySize(again.bearing)}), the standard code of the same size`,
          changes: setValue(analysis.spec, code.path, other),
          preferred: true,
        },
      ],
    };
  }
}
