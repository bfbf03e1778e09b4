/** Parts that stand beside the clamped line; `model.ts` has the rest of the hub. */
import type { Dimension } from './model.ts';
import type { Fields, SpecPath } from './place.ts';

export const besideKinds = ['seal', 'cover', 'rotor-face', 'driver-face'] as const;
export type BesideKind = (typeof besideKinds)[number];

/** `14.2 ±0.1`, or `2.5 from bearing.left`: where a part beside the stack begins. */
export interface BesidePlace {
  readonly distance: Dimension;
  /** Address of the part whose left face it is measured from; null: the left dropout face. */
  readonly from: string | null;
}

export interface BesideValues {
  at: BesidePlace;
  length: Dimension;
  outside: Dimension;
  inside: Dimension;
  /** Address of what it runs against. */
  to: string;
  /** The running gap wanted to it. */
  gap: Dimension;
  material: string;
}

export interface BesidePart {
  readonly kind: BesideKind;
  readonly name: string;
  readonly address: string;
  readonly path: SpecPath;
  readonly values: Fields<BesideValues>;
}
