import type { Assembly } from '../../assembly/assemble.ts';
import type { FilledHousing, FilledSeat } from '../../assembly/housings.ts';
import type { LinePart } from '../../assembly/line.ts';
import type { PairLoop } from '../../assembly/loop.ts';
import { REFERENCE_TEMPERATURE } from '../../engine/base/reference-temperature.ts';
import { angularBearing, axialBearing } from '../../engine/contact/axial-load.ts';
import { allSteel, type BearingElasticity } from '../../engine/contact/ball-contact.ts';
import { bearingSteel } from '../../engine/contact/elasticity.ts';
import { mismatchAt, type WarmLength, warmLength } from '../../engine/play/axial-temperature.ts';
import { compliance, type Stretch } from '../../engine/play/clamp-compression.ts';
import { type ClampedPair, type ClampedPairInput, clampedPair } from '../../engine/play/clamped-pair.ts';
import { angularSide, deepGrooveSide, type PairSide } from '../../engine/play/pair-side.ts';
import { materials } from '../../engine/tables/materials.ts';
import type { Workshop } from '../../spec/workshop-model.ts';
import type { Closed } from '../close.ts';
import { angularContact } from './angular-contact.ts';
import type { Clamp } from './clamp-of.ts';
import { materialOf } from './material-of.ts';
import type { MountedBearing } from './mounted-bearing.ts';

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

/** A part between the inner rings with its cross-section. */
export interface Squeezed extends Stretch {
  readonly address: string;
  /** MPa; null where no table has it. */
  readonly yield: number | null;
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
  const between = stretchesBetween(assembly, loop, workshop);
  const shell = housingStretch(housing, loop, workshop);
  const leftSide = sideOf(left, housing, 'left');
  const rightSide = sideOf(right, housing, 'right');
  if (!leftSide || !rightSide) {
    const unknown = [leftSide ? null : left.address, rightSide ? null : right.address].filter(Boolean);
    return { missing: `back-face of ${unknown.join(' and ')}` };
  }
  const input: ClampedPairInput = {
    left: leftSide,
    right: rightSide,
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

/** A bearing with what holds its outer ring each way: a shoulder, a retaining ring, or the grip of its seat. */
function sideOf(mounted: MountedBearing, housing: FilledHousing, side: 'left' | 'right'): PairSide | null {
  const seat = housing.seats.find(({ bearings }) =>
    bearings.some(({ address }) => address === mounted.address),
  );
  if (!seat || !mounted.mounted) return null;
  const { inward, outward } = holds(seat, side, mounted.grip);
  const elasticity = elasticityOf(mounted);
  const angular = angularContact(mounted.stack);
  if (!angular) {
    return deepGrooveSide(axialBearing(mounted.geometry, mounted.mounted.mean, elasticity), outward, inward);
  }
  const { angle, back } = angular;
  if (!back || angle === null) return null;
  const loss = mounted.free ? mounted.free.lo - mounted.mounted.mean : 0;
  // The balls push an outer ring towards its back face: with that turned to the other bearing, inner rings driven
  // together are carried.
  return angularSide(
    angularBearing(mounted.geometry, angle, loss, elasticity),
    angle,
    back === side ? 'outward' : 'inward',
    outward,
    inward,
  );
}

function holds(seat: FilledSeat, side: 'left' | 'right', grip: number): { inward: number; outward: number } {
  const ring = seat.seat.ring?.values.side?.value ?? (seat.seat.ring ? 'open' : null);
  const stopInward = seat.from === side;
  const atStop = seat.stop === 'spacer' ? grip : Number.POSITIVE_INFINITY;
  const away = ring === 'open' ? Number.POSITIVE_INFINITY : grip;
  return stopInward ? { inward: atStop, outward: away } : { inward: away, outward: atStop };
}

function elasticityOf({ stack }: MountedBearing): BearingElasticity {
  if (stack.bearing?.material !== 'hybrid') return allSteel;
  const { E, nu } = materials['silicon nitride'];
  return { ring: bearingSteel, ball: { E, nu } };
}

/** What temperature adds to δ, mm: the inner line grows by its materials, the housing by its own. */
function warmed(inner: readonly WarmLength[], outer: readonly WarmLength[], temperature: number): number {
  const cold = warmLength(inner, REFERENCE_TEMPERATURE) - warmLength(outer, REFERENCE_TEMPERATURE);
  return mismatchAt(inner, outer, temperature) - cold;
}

interface Stretches {
  readonly stretches: readonly Stretch[];
  /** The same with their expansion. */
  readonly lengths: readonly WarmLength[];
  readonly assumed: readonly string[];
}

/** Everything between the two inner rings, as it is squeezed by the clamp. */
function stretchesBetween(
  assembly: Assembly,
  loop: PairLoop,
  workshop: Workshop | null,
): Stretches & { readonly stretches: readonly Squeezed[] } {
  const assumed: string[] = [];
  const lengths: WarmLength[] = [];
  const stretches = loop.inner
    .filter(({ key }) => key === 'length')
    .flatMap((item): readonly Squeezed[] => {
      const part = assembly.line.find(({ address }) => address === item.address);
      if (!part) return [];
      const { outer, inner, said } = crossSection(part, assembly);
      const isCollar = part.part.kind === 'collar';
      const written = isCollar ? assembly.hub.axle?.values.material : part.part.values.material;
      const material = materialOf(part.address, written, 'aluminium 6061-T6', workshop);
      assumed.push(...said, ...(material.assumed ? [material.assumed] : []));
      const length = item.count * item.settled.drawn.nominal;
      lengths.push({ length, expansion: material.expansion });
      return [{ address: item.address, length, outer, inner, E: material.E, yield: material.yield }];
    });
  return { stretches, lengths, assumed };
}

/** Diameters of a part between the rings: written, else the inner ring's shoulder and bore. */
function crossSection(
  part: LinePart,
  assembly: Assembly,
): { outer: number; inner: number; said: readonly string[] } {
  const { outside, inside } = part.part.values;
  const ring = assembly.bearings.find(({ bearing }) => bearing);
  const axle = assembly.hub.axle?.values;
  const outer = outside?.value.nominal ?? ring?.innerOutside?.value ?? 0;
  const bore = part.part.kind === 'collar' ? axle?.bore : inside;
  const inner = bore?.value.nominal ?? axle?.diameter?.value.nominal ?? ring?.bearing?.bore ?? 0;
  const said = [
    ...(outside
      ? []
      : [`outside of ${part.address} taken as the inner ring's shoulder, ${outer.toFixed(1)} mm`]),
    ...(bore ? [] : [`inside of ${part.address} taken as ${inner.toFixed(1)} mm`]),
  ];
  return { outer, inner, said };
}

/** The shell between the two stops, which gives way when the balls push. */
function housingStretch({ housing }: FilledHousing, loop: PairLoop, workshop: Workshop | null): Stretches {
  const { outside, through, material } = housing.values;
  const found = materialOf(`the ${housing.name}`, material, 'aluminium 6061-T6', workshop);
  const length = loop.outer.reduce((sum, item) => sum + item.sign * item.settled.drawn.nominal, 0);
  if (!outside || !through || length <= 0) {
    return {
      stretches: [],
      lengths: [{ length: Math.max(0, length), expansion: found.expansion }],
      assumed: [`the ${housing.name} taken as rigid along the axle: outside or through is not written`],
    };
  }
  const stretch = { length, outer: outside.value.nominal, inner: through.value.nominal, E: found.E };
  return {
    stretches: [stretch],
    lengths: [{ length, expansion: found.expansion }],
    assumed: found.assumed ? [found.assumed] : [],
  };
}
