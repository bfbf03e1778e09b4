import type { StackPart } from '../spec/model.ts';
import type { Placed, SpecPath } from '../spec/place.ts';
import type { Settled } from './settle.ts';

/** One dimension in a loop, with the way it enters. */
export interface LoopTerm {
  /** What a person calls it: `spacer.centre`, `bearing.left`, `shell.between-shoulders`. */
  readonly address: string;
  /** The key it stands under: `length`, `code`, `depth`. */
  readonly key: string;
  readonly sign: 1 | -1;
  /** How many such parts lie in the line. */
  readonly count: number;
  readonly settled: Settled;
  /** Path of the written value. */
  readonly path: SpecPath;
}

/** A dimension that a loop needs and nobody wrote. */
export interface MissingTerm {
  /** Tells a missing term from one that is there. */
  readonly settled?: undefined;
  readonly address: string;
  readonly key: string;
  /** Section the key belongs to. */
  readonly path: SpecPath;
}

/** What a loop should come to, mm. */
export interface Wanted {
  readonly nominal: number;
  readonly lo: number;
  readonly hi: number;
  readonly path: SpecPath;
  /** Said where the limits are not written. */
  readonly assumed: string | null;
}

/** A closed chain of dimensions; open, and unchecked, while terms are missing. */
export interface Loop {
  readonly terms: readonly LoopTerm[];
  readonly missing: readonly MissingTerm[];
  readonly wanted: Wanted | null;
}

/** The clamped line from dropout face to dropout face. */
export interface WidthLoop extends Loop {
  readonly kind: 'width';
}

/** Two located bearings in one housing: inner distance P against outer distance S. */
/** A part that is set by hand, or that springs: the distance of the inner rings follows from it. */
export interface SetBy {
  readonly kind: 'adjuster' | 'spring';
  readonly part: StackPart;
  /** Between the two inner rings, or outside of them, where it pushes them together. */
  readonly where: 'between' | 'beside';
}

export interface PairLoop extends Loop {
  readonly kind: 'pair';
  readonly housing: 'shell' | 'freehub';
  /** Addresses of the two bearings that touch the stops, left first. */
  readonly bearings: readonly [string, string];
  /** Every address from one bearing to the other along the inner rings. */
  readonly inner: readonly LoopTerm[];
  readonly outer: readonly LoopTerm[];
  /** Stops that hold the outer rings apart, seats that only the spacer locates, or outer rings that touch. */
  readonly located: 'shoulders' | 'spacer' | 'side-by-side';
  /** What sets the inner distance in place of a fixed length; null where the parts between the rings do. */
  readonly setBy: SetBy | null;
}

/** How far a seat is deeper than the rings in it: positive is recessed, negative proud. */
export interface SeatLoop extends Loop {
  readonly kind: 'seat';
  /** `shell.left` */
  readonly seat: string;
  readonly bearings: readonly string[];
}

/** A gap that must stay open while the wheel turns, or that a ring needs. */
export interface GapLoop extends Loop {
  readonly kind: 'gap';
  readonly between: readonly [string, string];
  readonly role: 'running' | 'retaining-ring' | 'axle-end' | 'end-cap' | 'beside';
}

/** The written value as a term. */
export function term(address: string, key: string, sign: 1 | -1, settled: Settled, count = 1): LoopTerm {
  return { address, key, sign, count, settled, path: settled.path };
}

/** A value that is there, or the note that it is missing. */
export type TermOrMissing = LoopTerm | MissingTerm;

export function isMissing(item: TermOrMissing): item is MissingTerm {
  return item.settled === undefined;
}

/** Splits what is there from what is missing. */
export function gather(items: readonly TermOrMissing[]): {
  readonly terms: readonly LoopTerm[];
  readonly missing: readonly MissingTerm[];
} {
  return {
    terms: items.filter((item): item is LoopTerm => !isMissing(item)),
    missing: items.filter(isMissing),
  };
}

/** The same term entering the other way round. */
export function negate(item: TermOrMissing): TermOrMissing {
  if (isMissing(item)) return item;
  const sign: 1 | -1 = item.sign === 1 ? -1 : 1;
  return { ...item, sign };
}

/** A written dimension as a term, or its absence. */
export function termOf(
  placed: Placed<unknown> | undefined,
  settled: Settled | null,
  at: { readonly address: string; readonly key: string; readonly path: SpecPath },
  sign: 1 | -1 = 1,
  count = 1,
): TermOrMissing {
  if (!placed || !settled) return at;
  return term(at.address, at.key, sign, settled, count);
}
