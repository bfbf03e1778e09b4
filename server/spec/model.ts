/**
 * What the readers hand on: the written values of a file, each with its place. Keys are spelled as in the
 * file. A key that was missing or not understood is absent; the problem is reported beside the model.
 */
import type { BesidePart } from './beside-model.ts';
import type { Fields, Placed, SpecPath } from './place.ts';

/** A length or diameter as it is written. All numbers in mm. */
export interface Dimension {
  /** The text of the scalar. */
  readonly written: string;
  /** Drawn nominal; the reading where only a measured value stands. mm */
  readonly nominal: number;
  readonly tolerance: Tolerance;
  /** False when only a measured value stands. */
  readonly drawn: boolean;
  readonly measured: Reading | null;
  readonly unit: 'mm' | 'in';
}

export type Tolerance =
  /** Nothing written: the general tolerance applies where one is set. */
  | { readonly kind: 'none' }
  /** Deviations from nominal, mm. */
  | { readonly kind: 'limits'; readonly lower: number; readonly upper: number }
  /** An ISO 286 class: `N7`, `h6`. */
  | { readonly kind: 'class'; readonly letters: string; readonly grade: number };

/** A measured value, mm; the uncertainty is ± mm, null when the workshop's own applies. */
export interface Reading {
  readonly value: number;
  readonly uncertainty: number | null;
}

/** Any other quantity in its base unit: N, N·mm, kg, °C, MPa, N/mm. */
export interface Quantity {
  readonly written: string;
  readonly value: number;
  readonly unit: 'N' | 'N·mm' | 'kg' | '°C' | 'MPa' | 'N/mm' | 'bar' | 'N·mm²' | '1';
}

/** `-10..45 °C`, in °C. */
export interface TemperatureRange {
  readonly written: string;
  readonly lo: number;
  readonly hi: number;
}

/** `17x26x5`, mm. */
export interface BearingSize {
  readonly written: string;
  readonly bore: number;
  readonly outside: number;
  readonly width: number;
}

/** `13 × 2.778`: how many balls of which diameter, mm. */
export interface BallSet {
  readonly count: number;
  readonly diameter: number;
}

/** Groove radius ÷ ball diameter. */
export interface Groove {
  readonly inner: number;
  readonly outer: number;
}

export type Side = 'left' | 'right';
export type Position = 'front' | 'rear';
export type GeneralTolerance = 'f' | 'm' | 'c';

export const stackKinds = [
  'end-cap',
  'bearing',
  'spacer',
  'shim',
  'washer',
  'collar',
  'adjuster',
  'wave-washer',
  'cone',
  'locknut',
] as const;
export type StackKind = (typeof stackKinds)[number];

/** Every key a part of the stack may have; which kind takes which is the schema's business. */
export interface PartValues {
  length: Dimension;
  face: Dimension;
  outside: Dimension;
  inside: Dimension;
  bore: Dimension;
  spigot: Dimension;
  /** Of an end cap: how long the narrow part with the face is. */
  nose: Dimension;
  socket: Dimension;
  material: string;
  fixing: 'push' | 'thread';
  code: string;
  size: BearingSize;
  /** Ring width of a bearing, drawn or measured, where it differs from the code's. */
  width: Dimension;
  'inner-width': Dimension;
  'inner-outside': Dimension;
  'face-offset': Dimension;
  'back-face': Side;
  /** Degrees. */
  'contact-angle': number;
  'house-code': string;
  seat: string;
  journal: Dimension;
  balls: BallSet;
  groove: Groove;
  count: number;
  travel: Dimension;
  thread: string;
  set: Quantity | Dimension;
  free: Dimension;
  rate: Quantity;
}

export interface StackPart {
  readonly kind: StackKind;
  readonly name: string;
  /** `spacer.centre` */
  readonly address: string;
  /** The item's own path; for a part a variant adds, the path there. */
  readonly path: SpecPath;
  readonly values: Fields<PartValues>;
}

export interface RetainingRingValues {
  side: 'open' | 'blind';
  thickness: Dimension;
  'groove-width': Dimension;
  'groove-from-face': Dimension;
  size: Dimension;
}

export interface SeatValues {
  bore: Dimension;
  depth: Dimension;
  land: Dimension;
  from: Side;
  stop: 'shoulder' | 'spacer' | 'ring';
  fillet: Dimension;
  'shoulder-bore': Dimension;
  compound: boolean;
}

/** A sleeve between shell and outer ring. */
export interface SeatSleeveValues {
  outside: Dimension;
  material: string;
}

export interface Seat {
  readonly name: string;
  /** `shell.left` */
  readonly address: string;
  readonly path: SpecPath;
  readonly values: Fields<SeatValues>;
  readonly ring: { readonly path: SpecPath; readonly values: Fields<RetainingRingValues> } | null;
  readonly sleeve?: { readonly path: SpecPath; readonly values: Fields<SeatSleeveValues> } | null;
}

export interface FlangeValues {
  holes: number;
  circle: Dimension;
  'from-centre': Dimension;
  hole: Dimension;
  thickness: Dimension;
  /** Distance of the two holes of a pair, along the chord; holes are evenly spaced where nothing is written. */
  'pair-distance': Dimension;
  kind: 'straight-pull' | 'bent';
  'head-circle': Dimension;
  'head-setback': Dimension;
  'tension-limit': Quantity;
}

export interface CupValues {
  'ball-circle': Dimension;
  'contact-angle': number;
}

export interface HousingValues {
  material: string;
  outside: Dimension;
  'between-shoulders': Dimension;
  through: Dimension;
  length: Dimension;
  /** Freehub only: the running gap wanted to the shell. */
  gap: Dimension;
}

export type HousingName = 'shell' | 'freehub';

/** A named part of a section: a flange, a cup. */
export interface Named<V> {
  readonly name: string;
  readonly path: SpecPath;
  readonly values: Fields<V>;
}

export interface Housing {
  readonly name: HousingName;
  readonly path: SpecPath;
  readonly values: Fields<HousingValues>;
  readonly seats: readonly Seat[];
  readonly flanges: readonly Named<FlangeValues>[];
  readonly cups: readonly Named<CupValues>[];
}

export interface AxleValues {
  material: string;
  diameter: Dimension;
  bore: Dimension;
  length: Dimension;
}

export interface ClampValues {
  force: Quantity;
  torque: Quantity;
  thread: string;
  friction: number;
  'head-friction': number;
  through: 'stack' | 'axle';
}

export interface DutyValues {
  use: 'road' | 'gravel' | 'off-road' | 'track' | 'city' | 'cargo';
  water: 'dry' | 'rain' | 'mud';
  rider: Quantity;
  /** Bicycle with all it carries. */
  bicycle: Quantity;
  /** Share of the weight on this wheel, 0 to 1. */
  share: number;
  /** What the tyre rolls in one turn. */
  circumference: Dimension;
}

export interface Section<V> {
  readonly path: SpecPath;
  readonly values: Fields<V>;
}

export interface HubValues {
  hub: string;
  revision: string;
  position: Position;
  width: Dimension;
  untoleranced: GeneralTolerance;
  temperature: TemperatureRange;
  service: string;
  notes: string;
}

/** A part changed key by key; the address as written with its place. */
export interface PartChange {
  readonly address: Placed<string>;
  readonly values: Fields<PartValues>;
}

export interface AddedPart {
  readonly part: StackPart;
  readonly after: Placed<string> | null;
  readonly before: Placed<string> | null;
}

export interface Variant {
  readonly name: string;
  readonly path: SpecPath;
  readonly values: Fields<{ width: Dimension; notes: string }>;
  readonly change: readonly PartChange[];
  readonly replace: readonly PartChange[];
  readonly add: readonly AddedPart[];
  readonly remove: readonly Placed<string>[];
  readonly axle: Section<AxleValues> | null;
  readonly clamp: Section<ClampValues> | null;
  readonly shell: Housing | null;
  readonly freehub: Housing | null;
}

export interface Hub extends Section<HubValues> {
  readonly stack: readonly StackPart[];
  readonly beside: readonly BesidePart[];
  readonly shell: Housing | null;
  readonly freehub: Housing | null;
  readonly axle: Section<AxleValues> | null;
  readonly clamp: Section<ClampValues> | null;
  readonly duty: Section<DutyValues> | null;
  readonly variants: readonly Variant[];
}
