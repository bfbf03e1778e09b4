import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import type { Closed, LoopAnalysis } from '../../analysis/close.ts';
import type { GapLoop } from '../../assembly/loop.ts';
import { millimetres, plain, share } from '../../engine/base/figures.ts';
import type { Check, Draft, Severity } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
import { gapTarget } from '../gap-target.ts';
import { lengthChanges, lengthFixes, sayBest } from '../length-fixes.ts';
import { loopData, relatedTerms, sayAgainst, sayWanted } from '../loop-talk.ts';
import { freehubPage } from './freehub-page.ts';
import { mendedByWidth } from './mended-by-width.ts';

/** The running gap between freehub and shell is not the one wanted. */
export const freehubGapOff: Check = {
  code: 'freehub-gap-off',
  group: 'freehub',
  severity: 'error',
  summary: 'The running gap between freehub and shell is off the one wanted.',
  page: {
    why: 'The seal between freehub and shell is made for one gap. Narrower, it drags or is crushed; wider, it does not seal and the pawls stand short in their ring.',
    bad: freehubPage('gap: 1.2 ±0.3'),
    good: freehubPage('gap: 0.6 ±0.3'),
    sources: ['common practice'],
  },
  run: (analysis) => eachVariant(analysis, (variant) => gapOff(analysis, variant)),
};

function* gapOff(analysis: Analysis, variant: VariantAnalysis): Iterable<Draft> {
  for (const gap of variant.gaps) {
    const how = gap.built ? 'built' : 'drawn';
    const result = gap[how];
    const { wanted } = gap.loop;
    if (gap.loop.role !== 'running' || !wanted || !result || result.mean <= 0) continue;
    const severity = judge(result, wanted, analysis);
    if (severity && !mendedByWidth(analysis, variant, gap.loop, how))
      yield draftOf(analysis, variant, gap, result, how, severity);
  }
}

function judge(result: Closed, wanted: NonNullable<GapLoop['wanted']>, analysis: Analysis): Severity | null {
  if (result.mean < wanted.lo - 1e-6 || wanted.hi + 1e-6 < result.mean)
    return wanted.assumed ? 'warning' : 'error';
  return analysis.limits.value('share-outside') < (result.shareOutside ?? 0) ? 'warning' : null;
}

function draftOf(
  analysis: Analysis,
  variant: VariantAnalysis,
  gap: LoopAnalysis<GapLoop>,
  result: Closed,
  how: 'drawn' | 'built',
  severity: Severity,
): Draft {
  const wanted = gap.loop.wanted as NonNullable<GapLoop['wanted']>;
  const target = gapTarget(wanted, result);
  const changes = lengthChanges(variant, gap.loop, target, how);
  const [best] = changes;
  const todo = sayBest(changes);
  const off =
    severity === 'error'
      ? sayAgainst(result.mean, wanted)
      : `${share(result.shareOutside ?? 0)} of builds fall outside`;
  return {
    path: best?.path ?? wanted.path,
    severity,
    message: `gap between shell and freehub ${millimetres(result.mean)} on average${how === 'built' ? ', as measured' : ''}, wanted ${sayWanted(wanted)}: ${off}${todo === null ? '' : ` — ${todo}`}`,
    related: relatedTerms(gap.loop, result, how),
    data: loopData(gap.loop, result),
    fixes: lengthFixes(
      analysis,
      changes,
      `the gap is then ${plain(Number(target.toFixed(2)))} mm on average; the width changes with it`,
    ),
  };
}
