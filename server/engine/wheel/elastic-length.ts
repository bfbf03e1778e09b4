import { type SpokeLine, spokeSpan } from './spoke-line.ts';
import { stretch } from './spoke-wire.ts';

/** What tension does to the length a spoke must be cut to. */
export interface ElasticLength {
  /** How far the rim draws in, mm; 0 where its section is not known. */
  readonly shrinkage: number;
  /** How far the spoke stretches, mm. */
  readonly stretch: number;
  /** Length without tension, mm, for a rim measured without tension. */
  readonly length: number;
}

/**
 * Length to cut so that the end stands where it is wanted at `tension`: the line to the rim drawn in by `shrinkage`
 * (mm), less the stretch of the wire. `hole` as for `spokeLength`, `axial` EA in N.
 */
export function elasticLength(
  line: SpokeLine,
  hole: number,
  given: { readonly tension: number; readonly axial: number; readonly shrinkage: number },
): ElasticLength {
  const longer = stretch(given.tension, spokeSpan(line), given.axial);
  const drawnIn = spokeSpan({ ...line, rimRadius: line.rimRadius - given.shrinkage });
  return { shrinkage: given.shrinkage, stretch: longer, length: drawnIn - longer - hole / 2 };
}
