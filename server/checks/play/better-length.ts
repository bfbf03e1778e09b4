import type { Analysis } from '../../analysis/analyze.ts';
import { varyingPair } from '../../analysis/mechanics/pair-statistics.ts';
import { withNewSpacer } from '../../analysis/mechanics/spacer-answer.ts';
import { spacerOf } from '../../analysis/mechanics/spacer-of.ts';
import type { LoopTerm } from '../../assembly/loop.ts';
import type { WantedShare } from '../../engine/play/best-yield.ts';
import { PLAN } from '../../engine/play/play-statistics.ts';
import { type BetterLength, compareLengths, type SpacerUse } from './compare-lengths.ts';
import { isDeepGroove, type LocatedPair, leastTravel, locatedPairs } from './located-pair.ts';
import { tightLines } from './tight-lines.ts';

/** Enough to see whether a closer look is worth while; the first of the builds that a closer look draws. */
const QUICK = { ...PLAN, builds: 2000 };

/**
 * Lengths that would put clearly more builds right. Silent where the mean itself is wrong, of a pair or of the line it
 * stands in: that is said elsewhere.
 */
export function betterLengths(analysis: Analysis): readonly BetterLength[] {
  const wanted = mostRight(analysis);
  const gain = analysis.limits.value('yield-gain');
  const tight = new Set(analysis.variants.flatMap(tightLines).flatMap(({ pairs }) => pairs));
  return spacerUses(analysis).flatMap((uses) => {
    if (uses.some(({ located }) => tight.has(located.pair))) return [];
    // A quick look may be a hundredth or two off.
    const quick = compareLengths(uses, wanted, QUICK);
    if (quick.better.yield - quick.now.yield < gain - 0.015) return [];
    const found = compareLengths(uses, wanted, PLAN);
    return found.to <= 0 || found.better.yield - found.now.yield < gain ? [] : [found];
  });
}

/** What a length is chosen for in a finding: as many builds right as any hundredth of a millimetre gives. */
export function mostRight({ limits }: Analysis): WantedShare {
  return { mostPlay: limits.value('play-clamped'), share: 1 };
}

/** The spacers of all variants, those that are one written length together. */
export function spacerUses(analysis: Analysis): readonly (readonly [SpacerUse, ...SpacerUse[]])[] {
  const most = analysis.limits.value('play-clamped');
  const shared = new Map<string, [SpacerUse, ...SpacerUse[]]>();
  const spoiled = new Set<string>();
  for (const variant of analysis.variants) {
    const judged = locatedPairs(analysis, variant);
    for (const pair of variant.mechanics('built').pairs) {
      if (!('result' in pair)) continue;
      const item = spacerOf(variant, pair);
      if (!item) continue;
      const key = JSON.stringify(item.path);
      const located = judged.find((one) => one.pair === pair);
      const use = located && useOf(located, item);
      const play = pair.result.playClampedSigned;
      if (!use || play < -leastTravel || most + leastTravel / 2 <= play) spoiled.add(key);
      else {
        const known = shared.get(key);
        if (known) known.push(use);
        else shared.set(key, [use]);
      }
    }
  }
  return [...shared].filter(([key]) => !spoiled.has(key)).map(([, uses]) => uses);
}

/** Null where no length is a question: nothing clamps, angular bearings, a spacer that only locates, a part that exists. */
function useOf(located: LocatedPair, item: LoopTerm): SpacerUse | null {
  const { variant, pair, loop, how, clamp } = located;
  const written = variant.assembly.line.find(({ address }) => address === item.address)?.part.values.length;
  if (!clamp || !isDeepGroove(located) || loop.located === 'spacer') return null;
  if (!written || written.value.measured) return null;
  return { located, item, written, varying: varyingPair(withNewSpacer(pair, item, how), how) };
}
