import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import { millimetres } from '../../engine/base/figures.ts';
import type { Check, Draft } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
import { gapTarget } from '../gap-target.ts';
import { lengthChanges, lengthFixes, sayBest } from '../length-fixes.ts';
import { loopData, relatedTerms, sayWanted } from '../loop-talk.ts';
import { freehubPage } from './freehub-page.ts';
import { mendedByWidth } from './mended-by-width.ts';

/** Freehub and shell touch. */
export const freehubRubs: Check = {
  code: 'freehub-rubs',
  group: 'freehub',
  severity: 'error',
  summary: 'The freehub touches the shell.',
  page: {
    why: 'Coasting, the freehub stands still while the shell turns. Where their faces touch, the freehub is dragged along and throws the chain off, and swarf gets into the pawls.',
    bad: freehubPage('gap: 0.3', '0.1'),
    good: freehubPage('gap: 0.3', '1.1'),
    sources: ['common practice'],
  },
  run: (analysis) => eachVariant(analysis, (variant) => rubbing(analysis, variant)),
};

function* rubbing(analysis: Analysis, variant: VariantAnalysis): Iterable<Draft> {
  for (const gap of variant.gaps) {
    const how = gap.built ? 'built' : 'drawn';
    const result = gap[how];
    const { wanted } = gap.loop;
    if (gap.loop.role !== 'running' || !wanted || !result || 0 < result.mean) continue;
    if (mendedByWidth(analysis, variant, gap.loop, how)) continue;
    const target = gapTarget(wanted, result);
    const changes = lengthChanges(variant, gap.loop, target, how);
    const [best] = changes;
    const todo = sayBest(changes);
    const last = gap.loop.terms.find(({ key }) => key === 'length') ?? gap.loop.terms[0];
    yield {
      path: best?.path ?? last?.path ?? wanted.path,
      message: `gap between shell and freehub ${millimetres(result.mean)} on average, wanted ${sayWanted(wanted)}: they touch${todo === null ? '' : ` — ${todo}`}`,
      related: relatedTerms(gap.loop, result, how),
      data: loopData(gap.loop, result),
      fixes: lengthFixes(
        analysis,
        changes,
        `the gap is then ${millimetres(target)} on average; the width changes with it`,
      ),
    };
  }
}
