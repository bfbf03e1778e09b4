import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import type { LinePart } from '../../assembly/line.ts';
import { length, plain } from '../../engine/base/figures.ts';
import type { Check, Draft } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
import { pageHub } from '../page-hub.ts';
import { rewriteFix } from '../rewrite.ts';
import { neighbours, ringFace } from '../ring-face.ts';
import { swappedFaces } from './swapped-faces.ts';

/** The face of an end cap is wider than the inner ring it clamps. */
export const endCapRubs: Check = {
  code: 'end-cap-rubs',
  group: 'end-cap',
  severity: 'error',
  summary: 'The face of an end cap is wider than the inner ring it clamps.',
  page: {
    why: 'The end cap stands still, the outer ring and the seal turn with the wheel. A face that reaches the seal wears its lip away; one that reaches the outer ring clamps the bearing solid.',
    bad: pageHub(['face: 19.4', 'face: 22.8']),
    good: pageHub(),
    sources: ['ring shoulders estimated from the section unless inner-outside is written', 'common practice'],
  },
  run: (analysis) => eachVariant(analysis, (variant) => rubbing(analysis, variant)),
};

function* rubbing(analysis: Analysis, variant: VariantAnalysis): Iterable<Draft> {
  const { line } = variant.assembly;
  const gap = analysis.limits.value('seal-gap');
  if (swappedFaces(variant, gap)) return;
  for (const cap of line.filter(({ part }) => part.kind === 'end-cap')) {
    const { face } = cap.part.values;
    const [bearing] = neighbours(line, cap);
    const reach = face && bearing ? ringFace(bearing, face.value.nominal, gap) : null;
    if (!face || !bearing || !reach) continue;
    const name = `face of ${cap.address}`;
    const target = mirrored(variant, cap, reach.most) ?? reach.most;
    yield {
      path: face.path,
      severity: reach.touches === 'outer ring' ? 'error' : 'warning',
      message: `${name} is ${plain(face.value.nominal)}, the inner ring of ${bearing.address} ${reach.said}: it rubs on the ${reach.touches} — ${length(reach.most, 1)} at most`,
      related: [{ path: bearing.from, message: `inner ring ${reach.said}` }],
      data: {
        face: face.value.nominal,
        innerRing: reach.most,
        touches: reach.touches,
        estimated: reach.estimated,
      },
      fixes: [
        rewriteFix(analysis, face, target, {
          name,
          result: `it then bears on the inner ring of ${bearing.address} only`,
        }),
      ],
    };
  }
}

/** The face of the cap on the other side, where that one stays on the inner ring: the two are one part. */
function mirrored(variant: VariantAnalysis, cap: LinePart, most: number): number | null {
  const other = variant.assembly.line.find(({ part }) => part.kind === 'end-cap' && part !== cap.part);
  const face = other?.part.values.face?.value.nominal;
  return face !== undefined && face <= most ? face : null;
}
