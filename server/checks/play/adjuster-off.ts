import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import type { Clamp } from '../../analysis/mechanics/clamp-of.ts';
import { isClosed, isWorked, type PairMechanics } from '../../analysis/mechanics/pair-mechanics.ts';
import { force, micrometres, plain, stress } from '../../engine/base/figures.ts';
import type { Dimension } from '../../spec/model.ts';
import type { Placed } from '../../spec/place.ts';
import type { Check, Draft } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
import { pageHub } from '../page-hub.ts';
import { rewriteFix } from '../rewrite.ts';
import { leastTravel } from './located-pair.ts';

/** The sound hub with an adjuster beside its spacer, set to a play in mm. */
const adjusted = (set: string): string =>
  `${pageHub(
    [
      'spacer: centre\n    length: 62.06 ±0.01',
      `adjuster: ring\n    length: 6\n    travel: 1.5\n    thread: M20x1\n    set: ${set}\n    inside: 17.1\n    outside: 19.6\n  - spacer: centre\n    length: 56.06 ±0.01`,
    ],
    ['  between', '  outside: 34\n  between'],
  )}clamp: 5 kN\n`;

/** What an adjuster is set to on the bench is not what the fork needs. */
export const adjusterOff: Check = {
  code: 'adjuster-off',
  group: 'play',
  severity: 'warning',
  summary: 'The play an adjuster is set to on the bench is gone, or too much, once the hub is clamped.',
  page: {
    why: 'An adjuster is set with the hub on the bench, and the clamp then shortens what stands between the inner rings. The play to leave on the bench is what is wanted in the fork and what the clamp takes on top. A torque presses the balls at once; too much of it dents their grooves before the wheel has turned.',
    bad: adjusted('0.01'),
    good: adjusted('0.07'),
    sources: [
      'shortening of a tube F·L/(E·A)',
      'ISO 76, 4200 MPa dents a groove by a ten-thousandth of the ball',
      'common practice: 0.05 mm of axial play once clamped',
    ],
  },
  run: (analysis) => eachVariant(analysis, (variant) => off(analysis, variant)),
};

function* off(analysis: Analysis, variant: VariantAnalysis): Iterable<Draft> {
  const { pairs, clamp } = variant.mechanics('built');
  for (const pair of pairs) {
    if (!isWorked(pair) || pair.setting?.kind !== 'adjuster' || !isClosed(pair)) continue;
    const part = variant.assembly.line.find(({ address }) => address === pair.setting?.address)?.part;
    const set = part?.values.set;
    if (!set) continue;
    const draft = isPlay(set) ? clamp && playOff(analysis, pair, clamp, set) : pressedHard(analysis, pair);
    if (draft) yield draft;
  }
}

const isPlay = (set: Placed<unknown>): set is Placed<Dimension> =>
  typeof set.value === 'object' && set.value !== null && 'nominal' in set.value;

function playOff(
  analysis: Analysis,
  { result, setting, input, assumed }: PairMechanics,
  clamp: Clamp,
  set: Placed<Dimension>,
): Draft | null {
  const most = analysis.limits.value('play-clamped');
  const play = result.playClampedSigned;
  const deep = input.left.carries === 'both' && input.right.carries === 'both';
  // Angular-contact bearings are meant to be loaded once clamped.
  const isTight = deep && play < -leastTravel;
  if (!setting || (!isTight && play < most + leastTravel / 2)) return null;
  const to = Math.max(0, Math.round((set.value.nominal - play + most / 2) * 1000) / 1000);
  const left = isTight
    ? `none clamped with ${force(clamp.force)}: the balls carry ${force(result.ballLoad)}`
    : `${micrometres(play)} clamped with ${force(clamp.force)}`;
  return {
    path: set.path,
    message: `${setting.address} set to ${micrometres(set.value.nominal)} of play leaves ${left}, wanted 0 to ${micrometres(most)} — set it to ${plain(to)} mm`,
    related: [
      {
        path: clamp.path,
        message: `the clamp takes ${micrometres(clamp.force * input.spacerCompliance)}${assumed.length > 0 ? `; ${assumed.join('; ')}` : ''}`,
      },
    ],
    data: { set: set.value.nominal, playClamped: play, ballLoad: result.ballLoad, to, limits: [0, most] },
    fixes: [
      rewriteFix(analysis, set, to, {
        name: `set of ${setting.address}`,
        result: `${micrometres(most / 2)} of play once clamped`,
      }),
    ],
  };
}

function pressedHard(analysis: Analysis, { result, setting, assumed }: PairMechanics): Draft | null {
  const most = analysis.limits.value('contact-stress');
  const found = Math.max(result.left.contactStress, result.right.contactStress);
  if (!setting || found <= most) return null;
  return {
    path: setting.path,
    severity: 'error',
    message: `${setting.address} presses the balls with ${force(result.ballLoad)}: ${stress(found)} between ball and groove, wanted ${stress(most)} at most, which dents the grooves for good — set it with less torque`,
    related: assumed.length > 0 ? [{ path: setting.path, message: assumed.join('; ') }] : [],
    data: { preload: setting.preload, ballLoad: result.ballLoad, contactStress: found, limit: most },
    fixes: [],
  };
}
