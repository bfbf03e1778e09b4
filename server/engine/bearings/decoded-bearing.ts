/** Geometry of the raceways. */
export type BearingKind = 'deep-groove' | 'angular-contact' | 'double-row-angular-contact';

/** What closes the bearing at its sides. */
export type Closure = 'open' | 'shield' | 'seal';

/** Tolerance classes of ISO 492. */
export type ToleranceClass = 'Normal' | '6' | '5' | '4' | '2';

/** Radial internal clearance before mounting; limits in µm, null when no table has them. */
export interface ClearanceGroup {
  readonly group: string;
  readonly minUm: number | null;
  readonly maxUm: number | null;
}

/** The balls of one bearing; diameter in mm. */
export interface BallSet {
  readonly count: number;
  readonly diameter: number;
  readonly source: string;
}

/** A suffix to which makers give different meanings; the first meaning is the one taken. */
export interface AmbiguousSuffix {
  readonly suffix: string;
  readonly meanings: readonly string[];
}

/** Everything a code, or a size, says about a bearing. Lengths in mm, ratings in N, angles in degrees. */
export interface DecodedBearing {
  /** The code as written. */
  readonly code: string;
  /** The basic number as written, without what stands before and after it. */
  readonly basic: string;
  /** One spelling for one bearing: '61902-2RS'. */
  readonly normalised: string;
  readonly kind: BearingKind;
  readonly bore: number;
  readonly outside: number;
  /** Width with the closure written; without one, the open width. */
  readonly width: number;
  readonly widthOpen: number | null;
  readonly widthClosed: number | null;
  /** Closed widths that makers differ on, narrow and wide; empty where they agree. */
  readonly disputedWidths: readonly number[];
  /** Smallest chamfer r_s min. */
  readonly chamferMin: number | null;
  readonly closure: Closure;
  readonly closedSides: 0 | 1 | 2;
  /** Whether a lip rubs; null where makers differ so that it cannot be told. */
  readonly rubs: boolean | null;
  readonly clearance: ClearanceGroup;
  readonly toleranceClass: ToleranceClass;
  readonly material: 'steel' | 'stainless' | 'hybrid' | 'unknown';
  readonly fullComplement: boolean;
  readonly cage: string | null;
  readonly contactAngle: number | null;
  readonly dynamicRating: number | null;
  readonly staticRating: number | null;
  readonly balls: BallSet | null;
  /** How the size was found. */
  readonly basis: 'iso-rule' | 'table' | 'digits' | 'size' | 'inch';
  /** For an old or odd spelling, the present-day code of the same bearing. */
  readonly standardEquivalent: string | null;
  readonly ambiguousSuffixes: readonly AmbiguousSuffix[];
  /** Readable, one for each family of facts. */
  readonly sources: readonly string[];
  /** Sentences: what differs between makers, what was assumed. */
  readonly notes: readonly string[];
}

/** A code that could not be read. */
export interface NotDecoded {
  readonly code: string;
  readonly error: string;
  readonly didYouMean: readonly { readonly code: string; readonly size: string }[];
  /** The part that could not be read, [start, end) within the code. */
  readonly at: readonly [number, number];
}
