import type { Assembly } from '../../assembly/assemble.ts';
import type { PairLoop } from '../../assembly/loop.ts';
import { REFERENCE_TEMPERATURE } from '../../engine/base/reference-temperature.ts';
import { mismatchAt, type WarmLength, warmLength } from '../../engine/play/axial-temperature.ts';
import { compliance } from '../../engine/play/clamp-compression.ts';
import { type ClampedPair, type ClampedPairInput, clampedPair } from '../../engine/play/clamped-pair.ts';
import type { Workshop } from '../../spec/workshop-model.ts';
import type { Closed } from '../close.ts';
import { angularContact } from './angular-contact.ts';
import type { Clamp } from './clamp-of.ts';
import { housingBetween } from './housing-between.ts';
import type { MountedBearing } from './mounted-bearing.ts';
import { sideOf } from './side-of.ts';
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

/** Works a located pair out; or says what is missing. */
export function pairMechanics(
  assembly: Assembly,
  loop: PairLoop,
  closed: Closed | null,
  bearings: readonly MountedBearing[],
  clamp: Clamp | null,
  workshop: Workshop | null,
  temperature: number,
): PairMechanics | PairUnchecked {
  const [left, right] = loop.bearings.map((address) =>
    bearings.find((bearing) => bearing.address === address),
  );
  if (!left?.mounted) return { missing: wantedOf(loop.bearings[0], left) };
  if (!right?.mounted) return { missing: wantedOf(loop.bearings[1], right) };
  const housing = loop.housing === 'shell' ? assembly.shell : assembly.freehub;
  if (!closed || !housing) return { missing: `distance between ${loop.bearings.join(' and ')}` };
  const between = squeezedBetween(assembly, loop.inner, workshop);
  const shell = housingBetween(housing, loop, workshop);
  const leftSide = sideOf(left, housing, 'left', bearings);
  const rightSide = sideOf(right, housing, 'right', bearings);
  if (!leftSide || !rightSide) {
    const unknown = [leftSide ? null : left.address, rightSide ? null : right.address].filter(Boolean);
    return { missing: `back-face of ${unknown.join(' and ')}` };
  }
  // Outer rings that touch stop each other.
  const touch = loop.located === 'side-by-side' ? { holdInward: Number.POSITIVE_INFINITY } : {};
  const input: ClampedPairInput = {
    left: { ...leftSide, ...touch },
    right: { ...rightSide, ...touch },
    mismatch: closed.mean + warmed(between.lengths, shell.lengths, temperature),
    clampForce: clamp?.force ?? 0,
    spacerCompliance: compliance(between.stretches),
    housingCompliance: compliance(shell.stretches),
    heldBy: 'clamp',
  };
  const assumed = [
    ...left.assumed,
    ...right.assumed,
    ...between.assumed,
    ...shell.assumed,
    ...(clamp?.assumed ?? []),
  ];
  return {
    loop,
    input,
    result: clampedPair(input),
    axial: tighter(left.axial, right.axial),
    left,
    right,
    squeezed: between.stretches,
    assumed: [...new Set(assumed)],
  };
}

function tighter(left: number | null, right: number | null): number | null {
  if (left === null || right === null) return left ?? right;
  return Math.min(left, right);
}

/** What a bearing lacks to be worked out. */
function wantedOf(address: string, mounted: MountedBearing | undefined): string {
  const angular = mounted ? angularContact(mounted.stack) : null;
  return `${angular?.angle === null ? 'contact-angle' : 'internal clearance'} of ${address}`;
}

/** Whether anything stops the housing both ways. */
export function isClosed({ result }: PairMechanics): boolean {
  return Number.isFinite(result.playClampedSigned);
}

/** What temperature adds to δ, mm: the inner line grows by its materials, the housing by its own. */
function warmed(inner: readonly WarmLength[], outer: readonly WarmLength[], temperature: number): number {
  const cold = warmLength(inner, REFERENCE_TEMPERATURE) - warmLength(outer, REFERENCE_TEMPERATURE);
  return mismatchAt(inner, outer, temperature) - cold;
}
