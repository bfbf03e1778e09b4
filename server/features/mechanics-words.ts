import { anglesInBrief } from '../analysis/mechanics/angular-contact.ts';
import type { Clamp } from '../analysis/mechanics/clamp-of.ts';
import type { LineMechanics } from '../analysis/mechanics/line-mechanics.ts';
import type { MountedBearing, RingFit } from '../analysis/mechanics/mounted-bearing.ts';
import { isClosed, type PairMechanics } from '../analysis/mechanics/pair-mechanics.ts';
import { settingInBrief } from '../analysis/mechanics/setting-in-brief.ts';
import { force, micrometres, stress } from '../engine/base/figures.ts';
import type { Spread } from '../engine/seats/interference-spread.ts';

/** Radial clearance of a bearing in its seat and on its axle: `4 µm on average, −15 to 18 µm`; null where it is not known. */
export function mountedWords({ mounted, contactAngle }: MountedBearing): string | null {
  if (contactAngle) return anglesInBrief(contactAngle);
  return mounted && spreadWords(mounted);
}

/** What was there before the fits, and what each of them takes. */
export function lossWords({ free, outerFit, innerFit, contactAngle }: MountedBearing): string | null {
  if (!free) return null;
  const before = contactAngle
    ? 'the fits take of the angle as they take of a clearance'
    : `${micrometres(free.lo).replace(' µm', '')} to ${micrometres(free.hi)} before mounting`;
  const taken = [
    outerFit
      ? `the outer ring in its seat takes ${micrometres(outerFit.fit.clearanceLoss)}`
      : 'the seat counts as free: its bore or its wall is not written',
    innerFit
      ? `the inner ring on its axle ${micrometres(innerFit.fit.clearanceLoss)}`
      : 'the axle counts as free: its diameter is not written',
  ];
  return `${before}; ${taken.join(', ')}`;
}

/** What a fit comes to once its surfaces are smoothed: interference, pressure, what it takes of the clearance. */
export function ringFitWords({ interference, fit }: RingFit, ring: string): string {
  const works = `after smoothing ${spreadWords(interference)} of interference with the ${ring}`;
  if (fit.pressure <= 0) return `${works}: it does not grip on average`;
  return `${works}; ${stress(fit.pressure)} in the seat, ${micrometres(fit.clearanceLoss)} less clearance`;
}

/** Play of a pair on the bench and in the fork, with what the bearings carry once there is none left. */
export function playWords(pair: PairMechanics, clamp: Clamp | null): string {
  const { playClamped, ballLoad, loadedBy, slid, spacerReached, left, right } = pair.result;
  if (pair.setting) {
    const set = settingInBrief(pair.setting);
    if (pair.setting.kind === 'spring')
      return isClosed(pair) ? `${set}: no play` : `${set}: nothing closes the pair`;
    return `${set}: ${playWords({ ...pair, setting: null }, clamp)}`;
  }
  const before = benchWords(pair);
  if (!clamp) return `${before}; play once clamped needs the clamp`;
  const with_ = `clamped with ${force(clamp.force)}`;
  const pushed = slid === 'no' ? '' : ', the outer rings pushed along their seats';
  if (ballLoad <= 0 && pushed !== '') return `${before}; ${with_} no play${pushed}`;
  if (!isClosed(pair)) return before;
  if (ballLoad <= 0) return `${before}; ${with_} ${micrometres(playClamped)} of play`;
  const how = loadedBy === 'short' ? 'inner rings pressed together' : 'inner rings pressed apart';
  const unreached = spacerReached ? '' : ', the rings do not reach the spacer';
  const most = Math.max(left.contactStress, right.contactStress);
  return `${before}; ${with_} no play: ${force(ballLoad)} through each bearing, ${how}, contact stress ${stress(most)}${pushed}${unreached}`;
}

function benchWords({ result: { playUnclamped } }: PairMechanics): string {
  if (!Number.isFinite(playUnclamped)) return 'on the bench nothing closes the pair';
  if (playUnclamped < 0) return `on the bench no play, ${micrometres(-playUnclamped)} too tight`;
  return `on the bench ${micrometres(playUnclamped)} of play`;
}

/** More than two bearings of one housing together. */
export function lineWords(line: LineMechanics, clamp: Clamp | null): string {
  const { bearings, playUnclamped, playClampedSigned } = line;
  const what = `all ${bearings.length} bearings of the ${line.housing} together`;
  const before = Number.isFinite(playUnclamped) ? sayPlay(playUnclamped) : 'nothing closes them';
  if (!clamp) return `${what}: on the bench ${before}`;
  const loads = bearings
    .filter(({ force: load, slid }) => load !== 0 || slid)
    .map(
      ({ address, force: load, slid }) =>
        `${force(Math.abs(load))} on ${address}${slid ? ', its outer ring pushed along' : ''}`,
    );
  const after = 0 < loads.length ? `no play: ${loads.join(', ')}` : sayPlay(playClampedSigned);
  return `${what}: on the bench ${before}; clamped ${after}`;
}

function sayPlay(play: number): string {
  return play < 0 ? `no play, ${micrometres(-play)} too tight` : `${micrometres(play)} of play`;
}

/** How much the clamp shortens what stands between the inner rings of a pair. */
export function shorteningWords({ loop, result }: PairMechanics): string {
  return `shortens the stack from ${loop.bearings.join(' to ')} by ${micrometres(result.clampShortening)}`;
}

/** `4 µm on average, −15 to 18 µm` */
function spreadWords({ least, mean, most }: Spread): string {
  return `${micrometres(mean)} on average, ${micrometres(least).replace(' µm', '')} to ${micrometres(most)}`;
}
