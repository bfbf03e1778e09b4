import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import { length, share } from '../../engine/base/figures.ts';
import type { Check, Draft } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
import { loopData, relatedTerms, sayWanted } from '../loop-talk.ts';
import { pageHub } from '../page-hub.ts';
import { widthDraft } from './width-off.ts';

/** The width is right but for the corner where every tolerance falls the same way. */
export const widthCorner: Check = {
  code: 'width-corner',
  group: 'stack',
  severity: 'information',
  summary: 'Only the worst corner of all tolerances puts the clamped width outside its limits.',
  page: {
    why: 'When every part comes out at the same end of its tolerance the stack misses its limits. That is rare, and the share of builds is within the yield wanted, so there is nothing to mend; it matters where each single build must fit without trying.',
    bad: pageHub(['width: 100 ±0.2', 'width: 100 ±0.12']),
    good: pageHub(),
    sources: ['ISO 492, deviation of ring width', 'common practice: worst case beside root-sum-square'],
  },
  run: (analysis) => eachVariant(analysis, (variant) => corner(analysis, variant)),
};

const slack = 1e-6;

const sayShare = (outside: number): string =>
  outside === 0 ? 'no build in 20 000 is' : `${share(outside)} of builds are`;

function* corner(analysis: Analysis, variant: VariantAnalysis): Iterable<Draft> {
  const { loop, drawn, built } = variant.width;
  const closed = built ?? drawn;
  const { wanted } = loop;
  // The corner of a limit that nobody wrote is no news.
  if (!closed || !wanted || wanted.assumed !== null || widthDraft(analysis, variant)) return;
  if (closed.mean < wanted.lo || wanted.hi < closed.mean) return;
  const [lo, hi] = closed.worst;
  if (wanted.lo - slack <= lo && hi <= wanted.hi + slack) return;
  yield {
    path: wanted.path,
    message: `clamped width can come to ${length(lo)} or ${length(hi)} mm when every part falls the same way, wanted ${sayWanted(wanted)}: ${sayShare(closed.shareOutside ?? 0)} expected outside — nothing to change unless every build must fit`,
    related: relatedTerms(loop, closed, built ? 'built' : 'drawn'),
    data: loopData(loop, closed),
  };
}
