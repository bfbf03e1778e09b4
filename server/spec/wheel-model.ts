/** What the reader of a wheel file hands on; `model.ts` has the hub. Lengths in mm, forces in N, masses in kg. */
import type { Dimension, Quantity, Section, Side } from './model.ts';
import type { Placed } from './place.ts';

export interface WheelValues {
  wheel: string;
  hub: string;
  variant: string;
  notes: string;
}

export interface RimValues {
  'bead-seat': Dimension;
  /** Effective rim diameter, to where `erd-to` says. */
  erd: Dimension;
  'erd-to': 'nipple-seat' | 'slot-bottom' | 'nipple-top';
  holes: number;
  /** `2:1`: every third hole belongs to the side with fewer spokes. */
  drilling: 'even' | 'paired' | '2:1';
  /** Distance of the two holes of a pair, along the chord. */
  'pair-distance': Dimension;
  /** Of the line of holes from the plane the rim is centred on, towards the left positive. */
  offset: Dimension;
  /** Of each side's holes from that line, towards their own flange positive. */
  'hole-offset': Dimension;
  'hole-diameter': Dimension;
  mass: Quantity;
  'tension-limit': Quantity;
  'pressure-limit': Quantity;
  material: string;
  /** mm² */
  area: number;
  /** N·mm² */
  'radial-stiffness': Quantity;
  'lateral-stiffness': Quantity;
  'torsional-stiffness': Quantity;
}

export interface LacingValues {
  crosses: number;
  heads: 'alternate' | 'in' | 'out';
  /** Whether the last crossing goes under the other spoke. */
  interlaced: boolean;
  /** The spokes whose heads look inwards, so that they run outside the flange. */
  outside: 'leading' | 'trailing';
  /** Which hole of a pair a spoke goes to: the one that widens or narrows the angle between hub and rim hole. */
  phase: 'wider' | 'narrower';
}

export interface SpokeValues {
  length: Dimension;
  /** Where spokes with the head in, or out, have a length of their own. */
  'head-in-length': Dimension;
  'head-out-length': Dimension;
  profile: SpokeProfile;
  material: string;
  thread: 'FG 2' | 'FG 2.3' | 'FG 2.6';
  'thread-length': Dimension;
  'tension-limit': Quantity;
}

/** Diameters from head to thread, mm; of a bladed spoke the width and thickness of its blade. */
export interface SpokeProfile {
  readonly written: string;
  /** One, two or three diameters: head, middle, thread end. */
  readonly diameters: readonly number[];
  readonly blade: { readonly width: number; readonly thickness: number } | null;
}

export interface NippleValues {
  length: Dimension;
  material: string;
  /** From the face that rests on the rim to the bottom of the slot. */
  'seat-to-slot': Dimension;
  washer: Dimension;
}

/** A tension with how far it may stray, N. */
export interface TensionWanted extends Quantity {
  readonly spread: number | null;
}

export interface TensionValues {
  side: Side;
  value: TensionWanted;
}

export interface TyreValues {
  width: Dimension;
  pressure: Quantity;
}

export interface RiderValues {
  mass: Quantity;
  /** Share of the weight of rider and bicycle on this wheel. */
  share: number;
  bicycle: Quantity;
  'side-force': Quantity;
}

/** One of each side; null where nothing stands. */
export type BothSides<T> = Readonly<Record<Side, T | null>>;

/** Tensions as a meter read them, N, one a spoke from the valve on. */
export type MeasuredTensions = BothSides<Placed<readonly number[]>>;

export interface Wheel extends Section<WheelValues> {
  readonly rim: Section<RimValues> | null;
  readonly lacing: BothSides<Section<LacingValues>>;
  readonly spokes: BothSides<Section<SpokeValues>>;
  readonly nipples: Section<NippleValues> | null;
  readonly tension: Section<TensionValues> | null;
  readonly measured: MeasuredTensions;
  readonly tyre: Section<TyreValues> | null;
  readonly rider: Section<RiderValues> | null;
}
