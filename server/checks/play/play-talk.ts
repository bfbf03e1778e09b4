import { anglesInBrief } from '../../analysis/mechanics/angular-contact.ts';
import { length, micrometres, force as newtons, share } from '../../engine/base/figures.ts';
import { staticEquivalentLoad } from '../../engine/life/equivalent-load.ts';
import { staticRating } from '../../engine/life/rating.ts';
import type { LoadedBearing } from '../../engine/play/clamped-pair.ts';
import type { Related } from '../check.ts';
import { relatedTerms, round } from '../loop-talk.ts';
import type { LocatedPair } from './located-pair.ts';

/** `bearing.left and bearing.right` */
export const between = ({ loop }: LocatedPair): string => loop.bearings.join(' and ');

/** The spacer between them, or what the parts between them are called together. */
export function middleOf({ loop }: LocatedPair): string {
  const lengths = loop.inner.filter(({ key }) => key === 'length');
  return lengths.length === 1 && lengths[0] ? lengths[0].address : 'the line between them';
}

/** `17.5 N (892 MPa between ball and groove)`; beyond the limit the dents are said. */
export function sayLoad({ pair }: LocatedPair, mostStress: number): string {
  const { ballLoad, left, right } = pair.result;
  const stress = Math.max(left.contactStress, right.contactStress);
  const contact = `${Math.round(stress)} MPa between ball and groove, ${share(staticShare(pair))} of the static rating`;
  const dents = mostStress < stress ? ', which dents it for good; the force is no longer valid' : '';
  return `${newtons(ballLoad)} (${contact}${dents})`;
}

/** Static load of the pair's axial force alone over the static rating of the weaker bearing. */
export function staticShare({ result, left, right }: LocatedPair['pair']): number {
  const load = staticEquivalentLoad({ radial: 0, axial: result.ballLoad });
  return load / Math.min(staticRating(left.geometry).value, staticRating(right.geometry).value);
}

/** Whether the balls press permanent dents into their grooves. */
export function isDented({ pair }: LocatedPair, mostStress: number): boolean {
  const dents = ({ contactStress }: LoadedBearing): boolean => mostStress < contactStress;
  return dents(pair.result.left) || dents(pair.result.right);
}

/** Every length of the chain, the clearance of both bearings and the clamp, with what was taken for granted. */
export function relatedPlay(located: LocatedPair): readonly Related[] {
  const { loop, closed, how, pair, clamp } = located;
  const sides = [pair.left, pair.right].map((side): Related => {
    const lost = side.free ? (side.free.lo + side.free.hi) / 2 - (side.mounted?.mean ?? 0) : 0;
    const fits = 0.0005 < lost ? `, the fits take ${micrometres(lost)}` : '';
    const taken = side.assumed.length > 0 ? `; ${side.assumed.join('; ')}` : '';
    const { contactAngle } = side;
    if (contactAngle) {
      return { path: side.stack.from, message: `${side.address}: ${anglesInBrief(contactAngle)}${taken}` };
    }
    return {
      path: side.stack.from,
      message: `${side.address}: ${micrometres(side.mounted?.mean ?? 0)} of radial clearance mounted${fits}, ${micrometres(side.axial ?? 0)} axial${taken}`,
    };
  });
  const own = new Set([...pair.left.assumed, ...pair.right.assumed]);
  const others = pair.assumed.filter((text) => !own.has(text));
  const said = others.length > 0 ? `; ${others.join('; ')}` : '';
  const squeeze: readonly Related[] = clamp
    ? [
        {
          path: clamp.path,
          message: `${newtons(clamp.force)} shortens the line between the inner rings by ${length(clamp.force * pair.input.spacerCompliance, 3)} mm${said}`,
        },
      ]
    : [];
  return [...relatedTerms(loop, closed, how), ...sides, ...squeeze];
}

/** The numbers of a pair for `data`: mm, N, MPa. */
export function playData({ pair, clamp, how }: LocatedPair, limit: number): Record<string, unknown> {
  const { result, input } = pair;
  return {
    mismatch: round(input.mismatch),
    playUnclamped: round(result.playUnclamped),
    playClamped: clamp ? round(result.playClamped) : null,
    playClampedSigned: clamp ? round(result.playClampedSigned) : null,
    playShoulders: Number.isFinite(result.playShoulders) ? round(result.playShoulders) : null,
    clampForce: clamp ? clamp.force : null,
    clampShortening: clamp ? round(result.clampShortening) : null,
    ballLoad: clamp ? round(result.ballLoad) : null,
    contactStress: clamp ? Math.max(result.left.contactStress, result.right.contactStress) : null,
    staticShare: clamp ? staticShare(pair) : null,
    limits: [0, limit],
    asMeasured: how === 'built',
    assumptions: pair.assumed,
  };
}
