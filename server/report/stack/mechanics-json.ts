import { turningTorque } from '../../analysis/life/turning-torque.ts';
import { type BuildsInBrief, buildsInBrief } from '../../analysis/mechanics/builds-in-brief.ts';
import type { Mechanics } from '../../analysis/mechanics/mechanics-of.ts';
import type { PairMechanics, PairUnchecked } from '../../analysis/mechanics/pair-mechanics.ts';
import { isClosed, isCounted } from '../../analysis/mechanics/pair-mechanics.ts';
import { type Ends, type PairRange, pairRange } from '../../analysis/mechanics/pair-range.ts';
import type { PairLoop } from '../../assembly/loop.ts';
import type { Spread } from '../../engine/seats/interference-spread.ts';

/** Play and load of one pair: mm, N, MPa, µm; null where it could not be worked out. */
export function pairMechanicsJson(
  mechanics: Mechanics,
  index: number,
  how: 'drawn' | 'built',
  mostPlay: number,
) {
  const pair = mechanics.pairs[index];
  const worked = pair && isWorked(pair) ? pair : null;
  const result = worked?.result;
  const clamped = mechanics.clamp || worked?.setting?.kind === 'spring' ? result : undefined;
  const builds = worked && clamped && isCounted(worked) ? buildsInBrief(worked, how, mostPlay) : null;
  const torque = worked && clamped ? turningTorque(worked) : null;
  return {
    axialClearanceUm: worked?.axial == null ? null : worked.axial * 1000,
    playUnclamped: finite(result?.playUnclamped),
    playShoulders: finite(result?.playShoulders),
    playClamped: worked && isClosed(worked) ? finite(clamped?.playClamped) : null,
    clampShortening: finite(clamped?.clampShortening),
    ballLoad: finite(clamped?.ballLoad),
    spacerLoad: finite(clamped?.spacerLoad),
    staticShare: torque?.staticShare ?? null,
    turningTorque: torque && { load: torque.load, seals: torque.seals },
    contactStress: clamped ? Math.max(clamped.left.contactStress, clamped.right.contactStress) : null,
    ...buildsJson(builds),
    ...settingJson(worked?.setting ?? null),
    ...rangeOfPairJson(worked && pairRange(worked), clamped !== undefined),
    assumptions: worked?.assumed ?? [],
    ...(pair && !isWorked(pair) ? { missing: pair.missing } : {}),
  };
}

/**
 * From least to most with any balls and grooves the estimate allows: mm, N, MPa; no key where they are known, null
 * where it takes a clamp that nobody wrote.
 */
export function rangeOfPairJson(range: PairRange | null, isClamped: boolean) {
  if (!range) return {};
  const ends = ({ lo, hi }: Ends): readonly [number, number] => [lo, hi];
  const whenClamped = (clamped: Ends) => (isClamped ? ends(clamped) : null);
  return {
    range: {
      playUnclamped: ends(range.playUnclamped),
      playClamped: whenClamped(range.playClamped),
      ballLoad: whenClamped(range.ballLoad),
      contactStress: whenClamped(range.contactStress),
    },
  };
}

/** What sets a pair in place of a fixed length: mm, N, N/mm; no key where nothing does. */
export function settingJson(setting: PairMechanics['setting']) {
  if (!setting) return {};
  const { kind, address, play, preload, rate, way } = setting;
  const rings: 'together' | 'apart' = way === 'inward' ? 'together' : 'apart';
  return { setBy: { kind, address, play, preload, rate, rings } };
}

/** What becomes of many builds, shares from 0 to 1; null without a clamp. */
export function buildsJson(builds: BuildsInBrief | null) {
  return {
    yield: builds?.yield ?? null,
    shareLoaded: builds?.loaded ?? null,
    sharePlayHigh: builds?.playHigh ?? null,
    shareLoose: builds?.loose ?? null,
    oneBatch: builds && {
      yield: builds.alike.yield,
      shareLoaded: builds.alike.loaded,
      sharePlayHigh: builds.alike.playHigh,
    },
    playContributions: builds?.contributions ?? [],
  };
}

/** The two bearings of a pair with their fits and clearances. */
export function bearingsJson(loop: PairLoop, mechanics: Mechanics) {
  const pair = mechanics.pairs.find((item) => isWorked(item) && item.loop === loop);
  const result = pair && isWorked(pair) && mechanics.clamp ? pair.result : null;
  return loop.bearings.map((address, side) => {
    const bearing = mechanics.bearings.find((item) => item.address === address);
    const loaded = result ? (side === 0 ? result.left : result.right) : null;
    const seat = bearing?.outerFit ?? null;
    const ofLine = mechanics.lines.flatMap((line) => line.bearings).find((one) => one.address === address);
    return {
      address,
      interferenceUm: spreadUm(seat?.interference ?? null),
      pressure: seat?.fit.pressure ?? null,
      clearanceLossUm: bearing?.mounted ? lossUm(bearing.outerFit, bearing.innerFit) : null,
      mountedClearanceUm: bearing?.contactAngle ? null : spreadUm(bearing?.mounted ?? null),
      ...(bearing?.contactAngle ? { contactAngle: anglesJson(bearing.contactAngle) } : {}),
      axialClearanceUm: bearing?.axial === null || bearing === undefined ? null : bearing.axial * 1000,
      ballLoad: result ? (ofLine ? Math.abs(ofLine.force) : result.ballLoad) : null,
      contactStress: loaded ? loaded.contactStress : null,
    };
  });
}

type Fit = Mechanics['bearings'][number]['outerFit'];

/** Clearance that both fits take at their means, µm. */
function lossUm(outer: Fit, inner: Fit): number {
  return ((outer?.fit.clearanceLoss ?? 0) + (inner?.fit.clearanceLoss ?? 0)) * 1000;
}

function spreadUm(spread: Spread | null) {
  return spread ? { min: spread.least * 1000, mean: spread.mean * 1000, max: spread.most * 1000 } : null;
}

const finite = (value: number | undefined): number | null =>
  value !== undefined && Number.isFinite(value) ? value : null;

function isWorked(pair: PairMechanics | PairUnchecked): pair is PairMechanics {
  return 'result' in pair;
}

/** Contact angle as made and as mounted, degrees. */
export function anglesJson({ nominal, mounted }: { nominal: number; mounted: number }) {
  const degrees = (angle: number): number => (angle * 180) / Math.PI;
  return { nominal: degrees(nominal), mounted: degrees(mounted) };
}
