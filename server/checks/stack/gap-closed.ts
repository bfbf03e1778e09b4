import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import { millimetres } from '../../engine/base/figures.ts';
import type { BesidePlace } from '../../spec/beside-model.ts';
import { setValue } from '../../spec/edit.ts';
import type { Placed } from '../../spec/place.ts';
import type { Fix } from '../../spec/problem.ts';
import { withNominal } from '../../spec/with-nominal.ts';
import type { Check, Draft } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
import { gapTarget } from '../gap-target.ts';
import { loopData, relatedTerms, sayAgainst, sayWanted } from '../loop-talk.ts';
import { pageHub } from '../page-hub.ts';

/** A part beside the stack touches, or runs nearer to, what it must clear. */
export const gapClosed: Check = {
  code: 'gap-closed',
  group: 'stack',
  severity: 'error',
  summary: 'A part beside the stack does not keep its gap.',
  page: {
    why: 'Covers, seals and faces beside the stack turn against something that stands still. A gap that closes squeals, wears and drags; one far too wide lets water in.',
    bad: pageHub([
      'stack:',
      'beside:\n  - cover: left\n    at: 13.9 from end-cap.left\n    to: bearing.left\n    length: 0.5\n    gap: 0.3\nstack:',
    ]),
    good: pageHub([
      'stack:',
      'beside:\n  - cover: left\n    at: 13 from end-cap.left\n    to: bearing.left\n    length: 0.5\n    gap: 0.3\nstack:',
    ]),
    sources: ['common practice'],
  },
  run: (analysis) => eachVariant(analysis, (variant) => closed(analysis, variant)),
};

function* closed(analysis: Analysis, variant: VariantAnalysis): Iterable<Draft> {
  for (const { loop, drawn, built } of variant.gaps) {
    const result = built ?? drawn;
    if (loop.role !== 'beside' || !result) continue;
    const { wanted } = loop;
    const lo = wanted?.lo ?? 0;
    const hi = wanted?.hi ?? Number.POSITIVE_INFINITY;
    if (lo <= result.mean && result.mean <= hi) continue;
    const at = loop.terms.find(({ key }) => key === 'at') ?? loop.terms[0];
    if (!at) continue;
    const [a, b] = loop.between;
    const off = wanted ? sayAgainst(result.mean, wanted) : 'they touch';
    const target = wanted ? gapTarget(wanted, result) : analysis.limits.value('running-gap');
    const beside = variant.assembly.hub.beside.find(({ address }) => address === a);
    yield {
      path: at.path,
      message: `gap between ${a} and ${b} is ${millimetres(result.mean)} on average, wanted ${wanted ? sayWanted(wanted) : 'more than 0'}: ${off} — move ${a} by ${millimetres(Math.abs(target - result.mean))}`,
      related: relatedTerms(loop, result, built ? 'built' : 'drawn'),
      data: loopData(loop, result),
      fixes: beside?.values.at
        ? [moveFix(analysis, beside.values.at, at.sign * (target - result.mean), a, target)]
        : [],
    };
  }
}

function moveFix(analysis: Analysis, at: Placed<BesidePlace>, by: number, name: string, gap: number): Fix {
  const { distance, from } = at.value;
  const place = withNominal(distance, Number((distance.nominal + by).toFixed(2)));
  const text = from === null ? place : `${place} from ${from}`;
  return {
    title: `Move ${name} to ${text}: the gap is then ${millimetres(gap)} on average`,
    changes: setValue(analysis.spec, at.path, text),
    preferred: true,
  };
}
