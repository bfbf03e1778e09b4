import type { Assembly } from '../../assembly/assemble.ts';
import type { FilledHousing } from '../../assembly/housings.ts';
import {
  type ClampedLine,
  clampedLine,
  type LineBearing,
  type LineGap,
} from '../../engine/play/clamped-line.ts';
import { type ClampedPair, type LoadedBearing, loadedBearing } from '../../engine/play/clamped-pair.ts';
import { type LocatedRange, pairPlay } from '../../engine/play/pair-play.ts';
import { type PairSide, travel } from '../../engine/play/pair-side.ts';
import { linePositions } from './line-positions.ts';
import type { PairMechanics } from './pair-mechanics.ts';

/** One bearing of a line at the clamped equilibrium. */
export interface LineLoad extends LoadedBearing {
  readonly address: string;
  /** Axial force on its balls, N; positive pushes its outer ring to the right. */
  readonly force: number;
  /** Whether its outer ring slides, so that its grip sets the force. */
  readonly slid: boolean;
}

/** More than two bearings in one housing: each feels all the others. */
export interface LineMechanics {
  readonly housing: FilledHousing['housing']['name'];
  /** Left to right. */
  readonly bearings: readonly LineLoad[];
  /** Signed play of the housing on all of them, mm; Infinity where nothing closes the line. */
  readonly playUnclamped: number;
  readonly playClampedSigned: number;
  /** The two bearings that stop the housing to the right and to the left once clamped; null where none does. */
  readonly stops: { readonly right: string | null; readonly left: string | null };
  /** Force in each spacer, N, left to right. */
  readonly spacers: readonly number[];
}

/** Forces below this, N, are none. */
const least = 0.05;

/**
 * Works a housing with more than two bearings out from its pairs, which hold the distances. Null for two bearings,
 * where a pair could not be worked out, and where the pairs do not tie all bearings together.
 */
export function lineMechanics(
  assembly: Assembly,
  housing: FilledHousing,
  pairs: readonly PairMechanics[],
): LineMechanics | null {
  const own = pairs.filter(({ loop }) => loop.housing === housing.housing.name);
  const order = assembly.line
    .map(({ address }) => address)
    .filter((address) => own.some(({ loop }) => loop.bearings.includes(address)));
  // A spring gives way to every other distance: its pair is told alone.
  if (order.length <= 2 || own.some(({ setting }) => setting?.kind === 'spring')) return null;
  const places = linePositions(order, own, housing);
  const sides = order.map((address) => sideIn(own, address));
  if (!places || sides.some((side) => side === null)) return null;
  const bearings = sides.flatMap((side) => side ?? []);
  const clampForce = own[0]?.input.clampForce ?? 0;
  const gaps = order.slice(1).map((right, i): LineGap => {
    const next = neighbours(own, order[i] ?? '', right);
    return {
      mismatch: (places[i + 1] ?? 0) - (places[i] ?? 0),
      spacerCompliance: next?.input.spacerCompliance ?? 0,
      housingCompliance: next?.input.housingCompliance ?? 0,
    };
  });
  const found = clampedLine({ bearings, gaps, clampForce });
  let shortened = 0;
  const clampedPlaces = places.map((place, i) => {
    if (0 < i) shortened += clampForce * (gaps[i - 1]?.spacerCompliance ?? 0);
    return place - shortened;
  });
  const play = pairPlay(clampedPlaces.map((place, i) => rangeAt(bearings[i] as Standing, place)));
  return {
    housing: housing.housing.name,
    bearings: order.map((address, i) => loadOf(address, bearings[i] as Standing, found, i)),
    playUnclamped: pairPlay(places.map((place, i) => rangeAt(bearings[i] as Standing, place))).play,
    playClampedSigned: play.play,
    stops: { right: order[play.stopsRight] ?? null, left: order[play.stopsLeft] ?? null },
    spacers: found.spacers,
  };
}

/** What a pair feels of the whole line: its own geometry, the loads of the line. */
export function inLine(pair: PairMechanics, line: LineMechanics): ClampedPair {
  const { result, input, loop } = pair;
  const at = loop.bearings.map((address) => line.bearings.findIndex((one) => one.address === address));
  const [from = 0, to = 0] = at;
  const [left, right] = at.map((index) => line.bearings[index]);
  if (!left || !right) return result;
  const spacerLoad = Math.min(...line.spacers.slice(from, to));
  const more = Math.abs(right.force) < Math.abs(left.force) ? left.force : -right.force;
  const ballLoad = Math.abs(more);
  const slid = left.slid ? (right.slid ? 'either' : 'left') : right.slid ? 'right' : 'no';
  return {
    ...result,
    playClamped: 0 < ballLoad ? 0 : Math.max(0, result.playClampedSigned),
    clampShortening: spacerLoad * input.spacerCompliance,
    ballLoad,
    spacerLoad,
    loadedBy: ballLoad === 0 ? 'nothing' : 0 < more ? 'short' : 'long',
    spacerReached: 0 < spacerLoad || input.clampForce <= 0,
    slid,
    left,
    right,
  };
}

/** A bearing as the line has it, with the side it was taken from. */
interface Standing extends LineBearing {
  readonly side: PairSide;
  /** Whether inward of that side is to the right. */
  readonly inwardRight: boolean;
}

/** A bearing with directions along the axle in place of inward and outward. */
function sideIn(pairs: readonly PairMechanics[], address: string): Standing | null {
  const asLeft = pairs.find(({ loop }) => loop.located !== 'side-by-side' && loop.bearings[0] === address);
  const asRight = pairs.find(({ loop }) => loop.located !== 'side-by-side' && loop.bearings[1] === address);
  const pair = asLeft ?? asRight ?? pairs.find(({ loop }) => loop.bearings.includes(address));
  if (!pair) return null;
  const inwardRight = pair.loop.bearings[0] === address;
  const side = inwardRight ? pair.input.left : pair.input.right;
  const { bearing, flush, carries, holdInward, holdOutward } = side;
  const right = inwardRight ? 'inward' : 'outward';
  return {
    bearing,
    flush,
    carries: carries === 'both' ? 'both' : carries === right ? 'right' : 'left',
    holdRight: inwardRight ? holdInward : holdOutward,
    holdLeft: inwardRight ? holdOutward : holdInward,
    side,
    inwardRight,
  };
}

/** The housing moved to the right leaves the inner ring to the left of its outer ring. */
function rangeAt({ side, inwardRight }: Standing, offset: number): LocatedRange {
  const [inward, outward] = [travel(side, 'inward'), travel(side, 'outward')];
  return inwardRight
    ? { offset, toRight: outward, toLeft: inward }
    : { offset, toRight: inward, toLeft: outward };
}

function loadOf(address: string, { side }: Standing, { forces, slid }: ClampedLine, i: number): LineLoad {
  const worked = forces[i] ?? 0;
  const force = Math.abs(worked) < least ? 0 : worked;
  return { address, force, slid: slid[i] ?? false, ...loadedBearing(side, Math.abs(force)) };
}

/** The pair of two neighbours, or the one whose spacer lies between them. */
function neighbours(pairs: readonly PairMechanics[], left: string, right: string): PairMechanics | undefined {
  return (
    pairs.find(({ loop }) => loop.bearings[0] === left && loop.bearings[1] === right) ??
    pairs.find(({ loop }) => loop.bearings[0] === left || loop.bearings[1] === right)
  );
}
