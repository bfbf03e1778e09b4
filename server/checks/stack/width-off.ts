import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import type { Closed } from '../../analysis/close.ts';
import type { Loop, Wanted } from '../../assembly/loop.ts';
import { length, millimetres, share } from '../../engine/base/figures.ts';
import type { Check, Draft, Severity } from '../check.ts';
import { emptySeats } from '../empty-seats.ts';
import { lengthChanges, lengthFixes, sayBest } from '../length-fixes.ts';
import { loopData, relatedTerms, sayAgainst, sayWanted } from '../loop-talk.ts';
import { hasUnreadParts } from '../unread-parts.ts';

/** The clamped stack does not come to the width the frame or fork wants. */
export const widthOff: Check = {
  code: 'width-off',
  group: 'stack',
  severity: 'error',
  summary: 'The clamped stack does not come to the width wanted.',
  page: {
    why: 'The dropouts clamp the stack and nothing else. A stack that is too long will not go into the fork; one that is too short spreads or bends it when the axle is tightened, and the wheel sits off centre. Ring widths only ever fall short of their nominal, up to 0.12 mm each, so the mean of a stack is not the sum of its nominals.',
    bad: 'hub: Dunlin front\nposition: front\nwidth: 100 ±0.2\nstack:\n  - end-cap: left\n    length: 14.15 ±0.02\n  - bearing: left\n    code: 6803-2RS\n  - spacer: centre\n    length: 62.06 ±0.01\n  - bearing: right\n    code: 6803-2RS\n  - end-cap: right\n    length: 14.15 ±0.02\n',
    good: 'hub: Dunlin front\nposition: front\nwidth: 100 ±0.2\nstack:\n  - end-cap: left\n    length: 14.03 ±0.02\n  - bearing: left\n    code: 6803-2RS\n  - spacer: centre\n    length: 62.06 ±0.01\n  - bearing: right\n    code: 6803-2RS\n  - end-cap: right\n    length: 14.03 ±0.02\n',
    sources: ['ISO 492, deviation of ring width', 'common practice: statistics with ±3σ on the tolerance'],
  },
  *run(analysis) {
    const written = analysis.variants[0];
    const draft = written ? widthDraft(analysis, written) : null;
    if (!draft) return;
    yield { ...draft, variant: null };
    // Variants that share the fault are named in the same finding.
    for (const variant of analysis.variants.slice(1)) {
      const same = widthDraft(analysis, variant);
      if (same) yield { ...same, path: draft.path, variant: variant.name };
    }
  },
};

/** The finding about the width of one variant, as built before as drawn; null where the width is right. */
export function widthDraft(analysis: Analysis, variant: VariantAnalysis): Draft | null {
  const { width } = variant;
  const { wanted } = width.loop;
  // A stack that lacks a bearing is short for that reason, and it is said at the empty seat.
  if (!wanted || emptySeats(variant).length > 0 || hasUnreadParts(analysis)) return null;
  for (const how of ['built', 'drawn'] as const) {
    const closed = width[how];
    const severity = closed ? judge(closed, wanted, analysis) : null;
    if (closed && severity) return draftOf(analysis, variant, wanted, closed, severity, how);
  }
  return null;
}

/** Error: the mean is outside. Warning: too many builds are. */
function judge(closed: Closed, wanted: Wanted, analysis: Analysis): Severity | null {
  const { mean, shareOutside } = closed;
  const slack = 1e-6;
  if (mean < wanted.lo - slack || wanted.hi + slack < mean) return 'error';
  if (analysis.limits.value('share-outside') < (shareOutside ?? 0)) return 'warning';
  return null;
}

function draftOf(
  analysis: Analysis,
  variant: VariantAnalysis,
  wanted: Wanted,
  closed: Closed,
  severity: Severity,
  how: 'drawn' | 'built',
): Draft {
  const { loop } = variant.width;
  const middle = (wanted.lo + wanted.hi) / 2;
  const centred = Math.abs(closed.mean - middle) < 0.01;
  const changes = centred ? [] : lengthChanges(variant, loop, middle, how);
  const best = changes.find(({ harmful }) => !harmful);
  const measured = how === 'built' ? ', as measured' : '';
  const against =
    severity === 'error'
      ? sayAgainst(closed.mean, wanted)
      : `${share(closed.shareOutside ?? 0)} of builds fall outside`;
  const todo =
    sayBest(changes) ?? (centred ? advice(largestTerm(loop, closed)) : byHand(closed.mean - middle));
  return {
    path: best?.path ?? wanted.path,
    severity,
    message: `clamped width ${millimetres(closed.mean)} on average${measured}, wanted ${sayWanted(wanted)}: ${against}${todo ? ` — ${todo}` : ''}`,
    related: relatedTerms(loop, closed, how),
    data: { ...loopData(loop, closed), asMeasured: how === 'built' },
    fixes: lengthFixes(analysis, changes, `the width is then ${millimetres(middle)} on average`),
  };
}

/** Where no written length can make up for it without harm: what to do with the parts that are there. */
function byHand(over: number): string {
  if (0 < over) return `take ${length(over)} mm off the end caps, or off what lies outside the bearings`;
  return `add ${length(-over)} mm of shims outside the bearings`;
}

function advice(largest: string | undefined): string {
  return largest ? `tighten ${largest}, which varies most, or widen the limits` : '';
}

/** The term with the largest share of the variation. */
function largestTerm(loop: Loop, closed: Closed): string | undefined {
  const [largest] = [...closed.contributions].sort((a, b) => b.share - a.share);
  return largest && loop.terms[Number(largest.id)]?.address;
}
