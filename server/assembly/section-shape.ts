import type { DecodedBearing } from '../engine/bearings/decoded-bearing.ts';
import type { BesideKind } from '../spec/beside-model.ts';
import type { Side, StackKind } from '../spec/model.ts';
import type { SpecPath } from '../spec/place.ts';

/** A length of a part over which its diameters do not change. All in mm. */
export interface Step {
  readonly left: number;
  readonly right: number;
  /** Diameter of the hole; 0 where the part is solid. */
  readonly inside: number;
  readonly outside: number;
  /** Diameters that nobody wrote. */
  readonly guessed?: { readonly inside?: boolean; readonly outside?: boolean };
}

export type SectionKind = StackKind | BesideKind | 'shell' | 'freehub' | 'axle' | 'retaining-ring';

/** The rings, balls and closures of a bearing as they stand in the section. */
export interface BearingSection {
  /** Null where neither code nor size could be read: the rest is then a guess. */
  readonly decoded: DecodedBearing | null;
  readonly inner: Step;
  readonly outer: Step;
  /** Diameter of the ball circle, of the balls, and the place of each row along the axle, mm. */
  readonly balls: { readonly circle: number; readonly diameter: number; readonly rows: readonly number[] };
  /** Smallest chamfer of the rings, mm. */
  readonly chamfer: number;
  readonly closed: { readonly left: boolean; readonly right: boolean };
  /** Side the contact lines open to, for an angular contact bearing. */
  readonly backFace: Side | null;
  /** rad */
  readonly contactAngle: number | null;
}

/** A spoke hole through a flange: where its axis crosses, mm. */
export interface SpokeHole {
  readonly at: number;
  readonly thickness: number;
  readonly circle: number;
  readonly hole: number;
}

/** One part in the section. */
export interface SectionPart {
  readonly address: string;
  readonly kind: SectionKind;
  readonly path: SpecPath;
  readonly left: number;
  readonly right: number;
  /** The length is a guess: the part is drawn broken. */
  readonly broken: boolean;
  /** Left to right, each beginning where the last ends. */
  readonly steps: readonly Step[];
  /** More of the same piece outside of its steps: a flange beyond its spoke hole. */
  readonly detached: readonly Step[];
  readonly bearing: BearingSection | null;
  readonly spokeHoles: readonly SpokeHole[];
  /** Turned from the axle itself: no line stands between the two. */
  readonly ofAxle: boolean;
  /** Ball circle, ball diameter and place of the balls of a cone, mm. */
  readonly coneBall: {
    readonly circle: number;
    readonly diameter: number;
    readonly at: number;
    readonly inward: Side;
  } | null;
  /** Splines: diameter of their tips, mm. */
  readonly splineTip: number | null;
}

/** A part with the fields most parts leave empty. */
export function plainPart(
  part: Pick<SectionPart, 'address' | 'kind' | 'path' | 'left' | 'right' | 'steps'> & Partial<SectionPart>,
): SectionPart {
  return {
    broken: false,
    detached: [],
    bearing: null,
    spokeHoles: [],
    ofAxle: false,
    coneBall: null,
    splineTip: null,
    ...part,
  };
}

/** Takes note of something assumed. */
export type Say = (assumption: string) => void;
