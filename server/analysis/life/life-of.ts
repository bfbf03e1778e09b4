import type { LinePart } from '../../assembly/line.ts';
import { basicLife, lifeKilometres, meanLoad, systemLife } from '../../engine/life/basic-life.ts';
import {
  angularFactors,
  angularStaticLoad,
  type BearingLoad,
  deepGrooveFactors,
  equivalentLoad,
  staticEquivalentLoad,
} from '../../engine/life/equivalent-load.ts';
import { type HubForce, hubReaction } from '../../engine/life/wheel-loads.ts';
import type { Workshop } from '../../spec/workshop-model.ts';
import type { VariantAnalysis } from '../analyze.ts';
import type { MountedBearing } from '../mechanics/mounted-bearing.ts';
import { isWorked } from '../mechanics/pair-mechanics.ts';
import { ratingsOf } from './bearing-ratings.ts';
import type { BearingRatings } from './ratings-of-geometry.ts';
import {
  brakingAssumed,
  chainAssumed,
  dutyOf,
  steadyChainPull,
  type WheelCase,
  wheelCases,
} from './wheel-cases.ts';

/** One bearing along the way. Loads in N. */
export interface BearingLife {
  readonly address: string;
  readonly ratings: BearingRatings;
  /** Load in each case, with the share of the way. */
  readonly cases: readonly { readonly name: string; readonly share: number; readonly load: BearingLoad }[];
  /** Load that does the same damage as all cases. */
  readonly equivalent: number;
  /** Greatest static equivalent load of the cases over C0. */
  readonly staticShare: number;
  /** Axial preload of the clamped pair that is in it. */
  readonly preload: number;
  /** What nine in ten reach, kilometres. */
  readonly kilometres: number;
}

/** Lives of the bearings of one variant; for comparison, not a promise. */
export interface HubLife {
  readonly bearings: readonly BearingLife[];
  /** Kilometres that all of them reach together in nine hubs of ten; null where a bearing is left out. */
  readonly kilometres: number | null;
  /** What could not be reckoned, and for want of what. */
  readonly missing: readonly string[];
  readonly assumed: readonly string[];
}

/** Under what a life is asked for. */
export interface LifeOptions {
  readonly how: 'drawn' | 'built';
  /** Mass of the rider in place of the written one, kg. */
  readonly rider: number | null;
}

/** Works out the lives of a variant: the shell's bearings carry the wheel, the freehub's own ones the chain. */
export function lifeOf(variant: VariantAnalysis, workshop: Workshop | null, options: LifeOptions): HubLife {
  const { assembly } = variant;
  const duty = dutyOf(variant, workshop, options.rider);
  const rotor = assembly.hub.beside.find(({ kind }) => kind === 'rotor-face');
  const rotorAt = rotor?.values.at?.value.from === null ? rotor.values.at.value.distance.nominal : null;
  const cases = wheelCases(duty, rotorAt !== null);
  const missing: string[] = [];
  const assumed = [...duty.assumed, ...(rotorAt === null ? [] : [brakingAssumed])];
  const pull = steadyChainPull(duty.circumference);
  const { mechanics, width } = variant;
  const { bearings, pairs } = mechanics(options.how);
  const middle = (width.loop.wanted?.nominal ?? Number.NaN) / 2;
  const lives = (['shell', 'freehub'] as const).flatMap((name): readonly BearingLife[] => {
    const housing = assembly[name];
    if (!housing) return [];
    const seated = housing.seats
      .flatMap((seat) => seat.bearings)
      .toSorted((a, b) => assembly.line.indexOf(a) - assembly.line.indexOf(b));
    const [first, last] = [seated[0], seated.at(-1)];
    const mounted = seated.flatMap((part) => bearings.filter(({ address }) => address === part.address));
    if (seated.length !== 2 || !first || !last) {
      if (seated.length > 0)
        missing.push(`life in the ${name}: two bearings are reckoned, ${seated.length} stand there`);
      return [];
    }
    if (first.address === last.address) {
      missing.push(`life in the ${name}: needs a name of its own for each ${first.address}`);
      return [];
    }
    const [left, right] = mounted;
    const [from, to] = [centreOf(first), centreOf(last)];
    if (!left || !right || from === null || to === null || Number.isNaN(middle)) {
      missing.push(`life in the ${name}: needs the size and the place of both bearings`);
      return [];
    }
    const at = { from, span: to - from, plane: middle - from };
    const loaded = pairs.find((pair) => isWorked(pair) && pair.left === left && pair.right === right);
    const preload = loaded && isWorked(loaded) ? loaded.result.ballLoad : 0;
    if (name === 'freehub') {
      assumed.push(
        chainAssumed,
        'bearings of the freehub taken to turn as the wheel does: coasting is not told apart',
      );
      return oneHousing([left, right], chainOnly(at, pull, cases), preload, duty.circumference);
    }
    const rotorForces = (item: WheelCase): readonly HubForce[] =>
      rotorAt === null ? [] : [{ at: rotorAt - from, forward: 0, up: item.rotorUp }];
    return oneHousing(
      [left, right],
      onWheel(at, cases, rotorForces, housing.seats[0]?.from),
      preload,
      duty.circumference,
    );
  });
  if (assembly.line.some(({ part }) => part.kind === 'cone'))
    missing.push('life of cups and cones: no standard rates them');
  const stainless = assembly.bearings
    .filter(
      ({ address, bearing }) =>
        bearing?.material === 'stainless' && lives.some((life) => life.address === address),
    )
    .map(
      ({ address }) => `${address} rated as of bearing steel: its stainless steel is softer and carries less`,
    );
  const whole = missing.length === 0 && lives.length > 0;
  return {
    bearings: lives,
    kilometres: whole ? systemLife(lives.map(({ kilometres }) => kilometres)) : null,
    missing,
    assumed: [...assumed, ...lives.flatMap((life) => ratingAssumed(life)), ...stainless],
  };
}

interface Places {
  readonly from: number;
  readonly span: number;
  /** Of the wheel from the left bearing, mm. */
  readonly plane: number;
}

/** Loads of the left and the right bearing in one case. */
interface CaseLoads {
  readonly name: string;
  readonly share: number;
  readonly loads: readonly [BearingLoad, BearingLoad];
}

function onWheel(
  { span, plane }: Places,
  cases: readonly WheelCase[],
  others: (item: WheelCase) => readonly HubForce[],
  leftFrom: 'left' | 'right' | undefined,
): readonly CaseLoads[] {
  return cases.map((item) => {
    const { left, right, axial } = hubReaction({ ...item.load, plane, span, others: others(item) });
    // A shell pushed to the right rests with the shoulder of a seat that is pressed in from the right.
    const rightTakes = leftFrom === 'right' ? axial < 0 : 0 < axial;
    const force = Math.abs(axial);
    return {
      name: item.name,
      share: item.share,
      loads: [
        { radial: left.radial, axial: rightTakes ? 0 : force },
        { radial: right.radial, axial: rightTakes ? force : 0 },
      ],
    };
  });
}

function chainOnly({ span }: Places, pull: number, cases: readonly WheelCase[]): readonly CaseLoads[] {
  const load = { vertical: 0, lateral: 0, forward: 0, tyreRadius: 1, plane: 0, span };
  const { left, right } = hubReaction({ ...load, others: [{ at: span / 2, forward: pull, up: 0 }] });
  const braked = cases.find(({ name }) => name === 'braking')?.share ?? 0;
  return [
    {
      name: 'pedalling',
      share: 1 - braked,
      loads: [
        { radial: left.radial, axial: 0 },
        { radial: right.radial, axial: 0 },
      ],
    },
  ];
}

function oneHousing(
  pair: readonly [MountedBearing, MountedBearing],
  cases: readonly CaseLoads[],
  preload: number,
  circumference: number,
): readonly BearingLife[] {
  return pair.flatMap((mounted, side): readonly BearingLife[] => {
    const { bearing } = mounted.stack;
    if (!bearing) return [];
    const angle = mounted.contactAngle?.nominal ?? null;
    const ratings = ratingsOf(bearing, mounted.inner, angle);
    const loads = cases.map(({ name, share, loads: both }) => {
      const own = both[side] as BearingLoad;
      return { name, share, load: { radial: own.radial, axial: own.axial + preload } };
    });
    const dynamic = (load: BearingLoad): number => equivalentLoad(load, factorsOf(load, ratings, angle));
    const degrees = angle === null ? null : (angle * 180) / Math.PI;
    const still = (load: BearingLoad): number =>
      degrees === null ? staticEquivalentLoad(load) : angularStaticLoad(load, degrees);
    const equivalent = meanLoad(loads.map(({ load, share }) => ({ load: dynamic(load), turns: share })));
    return [
      {
        address: mounted.address,
        ratings,
        cases: loads,
        equivalent,
        staticShare: Math.max(...loads.map(({ load }) => still(load))) / ratings.static,
        preload,
        kilometres: lifeKilometres(basicLife(ratings.dynamic, equivalent), circumference),
      },
    ];
  });
}

function factorsOf(load: BearingLoad, { f0, static: rating }: BearingRatings, angle: number | null) {
  const degrees = angle === null ? 0 : (angle * 180) / Math.PI;
  return degrees < 20 ? deepGrooveFactors(f0, load.axial, rating) : angularFactors(degrees);
}

/** Middle of a part of the line from the left dropout face, mm. */
function centreOf({ at }: LinePart): number | null {
  return at ? (at.left + at.right) / 2 : null;
}

function ratingAssumed({ address, ratings }: BearingLife): readonly string[] {
  const basis =
    ratings.basis === 'printed'
      ? []
      : [
          `ratings of ${address} worked out by ISO 281 and ISO 76 from ${ratings.basis === 'balls' ? 'its balls' : 'estimated balls'}`,
        ];
  const hybrid =
    ratings.hybridStatic === null
      ? []
      : [
          `${address} is a hybrid: dynamic rating as in steel (ISO 20056-1); static rating between ${Math.round(ratings.hybridStatic * 100)} % of it, at the same stress, and all of it: what ISO 20056-2 permits is not known here`,
        ];
  return [...basis, ...hybrid];
}
