import { sources } from '../base/sources.ts';
import {
  type DeviationRow,
  type Iso492Class,
  iso492Source,
  meanBoreDeviation,
  meanOutsideDeviation,
  ringWidthDeviation,
} from '../tables/iso492-deviations.ts';
import type { DecodedBearing } from './decoded-bearing.ts';

/** Lower and upper deviation from the nominal, mm. */
export interface Deviation {
  readonly lower: number;
  readonly upper: number;
}

/** Deviations of the rings of a bearing, mm. */
export interface RingDeviations {
  /** Mean bore diameter. */
  readonly bore: Deviation;
  /** Mean outside diameter. */
  readonly outside: Deviation;
  /** Width of one ring; it holds for both rings. */
  readonly width: Deviation;
  /** The ISO 492 class whose limits these are. */
  readonly class: Iso492Class;
  readonly source: string;
}

/**
 * ISO 492 limits of a bearing's rings by its class, mm. A class or a size range that the tables do not hold is read
 * as class Normal, and the source says so.
 */
export function ringDeviations(
  bearing: Pick<DecodedBearing, 'bore' | 'outside' | 'toleranceClass'>,
): RingDeviations {
  const wanted = bearing.toleranceClass;
  const title = sources[iso492Source].title;
  const own = wanted === '2' ? null : limits(bearing, wanted);
  if (own) return { ...own, class: wanted as Iso492Class, source: `${title}, class ${wanted}` };
  const normal = limits(bearing, 'Normal') ?? outsideTables();
  const why =
    wanted === 'Normal' ? 'nearest size range' : `taken for class ${wanted}, which the tables do not hold`;
  return { ...normal, class: 'Normal', source: `${title}, class Normal, ${why}` };
}

function limits(
  bearing: Pick<DecodedBearing, 'bore' | 'outside'>,
  name: Iso492Class,
): Pick<RingDeviations, 'bore' | 'outside' | 'width'> | null {
  const bore = inRange(meanBoreDeviation[name], bearing.bore);
  const outside = inRange(meanOutsideDeviation[name], bearing.outside);
  const width = inRange(ringWidthDeviation[name], bearing.bore);
  return bore && outside && width ? { bore, outside, width } : null;
}

function inRange(rows: readonly DeviationRow[], size: number): Deviation | null {
  const row = rows.find(([over, upTo]) => over < size && size <= upTo);
  return row ? { lower: row[2] / 1000, upper: row[3] / 1000 } : null;
}

/** Limits of the largest range, for sizes that a `size:` may give and no table reaches. */
function outsideTables(): Pick<RingDeviations, 'bore' | 'outside' | 'width'> {
  const last = (rows: readonly DeviationRow[]): Deviation => {
    const row = rows[rows.length - 1];
    return { lower: (row?.[2] ?? 0) / 1000, upper: (row?.[3] ?? 0) / 1000 };
  };
  return {
    bore: last(meanBoreDeviation.Normal),
    outside: last(meanOutsideDeviation.Normal),
    width: last(ringWidthDeviation.Normal),
  };
}
