import { type AxialState, axialState } from '../contact/axial-load.ts';
import { ballForceAtStress, pressBall } from '../contact/ball-contact.ts';
import { axialSpring, loadPair, offsetOfSpring } from './pair-equilibrium.ts';
import { pairPlay } from './pair-play.ts';
import { type PairSide, pairRanges, travel } from './pair-side.ts';

/** Two bearings in a housing and the clamp that holds their inner rings against the spacer. */
export interface ClampedPairInput {
  readonly left: PairSide;
  readonly right: PairSide;
  /** Inner distance less outer distance with every face just touching, δ = P − S, mm; negative is a short spacer. */
  readonly mismatch: number;
  /** Force that the clamp puts into the line, N. */
  readonly clampForce: number;
  /** Shortening of everything between the inner rings, mm/N. */
  readonly spacerCompliance: number;
  /** Give of the shell between the outer rings' stops, mm/N. */
  readonly housingCompliance: number;
  /**
   * What fixes the inner rings: the clamped line itself, so that the balls can carry no more than the clamp, or
   * threads on the axle (cup and cone), which hold whatever the balls push.
   */
  readonly heldBy: 'clamp' | 'threads';
}

/** One bearing at the clamped equilibrium. */
export interface LoadedBearing {
  readonly state: AxialState;
  /** Greatest contact stress of a ball, MPa. */
  readonly contactStress: number;
  /** Force of each ball over the force that dents its groove for good; at 1 the stress is 4200 MPa. */
  readonly dentShare: number;
}

/** The pair as the fingers feel it. */
export interface ClampedPair {
  /** Signed play before clamping, mm; negative is the travel that is missing, Infinity where nothing closes the pair. */
  readonly playUnclamped: number;
  /** Play before clamping once the outer rings have left their stops as far as the spacer pushes them, mm. */
  readonly playShoulders: number;
  /** Signed play after clamping as if the balls were rigid, mm. */
  readonly playClampedSigned: number;
  /** Play that is left after clamping, mm; 0 where the bearings are loaded. */
  readonly playClamped: number;
  /** Play after clamping between the stops, outer rings free of their grip, mm; 0 where a short spacer loads them. */
  readonly playClampedShoulders: number;
  /** Shortening of the parts between the inner rings at the equilibrium, mm. */
  readonly clampShortening: number;
  /** Axial force through each bearing, N. */
  readonly ballLoad: number;
  /** Force left in the spacer, N; for threads the compression of the axle between the cones, negative is pull. */
  readonly spacerLoad: number;
  /** What loads the bearings: nothing, inner rings driven together, or inner rings driven apart. */
  readonly loadedBy: 'nothing' | 'short' | 'long';
  /** False where the balls take the whole clamp force before the rings reach the spacer. */
  readonly spacerReached: boolean;
  /** Whether an outer ring slid, so that its grip and not the spacer sets the load. */
  readonly slid: 'no' | 'left' | 'right' | 'either';
  readonly left: LoadedBearing;
  readonly right: LoadedBearing;
  /** False where a bearing's own geometry does not hold. */
  readonly valid: boolean;
}

/** Grips within this share of each other cannot tell which ring moves. */
const ALIKE = 0.05;

/**
 * Equilibrium of a clamped pair. The clamp shortens the spacer, δc = δ − F·Cp. Where |δc| exceeds the free travel,
 * the balls carry N with o(N) + N·(Cp + Cs) = |δc|, o the sum of both offsets under N: a short spacer (δc < 0)
 * takes F − N, and no more than F can reach the balls; a long one carries F + N, and no more than the weaker
 * grip can hold. Housing afloat, no outside load, rings square, frictionless faces.
 */
export function clampedPair(input: ClampedPairInput): ClampedPair {
  const { left, right, mismatch, clampForce, spacerCompliance, housingCompliance } = input;
  const clamped = mismatch - clampForce * spacerCompliance;
  const direction = loadedDirection(input, clamped);
  const signed = pairPlay(pairRanges(left, right, clamped)).play;
  const load = direction ? pressed(input, direction, clamped) : unloaded;
  const short = direction === 'inward' && load.force > 0;
  const spacerLoad = load.reached ? clampForce + (direction === 'outward' ? 1 : -1) * load.force : 0;
  const between = (delta: number) => travel(left, 'inward') + travel(right, 'inward') + delta;
  return {
    playUnclamped: pairPlay(pairRanges(left, right, mismatch)).play,
    playShoulders: between(mismatch),
    playClampedSigned: signed,
    playClamped: load.force > 0 ? 0 : Math.max(0, signed),
    playClampedShoulders: Math.max(0, between(clamped)),
    clampShortening: spacerLoad * spacerCompliance,
    ballLoad: load.force,
    spacerLoad,
    loadedBy: load.force > 0 ? (short ? 'short' : 'long') : 'nothing',
    spacerReached: load.reached,
    slid: load.slid,
    left: loadedBearing(left, load.force),
    right: loadedBearing(right, load.force),
    valid: left.bearing.valid && right.bearing.valid && housingCompliance >= 0,
  };
}

interface Pressed {
  readonly force: number;
  readonly reached: boolean;
  readonly slid: ClampedPair['slid'];
}

const unloaded: Pressed = { force: 0, reached: true, slid: 'no' };

/** The way in which the rings are squeezed, or null where some travel is left. */
function loadedDirection({ left, right }: ClampedPairInput, clamped: number): 'inward' | 'outward' | null {
  if (travel(left, 'inward') + travel(right, 'inward') < -clamped) return 'inward';
  if (travel(left, 'outward') + travel(right, 'outward') < clamped) return 'outward';
  return null;
}

function pressed(input: ClampedPairInput, direction: 'inward' | 'outward', clamped: number): Pressed {
  const { left, right, clampForce, spacerCompliance, housingCompliance, heldBy } = input;
  const closing = (direction === 'inward' ? -clamped : clamped) + left.flush + right.flush;
  const { force } = loadPair(
    axialSpring(left.bearing),
    axialSpring(right.bearing),
    closing,
    spacerCompliance + housingCompliance,
  );
  const most = direction === 'inward' && heldBy === 'clamp' ? clampForce : Number.POSITIVE_INFINITY;
  const holds = [left, right].map((side) => (direction === 'inward' ? side.holdInward : side.holdOutward));
  const [holdLeft = 0, holdRight = 0] = holds;
  const grip = Math.min(holdLeft, holdRight);
  if (grip < Math.min(force, most))
    return { force: grip, reached: true, slid: whichSlid(holdLeft, holdRight) };
  return most < force ? { force: most, reached: false, slid: 'no' } : { force, reached: true, slid: 'no' };
}

function whichSlid(left: number, right: number): ClampedPair['slid'] {
  if (left === right || Math.abs(left - right) <= ALIKE * Math.min(left, right)) return 'either';
  return left < right ? 'left' : 'right';
}

/** A bearing under an axial force, N. */
export function loadedBearing({ bearing }: Pick<PairSide, 'bearing'>, force: number): LoadedBearing {
  const offset = force > 0 ? offsetOfSpring(axialSpring(bearing), force) : 0;
  const state = axialState(bearing, offset);
  return {
    state,
    contactStress: pressBall(bearing.contact, state.ballForce).maxStress,
    dentShare: state.ballForce / ballForceAtStress(bearing.contact),
  };
}
