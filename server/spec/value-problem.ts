/** A single value that could not be taken as written; the reader gives it a place in the file. */
export interface ValueProblem {
  readonly code: 'dimension-not-understood' | 'decimal-comma' | 'wrong-unit' | 'value-not-understood';
  readonly message: string;
  /** The stretch of the written text it is about, [start, end). */
  readonly at: readonly [number, number];
  /** The whole value written right, where that is plain. */
  readonly suggestion?: string;
}
