import type { RangedValue } from '../engine/seats/mounting-force.ts';
import type { Side } from '../spec/model.ts';
import type { DriverSize } from './driver-size.ts';
import type { Reach } from './reach.ts';
import type { PathSegment } from './seat-path.ts';

/** What every step tells: which parts move, off or onto what, and where to. */
export interface Moved {
  /** The part the step is named after. */
  readonly part: string;
  /** Everything that moves together. */
  readonly moving: readonly string[];
  /** What stays still. */
  readonly held: readonly string[];
  /** The side of the hub the work is done on. */
  readonly side: Side;
  /** Which way the parts move. */
  readonly towards: Side;
  /** How far they move until they are clear of what stays, or from there until they are in place, mm. */
  readonly travel: number;
  /** On the hub, or on a piece of it that is already apart from the shell. */
  readonly on: 'hub' | 'bench';
}

/** Where something is held against a force. Diameters of the hollow block in mm; null where nothing limits it. */
export interface Support {
  readonly under: 'housing' | 'inner-ring' | 'axle';
  readonly part: string;
  readonly side: Side;
  /** At least this wide inside, so that it clears what stands there. */
  readonly inside: number;
  /** At most this wide outside. */
  readonly outside: number | null;
}

/** Force to move a ring, N; null where its fit is not written or a compound holds it. */
export type PressForce = RangedValue | null;

/** Warming the housing so that the ring goes in easier, °C. */
export interface Warming {
  /** So warm that the tightest ring drops in; never more than a sealed bearing or a bonded shell stands. */
  readonly to: number;
  /** False: not by heat alone; warming no further than `to` only takes part of the force. */
  readonly dropsIn: boolean;
}

/** One bearing pressed home. */
export interface PressedIn {
  readonly bearing: string;
  /** Whether the bearing is pushed, or the axle goes into a bearing that stays. */
  readonly pushed: 'bearing' | 'axle';
  /** Which ring the driver pushes on, or, under an axle that is pushed, which ring is backed. */
  readonly ring: 'outer' | 'inner' | 'both';
  readonly why: 'tight-in-seat' | 'tight-on-axle' | 'both-tight' | 'stopped-by-spacer';
  /** Seat, or the axle. */
  readonly into: string;
  readonly driver: DriverSize;
  /** Drivers on the wall that fit; null where the workshop has none written. */
  readonly onWall: readonly string[] | null;
  /** Diameter that centres the driver in the bore of the bearing, mm. */
  readonly pilot: { readonly from: number; readonly to: number; readonly by: 'axle' | 'pin' };
  /** Fit along the way in, from the mouth. */
  readonly path: readonly PathSegment[];
  /** Where the fit goes loose and tightens again, mm from the mouth. */
  readonly relief: { readonly from: number; readonly to: number } | null;
  /** How far the outer face of the ring ends below the face of the housing, mm; negative where it stands proud. */
  readonly below: number | null;
  readonly force: PressForce;
  readonly warming: Warming | null;
  readonly compound: boolean;
  readonly support: readonly Support[];
  /** What ends the press, and the part its inner ring comes to touch. */
  readonly stop: 'shoulder' | 'spacer' | 'ring' | 'bearing' | 'axle';
  readonly touches: string | null;
}

/** One bearing brought out of its seat or off its axle. */
export interface PressedOut {
  readonly bearing: string;
  readonly from: string;
  readonly ring: 'outer' | 'inner' | 'both';
  readonly reach: Reach | { readonly by: 'inner-ring'; readonly bare: number };
  /** The force goes through its balls: it is not used again. */
  readonly scrap: boolean;
  /** Retaining rings of its seat: they are out before any force is used. */
  readonly ringsFirst: readonly string[];
  readonly relief: { readonly from: number; readonly to: number } | null;
  readonly force: PressForce;
  readonly compound: boolean;
  readonly support: Support | null;
}

/** One step of the work, as data; the words are made by whoever shows it. */
export type Step = Moved &
  (
    | { readonly kind: 'slide-off' | 'slide-on' }
    | { readonly kind: 'unscrew' | 'screw-on'; readonly threads: readonly string[] }
    | {
        readonly kind: 'take-ring-out' | 'put-ring-in';
        readonly seat: string;
        /** Bore the ring is made for, mm. */
        readonly size: number | null;
        /** The bearings it locks in. */
        readonly holds: readonly string[];
      }
    | { readonly kind: 'press-in'; readonly pressed: readonly PressedIn[] }
    | { readonly kind: 'press-out'; readonly pressed: readonly PressedOut[] }
  ) & {
    /** Loose balls that come out, or go in, with it. */
    readonly balls: readonly {
      readonly part: string;
      readonly count: number | null;
      readonly diameter: number | null;
    }[];
  };
