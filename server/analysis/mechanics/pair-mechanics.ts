import type { Assembly } from '../../assembly/assemble.ts';
import type { PairLoop } from '../../assembly/loop.ts';
import { REFERENCE_TEMPERATURE } from '../../engine/base/reference-temperature.ts';
import { type WarmLength, warmLength } from '../../engine/play/axial-temperature.ts';
import { compliance } from '../../engine/play/clamp-compression.ts';
import { type ClampedPair, type ClampedPairInput, clampedPair } from '../../engine/play/clamped-pair.ts';
import { sprungPair } from '../../engine/play/sprung-pair.ts';
import type { Workshop } from '../../spec/workshop-model.ts';
import type { Closed } from '../close.ts';
import { angularContact } from './angular-contact.ts';
import { axleBetween } from './axle-between.ts';
import type { Clamp } from './clamp-of.ts';
import type { Temperatures } from './conditions.ts';
import { housingBetween } from './housing-between.ts';
import type { MountedBearing } from './mounted-bearing.ts';
import { type PairSetting, pairSetting } from './pair-setting.ts';
import { sideOf } from './side-of.ts';
import { springInLine } from './spring-in-line.ts';
import { type Squeezed, squeezedBetween } from './squeezed-between.ts';

/** A pair of bearings as the fingers feel it, at the means. */
export interface PairMechanics {
  readonly loop: PairLoop;
  readonly input: ClampedPairInput;
  /** Without a clamp nothing is squeezed: the clamped results then equal the unclamped ones. */
  readonly result: ClampedPair;
  /** Axial clearance of the tighter bearing, mm; null for two angular-contact bearings, which have none alone. */
  readonly axial: number | null;
  readonly left: MountedBearing;
  readonly right: MountedBearing;
  /** Everything between the inner rings that the clamp squeezes, left to right. */
  readonly squeezed: readonly Squeezed[];
  /** Set by hand, or sprung; null where the parts between the rings set the distance. */
  readonly setting: PairSetting | null;
  /** There where the loads are those of a whole line of bearings. */
  readonly ofLine?: true;
  readonly assumed: readonly string[];
}

/** What keeps a pair from being worked out. */
export interface PairUnchecked {
  readonly missing: string;
}

/** Whether a pair could be worked out. */
export function isWorked(pair: PairMechanics | PairUnchecked): pair is PairMechanics {
  return 'result' in pair;
}

/** Works a located pair out; or says what is missing. An adjuster keeps what it was set to on the bench (`setBefore`). */
export function pairMechanics(
  assembly: Assembly,
  loop: PairLoop,
  closed: Closed | null,
  bearings: readonly MountedBearing[],
  clamp: Clamp | null,
  workshop: Workshop | null,
  temperatures: Temperatures,
  setBefore: PairSetting | null = null,
): PairMechanics | PairUnchecked {
  // Two parts of one name cannot be told apart: what is worked out of the one would be said of the other.
  const shared = loop.bearings.find((address) => isShared(assembly, address));
  if (shared !== undefined) return { missing: `name of its own for each ${shared}` };
  const [left, right] = loop.bearings.map((address) =>
    bearings.find((bearing) => bearing.address === address),
  );
  if (!left?.mounted) return { missing: wantedOf(loop.bearings[0], left) };
  if (!right?.mounted) return { missing: wantedOf(loop.bearings[1], right) };
  const housing = loop.housing === 'shell' ? assembly.shell : assembly.freehub;
  if (!closed || !housing) return { missing: `distance between ${loop.bearings.join(' and ')}` };
  const shell = housingBetween(housing, loop, workshop);
  const isPushed = loop.setBy?.where === 'beside';
  const between =
    isPushed && loop.inner.every(({ key }) => key !== 'length')
      ? axleBetween(assembly, shell.lengths, workshop)
      : squeezedBetween(assembly, loop.inner, workshop);
  const leftSide = sideOf(left, housing, 'left', bearings);
  const rightSide = sideOf(right, housing, 'right', bearings);
  if (!leftSide || !rightSide) {
    const unknown = [leftSide ? null : left.address, rightSide ? null : right.address].filter(Boolean);
    return { missing: `back-face of ${unknown.join(' and ')}` };
  }
  // Outer rings that touch stop each other.
  const touch = loop.located === 'side-by-side' ? { holdInward: Number.POSITIVE_INFINITY } : {};
  const sides = { left: { ...leftSide, ...touch }, right: { ...rightSide, ...touch } };
  const growth = warmed(between.lengths, shell.lengths, temperatures);
  const housingCompliance = compliance(shell.stretches);
  const spacerCompliance = compliance(between.stretches);
  const give = spacerCompliance + housingCompliance;
  const setting = setBefore ?? pairSetting(loop, { ...sides, mismatch: closed.mean, warmed: growth, give });
  if (setting && 'missing' in setting) return setting;
  const spring = loop.setBy ? null : springInLine(assembly.line);
  const input: ClampedPairInput = {
    ...sides,
    mismatch: (setting?.mismatch ?? closed.mean) + growth,
    clampForce: spring?.preload ?? clamp?.force ?? 0,
    spacerCompliance,
    housingCompliance,
    heldBy: isPushed ? 'threads' : 'clamp',
  };
  const assumed = [
    ...left.assumed,
    ...right.assumed,
    ...between.assumed,
    ...shell.assumed,
    ...(clamp?.assumed ?? []),
    ...(setting?.assumed ?? []),
    ...(spring?.assumed ?? []),
  ];
  return {
    loop,
    input,
    result:
      setting?.kind === 'spring'
        ? sprungPair(sides.left, sides.right, setting.preload ?? 0, setting.way)
        : clampedPair(input),
    axial: tighter(left.axial, right.axial),
    left,
    right,
    squeezed: between.stretches,
    setting,
    assumed: [...new Set(assumed)],
  };
}

function tighter(left: number | null, right: number | null): number | null {
  if (left === null || right === null) return left ?? right;
  return Math.min(left, right);
}

const isShared = ({ line }: Assembly, address: string): boolean =>
  1 < line.filter((part) => part.address === address).length;

/** What a bearing lacks to be worked out. */
function wantedOf(address: string, mounted: MountedBearing | undefined): string {
  if (!mounted?.stack.bearing) return `code of ${address}`;
  const angular = angularContact(mounted.stack);
  return `${angular?.angle === null ? 'contact-angle' : 'internal clearance'} of ${address}`;
}

/** Whether anything stops the housing both ways. */
export function isClosed({ result }: PairMechanics): boolean {
  return Number.isFinite(result.playClampedSigned);
}

/** Whether many builds of a pair differ: a spring takes up in each whatever its lengths leave. */
export function isCounted(pair: PairMechanics): boolean {
  return isClosed(pair) && pair.setting?.kind !== 'spring';
}

/** What temperature adds to δ, mm: the inner line grows by its materials and warmth, the housing by its own. */
function warmed(inner: readonly WarmLength[], outer: readonly WarmLength[], at: Temperatures): number {
  const grown = (lengths: readonly WarmLength[], temperature: number): number =>
    warmLength(lengths, temperature) - warmLength(lengths, REFERENCE_TEMPERATURE);
  return grown(inner, at.inner) - grown(outer, at.outer);
}
