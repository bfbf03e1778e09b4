/** Where something stands in a spec file. */

/** Keys and indices from the top of the file to a value: `['stack', 0, 'length']`. */
export type SpecPath = readonly (string | number)[];

/** A stretch of text, UTF-16 offsets, the end not included. */
export interface Span {
  readonly start: number;
  readonly end: number;
}

/** A value together with the path it was read from; a variant's change keeps its own path. */
export interface Placed<T> {
  readonly value: T;
  readonly path: SpecPath;
}

/** The keys of a section that were written and understood; anything else is absent. */
export type Fields<V> = { readonly [K in keyof V]?: Placed<V[K]> };
