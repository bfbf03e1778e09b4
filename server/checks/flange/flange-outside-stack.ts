import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import { flangePlaces } from '../../assembly/flange-places.ts';
import { millimetres, plain } from '../../engine/base/figures.ts';
import type { Check, Draft } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
import { pageHub } from '../page-hub.ts';
import { pageFlanges } from '../page-wheel.ts';

/** A flange stands beyond the dropout face of its side. */
export const flangeOutsideStack: Check = {
  code: 'flange-outside-stack',
  group: 'flange',
  severity: 'error',
  summary: 'A flange stands beyond the dropout face of its side.',
  page: {
    why: 'Everything that turns lies between the dropouts. A flange further from the middle than half the width would stand in the frame; most often its distance was measured from the end face, or the whole distance of both flanges was written for one.',
    bad: pageHub(pageFlanges, [
      'left: { holes: 16, circle: 40, from-centre: 30',
      'left: { holes: 16, circle: 40, from-centre: 60',
    ]),
    good: pageHub(pageFlanges),
    sources: ['common practice: each flange lies inside its end face'],
  },
  run: (analysis) => eachVariant(analysis, (variant) => outside(analysis, variant)),
};

function* outside({ variants }: Analysis, { assembly }: VariantAnalysis): Iterable<Draft> {
  const width = assembly.width.wanted;
  const [first] = variants;
  if (!width || !first) return;
  for (const { name, flange, fromMiddle } of flangePlaces(assembly, first.assembly)) {
    const written = flange.values['from-centre'];
    if (fromMiddle === null || !written) continue;
    const edge = Math.abs(fromMiddle) + (flange.values.thickness?.value.nominal ?? 0) / 2;
    const half = width.nominal / 2;
    if (edge <= half) continue;
    yield {
      path: written.path,
      message: `the ${name} flange reaches ${millimetres(edge, 1)} from the middle, the dropout face stands at ${plain(half)}: ${millimetres(edge - half, 1)} too far — from-centre is the distance from the middle of the hub to the middle of the flange`,
      related: [{ path: width.path, message: `half the width is ${plain(half)}` }],
      data: { edge, half },
    };
  }
}
