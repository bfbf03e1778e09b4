import type { Analysis } from '../../analysis/analyze.ts';
import { clearanceOf } from '../../analysis/mechanics/pair-statistics.ts';
import { force, plain, share } from '../../engine/base/figures.ts';
import type { Check, Draft, Related } from '../check.ts';
import { placeOfClearance } from '../clearance/clearance-talk.ts';
import { capital } from '../length-fixes.ts';
import { pageHub } from '../page-hub.ts';
import { betterLengths } from './better-length.ts';
import type { BetterLength } from './compare-lengths.ts';
import type { LocatedPair } from './located-pair.ts';
import { playEdit, sayPlayChange } from './play-fixes.ts';
import { between, playData, relatedPlay } from './play-talk.ts';

/** Another length of the spacer would put clearly more builds right. */
export const playShare: Check = {
  code: 'play-share',
  group: 'play',
  severity: 'information',
  summary: 'Another length of the spacer would give clearly more builds the play wanted.',
  page: {
    why: 'The spacer of one hub meets the shoulders and the bearings of that hub only: every length, every seat and the clearance of every bearing strays from build to build. A length that is right on average may still leave many hubs tight and none too loose, or the other way about. A hundredth of a millimetre moves them all, and costs nothing while the part is on paper.',
    bad: `${pageHub(['62.06 ±0.01', '62.05 ±0.01'], ['outside: 19.6', 'outside: 19.6\n    material: steel'])}clamp: 5 kN\n`,
    good: `${pageHub(['62.06 ±0.01', '62.03 ±0.01'], ['outside: 19.6', 'outside: 19.6\n    material: steel'])}clamp: 5 kN\n`,
    sources: [
      'play of two equal bearings 2a − |δ|, each number straying by a sixth of its tolerance',
      'ISO 5753, radial internal clearance; ISO 492, ring limits',
      'common practice: another length is proposed where it puts 5 % more of the builds right',
    ],
  },
  run: (analysis) => betterLengths(analysis).flatMap((better) => drafts(analysis, better)),
};

/** One draft for each variant that shares the length; the variant where the fewest come right speaks. */
function drafts(
  analysis: Analysis,
  { uses, to, now, better, contributions }: BetterLength,
): readonly Draft[] {
  const [{ located, item, written }] = uses;
  const most = analysis.limits.value('play-clamped');
  const change = { item, written, from: written.value.nominal, to };
  const { said, changes, sound } = playEdit(analysis, located, change);
  const clamped = located.clamp ? ` clamped with ${force(located.clamp.force)}` : '';
  const gained = share(better.yield - now.yield);
  const tight = `${share(now.loaded)} loaded, ${share(now.playHigh)} with more`;
  const related = [...relatedPlay(located), ...straysMost(located, contributions)];
  const draft: Draft = {
    path: written.path,
    message: `${share(now.yield)} of builds have 0 to ${plain(most)} mm of play${clamped} between ${between(located)}, ${share(better.yield)} at the best length: ${gained} more (${tight}) — ${sayPlayChange(change)}`,
    related,
    data: { ...playData(located, most), yield: now.yield, yieldThen: better.yield, to },
    fixes: [
      {
        title: `${capital(sayPlayChange(change))}${said}: ${share(better.yield)} of builds come right, now ${share(now.yield)}`,
        changes,
        preferred: sound,
      },
    ],
  };
  return uses.map(({ located: { variant } }) => ({ ...draft, variant: variant.name }));
}

/** How much of the straying the clearance of each bearing brings, where its fit is written. */
function straysMost(
  { variant, pair }: LocatedPair,
  contributions: BetterLength['contributions'],
): readonly Related[] {
  return [pair.left, pair.right].map((bearing) => {
    const { address } = bearing;
    const own = contributions.find(({ id }) => id === clearanceOf(address))?.share ?? 0;
    const seat = bearing.stack.part.values.seat?.value;
    const bore = contributions.find(({ id }) => id === `bore of ${seat}`)?.share ?? 0;
    const fit = bore > 0 ? `, the bore of ${seat} ${share(bore)}` : '';
    return {
      path: placeOfClearance(variant, bearing),
      message: `of the straying of the play the clearance of ${address} brings ${share(own)}${fit}`,
    };
  });
}
