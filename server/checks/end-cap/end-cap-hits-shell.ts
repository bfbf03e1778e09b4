import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import { length, millimetres } from '../../engine/base/figures.ts';
import type { Check, Draft } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
import { gapTarget } from '../gap-target.ts';
import { loopData, relatedTerms, sayWanted } from '../loop-talk.ts';
import { pageHub } from '../page-hub.ts';
import { rewriteFix } from '../rewrite.ts';

/** The wide part of an end cap touches the housing before its face meets the bearing, or runs too near to it. */
export const endCapHitsShell: Check = {
  code: 'end-cap-hits-shell',
  group: 'end-cap',
  severity: 'error',
  summary: 'The wide part of an end cap does not clear the housing.',
  page: {
    why: 'The nose of the cap reaches into the seat to the inner ring; its wide part covers the seat and must clear the housing, which turns. A nose that is too short lets cap and housing meet first: the bearings are never clamped, or the cap drags.',
    bad: pageHub(['    face: 19.4', '    face: 19.4\n    outside: 30\n    nose: 0.2']),
    good: pageHub(['    face: 19.4', '    face: 19.4\n    outside: 30\n    nose: 1']),
    sources: ['common practice'],
  },
  run: (analysis) => eachVariant(analysis, (variant) => hits(analysis, variant)),
};

function* hits(analysis: Analysis, variant: VariantAnalysis): Iterable<Draft> {
  for (const gap of variant.gaps) {
    const result = gap.built ?? gap.drawn;
    const { wanted } = gap.loop;
    if (gap.loop.role !== 'end-cap' || !wanted || !result || wanted.lo <= result.mean) continue;
    const [cap, housing] = gap.loop.between;
    const nose = variant.assembly.line.find(({ address }) => address === cap)?.part.values.nose;
    if (!nose) continue;
    const target = Number((nose.value.nominal + gapTarget(wanted, result) - result.mean).toFixed(1)) + 0.1;
    const touches = result.mean <= 0;
    yield {
      path: nose.path,
      severity: touches ? 'error' : 'warning',
      message: `gap between ${cap} and the ${housing} ${millimetres(result.mean)} on average, wanted ${sayWanted(wanted)}: ${touches ? 'they meet before the cap clamps' : `${length(wanted.lo - result.mean)} mm too near`} — lengthen the nose to ${length(target, 1)}`,
      related: relatedTerms(gap.loop, result, gap.built ? 'built' : 'drawn'),
      data: loopData(gap.loop, result),
      fixes: nose.value.measured
        ? []
        : [
            rewriteFix(analysis, nose, Number(target.toFixed(1)), {
              name: `nose of ${cap}`,
              result: `the gap is then ${millimetres(result.mean + target - nose.value.nominal)} on average`,
            }),
          ],
    };
  }
}
