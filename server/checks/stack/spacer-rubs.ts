import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import { length, plain } from '../../engine/base/figures.ts';
import type { StackKind } from '../../spec/model.ts';
import type { Check, Draft } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
import { pageHub } from '../page-hub.ts';
import { rewriteFix } from '../rewrite.ts';
import { neighbours, ringFace } from '../ring-face.ts';

const kinds: readonly StackKind[] = ['spacer', 'shim', 'washer', 'collar', 'adjuster', 'wave-washer'];

/** A spacer is wider than the inner ring it bears on and touches the seal or the outer ring. */
export const spacerRubs: Check = {
  code: 'spacer-rubs',
  group: 'stack',
  severity: 'error',
  summary: 'A spacer is wider than the inner ring it bears on.',
  page: {
    why: 'A spacer, shim or collar may touch the inner ring only. One that reaches the seal tears its lip; one that reaches the outer ring ties the two rings together and the hub does not turn.',
    bad: pageHub(['outside: 19.6', 'outside: 23.6']),
    good: pageHub(),
    sources: [
      'ring shoulders from ISO 15 sections, estimated unless inner-outside is written',
      'common practice',
    ],
  },
  run: (analysis) => eachVariant(analysis, (variant) => rubbing(analysis, variant)),
};

function* rubbing(analysis: Analysis, variant: VariantAnalysis): Iterable<Draft> {
  const { line } = variant.assembly;
  const gap = analysis.limits.value('seal-gap');
  for (const part of line) {
    const outside = part.part.values.outside;
    if (!outside || !kinds.includes(part.part.kind)) continue;
    for (const bearing of neighbours(line, part)) {
      const face = ringFace(bearing, outside.value.nominal, gap);
      if (!face) continue;
      const name = `outside of ${part.address}`;
      yield {
        path: outside.path,
        severity: face.touches === 'outer ring' ? 'error' : 'warning',
        message: `${name} is ${plain(outside.value.nominal)}, the inner ring of ${bearing.address} ${face.said}: it reaches the ${face.touches} — ${length(face.most)} at most`,
        related: [{ path: bearing.from, message: `inner ring ${face.said}` }],
        data: {
          outside: outside.value.nominal,
          innerRing: face.most,
          touches: face.touches,
          estimated: face.estimated,
        },
        fixes: [
          rewriteFix(analysis, outside, face.most, {
            name,
            result: `it then bears on the inner ring of ${bearing.address} only`,
          }),
        ],
      };
      break;
    }
  }
}
