import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import type { LoopAnalysis } from '../../analysis/close.ts';
import { isWorked, type PairMechanics } from '../../analysis/mechanics/pair-mechanics.ts';
import { varyingPair } from '../../analysis/mechanics/pair-statistics.ts';
import { spacerOf } from '../../analysis/mechanics/spacer-of.ts';
import type { PairLoop } from '../../assembly/loop.ts';
import { millimetres, share, signed } from '../../engine/base/figures.ts';
import { buildPairs } from '../../engine/play/play-statistics.ts';
import type { Fix } from '../../spec/problem.ts';
import type { Check, Draft } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
import { pageHub } from '../page-hub.ts';
import { rewriteFix } from '../rewrite.ts';

const adjusted = (length: string): string =>
  `${pageHub(
    [
      'spacer: centre\n    length: 62.06 ±0.01',
      `adjuster: ring\n    length: 6\n    travel: 1.5\n    thread: M20x1\n    set: 0.06\n    inside: 17.1\n    outside: 19.6\n  - spacer: centre\n    length: ${length} ±0.01`,
    ],
    ['  between', '  outside: 34\n  between'],
    ['100 ±0.2', '100 ±2'],
  )}clamp: 5 kN\n`;

/** An adjuster that cannot be moved as far as some builds need. */
export const adjusterShort: Check = {
  code: 'adjuster-short',
  group: 'play',
  severity: 'warning',
  summary: 'The travel of an adjuster does not reach the place where its setting is.',
  page: {
    why: 'An adjuster between two bearings makes up for what the parts around it come to: the spacer, the distance of the shoulders, the clearance of the bearings. Where that needs more than half its travel from mid position, it comes to the end of its thread before the play is right.',
    bad: adjusted('55.1'),
    good: adjusted('56.06'),
    sources: [
      'closed chain of the inner and outer distances',
      'play of two equal bearings 2a − |δ|, with a from the radial clearance as mounted',
    ],
  },
  run: (analysis) => eachVariant(analysis, (variant) => short(analysis, variant)),
};

function* short(analysis: Analysis, variant: VariantAnalysis): Iterable<Draft> {
  const { pairs } = variant.mechanics('built');
  for (const [index, pair] of pairs.entries()) {
    const loop = variant.pairs[index];
    if (!isWorked(pair) || !loop || pair.setting?.where !== 'between') continue;
    const draft = reach(analysis, variant, pair, loop);
    if (draft) yield draft;
  }
}

function reach(
  analysis: Analysis,
  variant: VariantAnalysis,
  pair: PairMechanics,
  loop: LoopAnalysis<PairLoop>,
): Draft | null {
  const { setting } = pair;
  const part = variant.assembly.line.find(({ address }) => address === setting?.address)?.part;
  const travel = part?.values.travel;
  const closed = loop.built ?? loop.drawn;
  if (setting?.kind !== 'adjuster' || !part || !travel || !closed) return null;
  const places = placesOf(pair, closed.mean, loop.built ? 'built' : 'drawn');
  const half = travel.value.nominal / 2;
  const outOf = (shift: number, most: number): number =>
    places.filter((place) => most < Math.abs(place + shift)).length / places.length;
  const outside = outOf(0, half);
  const allowed = analysis.limits.value('share-outside');
  if (outside <= allowed) return null;
  const mean = places.reduce((sum, place) => sum + place, 0) / places.length;
  const moved = Math.abs(mean) <= half;
  const spacer = spacerOf(variant, { ...pair, setting: null });
  const other = variant.assembly.line.find(({ address }) => address === spacer?.address)?.part;
  const written = other?.values.length ?? part.values.length;
  const name = other?.address ?? part.address;
  const fixes: Fix[] = [];
  let todo = 'give it more travel';
  if (written && !written.value.measured && outOf(-mean, half) <= allowed) {
    const to = Math.round((written.value.nominal + mean) * 100) / 100;
    todo = `${mean < 0 ? 'shorten' : 'lengthen'} ${name} by ${millimetres(Math.abs(to - written.value.nominal))} to ${millimetres(to)}`;
    fixes.push(
      rewriteFix(analysis, written, to, { name, result: `${part.address} is then set near mid position` }),
    );
  } else {
    const sorted = places.map(Math.abs).toSorted((a, b) => a - b);
    const most = sorted[Math.ceil((1 - allowed) * sorted.length)] ?? half;
    const to = Math.ceil(most * 20 + 1) / 10;
    fixes.push(
      rewriteFix(analysis, travel, to, {
        name: `travel of ${part.address}`,
        result: 'it then reaches its setting',
      }),
    );
  }
  return {
    path: travel.path,
    severity: moved ? 'warning' : 'error',
    message: `${part.address} has to stand ${signed(mean, 2)} mm from mid position on average and has ±${millimetres(half)}; builds that do not reach their setting: ${share(outside)}, wanted ${share(allowed)} at most — ${todo}`,
    related: written ? [{ path: written.path, message: `length of ${name}` }] : [],
    data: { mean, travel: travel.value.nominal, shareOutside: outside },
    fixes,
  };
}

/** How far the adjuster stands from mid position in every build, mm, longer positive. */
function placesOf(pair: PairMechanics, mid: number, how: 'drawn' | 'built'): readonly number[] {
  const { setting, input } = pair;
  if (!setting) return [];
  const { mismatch, travel } = buildPairs(varyingPair({ ...pair, setting: null }, how));
  const usual = travel.reduce((sum, one) => sum + one, 0) / travel.length;
  const sign = setting.way === 'inward' ? -1 : 1;
  return Array.from(mismatch, (delta, i) => {
    const wanted = setting.mismatch + sign * ((travel[i] ?? usual) - usual);
    return wanted - (delta - input.mismatch + mid);
  });
}
