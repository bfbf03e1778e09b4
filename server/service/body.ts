import type { SectionKind, SectionPart, Step } from '../assembly/section-shape.ts';
import type { Side } from '../spec/model.ts';
import type { SpecPath } from '../spec/place.ts';

/** A length of a body over which its diameters do not change, mm. */
export interface Tube {
  readonly left: number;
  readonly right: number;
  readonly inside: number;
  readonly outside: number;
}

/** A piece that moves as one along the axle: what the order of work is found with. */
export interface Body {
  /** `bearing.left`, `shell`, `freehub.right.retaining-ring`, `axle` with its collars. */
  readonly address: string;
  readonly kind: SectionKind;
  readonly path: SpecPath;
  readonly tubes: readonly Tube[];
  /** Addresses of parts that are one piece with it: the collars of an axle. */
  readonly with: readonly string[];
  /** A retaining ring as the pliers hold it: squeezed so far that it passes the bore. */
  readonly squeezed: Tube | null;
  /** The part it was cut from. */
  readonly part: SectionPart;
}

/** The other side. */
export const opposite = (side: Side): Side => (side === 'left' ? 'right' : 'left');

/** Where a body begins and ends, mm. */
export function spanOf(tubes: readonly Tube[]): { readonly left: number; readonly right: number } {
  return {
    left: Math.min(...tubes.map(({ left }) => left)),
    right: Math.max(...tubes.map(({ right }) => right)),
  };
}

/** Only the geometry of a drawn step. */
export const tubeOf = ({ left, right, inside, outside }: Step): Tube => ({ left, right, inside, outside });
