import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import { force, plain } from '../../engine/base/figures.ts';
import type { Check, Draft } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
import { angularPageHub } from './angular-page-hub.ts';
import { isDeepGroove, locatedPairs } from './located-pair.ts';
import { placeOfPlay } from './place-of-play.ts';
import { doubtedLengths, playChanges, playFixes, sayPlayChange } from './play-fixes.ts';
import { between, isDented, playData, relatedPlay, sayLoad, staticShare } from './play-talk.ts';

/** An angular-contact pair is pressed together harder than it should be. */
export const preloadHigh: Check = {
  code: 'preload-high',
  group: 'play',
  severity: 'warning',
  summary: 'An angular-contact pair is pressed together harder than a light preload.',
  page: {
    why: 'Angular-contact bearings may carry a light preload, which takes their play and makes them stiff. A spacer a few hundredths off turns that into kilonewtons: the wheel turns hard, the grease is squeezed out and the grooves wear. The length to write leaves the pair just free, or hardly touching, once it is clamped.',
    bad: angularPageHub('49.99', '18.07', 'left'),
    good: angularPageHub('50.04', '18.07', 'left'),
    sources: [
      'common practice: light preload only for angular-contact bearings in hubs',
      'from memory: heavy preloads of makers’ sets come to some 5 % of the static rating',
    ],
  },
  run: (analysis) => eachVariant(analysis, (variant) => high(analysis, variant)),
};

function* high(analysis: Analysis, variant: VariantAnalysis): Iterable<Draft> {
  const most = analysis.limits.value('angular-preload');
  const mostStress = analysis.limits.value('contact-stress');
  const mostPlay = analysis.limits.value('play-clamped');
  for (const located of locatedPairs(analysis, variant)) {
    const { clamp, pair } = located;
    // One that dents its grooves is said to be short; what was set by hand is judged as such.
    if (!clamp || pair.setting || isDeepGroove(located) || isDented(located, mostStress)) continue;
    const load = staticShare(pair);
    if (pair.result.ballLoad <= 0 || load <= most) continue;
    const changes = playChanges(analysis, located);
    const [best] = changes;
    yield {
      path: placeOfPlay(located, best),
      message: `${between(located)} are pressed ${pair.result.loadedBy === 'short' ? 'together' : 'apart'} with ${sayLoad(located, mostStress)} once clamped with ${force(clamp.force)}, wanted ${plain(most * 100)} % of it at most — ${best ? sayPlayChange(best) : 'another length between them'}`,
      related: relatedPlay(located),
      data: { ...playData(located, mostPlay), limit: most },
      doubts: doubtedLengths(located, best),
      fixes: playFixes(analysis, located, changes),
    };
  }
}
