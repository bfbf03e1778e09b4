import type { AxialBearing } from '../contact/axial-load.ts';
import { axialSpring, springForce } from './pair-equilibrium.ts';

/** One bearing of a line of any number. */
export interface LineBearing {
  readonly bearing: AxialBearing;
  /** Which way its inner ring can be pushed against its balls. */
  readonly carries: 'both' | 'right' | 'left';
  /** Offset between the groove centres with flush faces, mm, in the way carried; 0 for deep groove. */
  readonly flush: number;
  /** Force at which its outer ring slides when pushed to the right and to the left, N; held for good where nothing is given. */
  readonly holdRight?: number;
  readonly holdLeft?: number;
}

/** What lies between two neighbours of the line. */
export interface LineGap {
  /** Inner distance less outer distance, δ = P − S, mm. */
  readonly mismatch: number;
  /** Give of the spacer and of the housing between them, mm/N. */
  readonly spacerCompliance: number;
  readonly housingCompliance: number;
}

/** A line of bearings whose inner rings one clamp squeezes, all outer rings in one housing. */
export interface ClampedLineInput {
  readonly bearings: readonly LineBearing[];
  /** One fewer than bearings, left to right. */
  readonly gaps: readonly LineGap[];
  readonly clampForce: number;
}

/** The line at its equilibrium. */
export interface ClampedLine {
  /** Inner ring less outer ring of each bearing, faces flush at zero, mm, right positive. */
  readonly offsets: readonly number[];
  /** Axial force on each bearing's balls, N; positive pushes its outer ring to the right. They add up to zero. */
  readonly forces: readonly number[];
  /** Force in each spacer, N; 0 where the rings do not reach it. */
  readonly spacers: readonly number[];
  /** Whether the outer ring of each bearing slides, so that what holds it sets the force. */
  readonly slid: readonly boolean[];
}

/**
 * Equilibrium of any number of bearings. An outer ring that is held by a grip slides where the balls would push it
 * harder: its bearing then carries just that. From the left each bearing's force adds to a
 * sum s; the spacer behind carries F − s, the housing −s, so the next offset follows from this one. The sum at the
 * right end grows with the first offset and has to be zero. A spacer that s = F leaves without force opens: the line
 * is then solved in two parts. Where there is play, one of the many places of the housing is returned, all with
 * zero forces.
 */
export function clampedLine(input: ClampedLineInput): ClampedLine {
  const n = input.bearings.length;
  const offsets: number[] = [];
  const forces: number[] = [];
  let carried = 0;
  let least = Number.NEGATIVE_INFINITY;
  while (offsets.length < n) {
    const from = offsets.length;
    const found = shoot(input, from, startOf(input, from, carried, least), carried);
    const part = found.blocked === null ? n - from : found.blocked - from + 1;
    offsets.push(...found.offsets.slice(0, part));
    forces.push(...found.forces.slice(0, part));
    if (found.blocked === null) break;
    carried = input.clampForce;
    least = nextOffset(input, found.blocked, offsets[found.blocked] ?? 0, carried);
  }
  let sum = 0;
  const spacers = input.gaps.map((_, i) => {
    sum += forces[i] ?? 0;
    const left = input.clampForce - sum;
    return left > 1e-9 * input.clampForce ? left : 0;
  });
  const slid = input.bearings.map((bearing, i) => {
    const pushed = Math.abs(ballForce(bearing, offsets[i] ?? 0));
    return Math.abs(forces[i] ?? 0) + 1e-6 * Math.max(1, pushed) < pushed;
  });
  return { offsets, forces, spacers, slid };
}

/** Farther than any bearing can be pushed, mm. */
const FAR = 2;

/** The first offset of a part, by bisection on the sum at its end. */
function startOf(input: ClampedLineInput, from: number, carried: number, least: number): number {
  let lo = Math.max(-FAR, least);
  let hi = FAR;
  for (let step = 0; step < 100 && hi - lo > 1e-15; step++) {
    const middle = (lo + hi) / 2;
    if (shoot(input, from, middle, carried).tooFar) hi = middle;
    else lo = middle;
  }
  return lo;
}

interface Shot {
  readonly offsets: readonly number[];
  readonly forces: readonly number[];
  readonly tooFar: boolean;
  /** The last bearing before a spacer that has lost its force, or null. */
  readonly blocked: number | null;
}

/** Follows the line from one offset to its right end. */
function shoot(input: ClampedLineInput, from: number, start: number, carried: number): Shot {
  const { bearings, clampForce } = input;
  const offsets: number[] = [];
  const forces: number[] = [];
  let sum = carried;
  let offset = start;
  for (let i = from; i < bearings.length; i++) {
    const force = forceOf(bearings[i] as LineBearing, offset);
    offsets.push(offset);
    forces.push(force);
    sum += force;
    if (i === bearings.length - 1) break;
    if (sum > clampForce && from <= i) return { offsets, forces, tooFar: true, blocked: i };
    offset = nextOffset(input, i, offset, sum);
  }
  return { offsets, forces, tooFar: sum > 0, blocked: blockedAt(forces, carried, clampForce, sum, from) };
}

/** A part stops short where its sum has come up to the clamp force while the end still wants more. */
function blockedAt(
  forces: readonly number[],
  carried: number,
  clampForce: number,
  end: number,
  from: number,
): number | null {
  if (Math.abs(end) <= 1e-6 * Math.max(1, clampForce)) return null;
  let sum = carried;
  for (let k = 0; k < forces.length - 1; k++) {
    sum += forces[k] ?? 0;
    if (Math.abs(sum - clampForce) <= 1e-6 * Math.max(1, clampForce)) return from + k;
  }
  return null;
}

function nextOffset({ gaps, clampForce }: ClampedLineInput, i: number, offset: number, sum: number): number {
  const { mismatch, spacerCompliance, housingCompliance } = gaps[i] as LineGap;
  return offset + mismatch - (clampForce - sum) * spacerCompliance + housingCompliance * sum;
}

/** What the balls push with, no more than holds the outer ring. */
function forceOf(bearing: LineBearing, offset: number): number {
  const { holdRight = Number.POSITIVE_INFINITY, holdLeft = Number.POSITIVE_INFINITY } = bearing;
  return Math.max(-holdLeft, Math.min(holdRight, ballForce(bearing, offset)));
}

function ballForce({ bearing, carries, flush }: LineBearing, offset: number): number {
  const spring = axialSpring(bearing);
  const right = carries === 'left' ? 0 : springForce(spring, flush + offset);
  return carries === 'right' ? right : right - springForce(spring, flush - offset);
}
