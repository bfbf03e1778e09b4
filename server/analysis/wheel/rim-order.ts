import type { Side } from '../../spec/model.ts';
import type { WheelRim } from './rim-of-wheel.ts';

/** One hole of the rim: whose it is and where, rad from the valve, clockwise as seen from the right. */
export interface RimHole {
  readonly side: Side;
  readonly turn: number;
}

/**
 * Ways the holes of a rim can follow each other from the valve on; the valve stands in the middle between two holes.
 * The side with fewer spokes has every so-many-th hole; which of them comes first depends on the rim.
 */
export function rimOrders(
  rim: Pick<WheelRim, 'drilling' | 'pair' | 'seatRadius'>,
  counts: Readonly<Record<Side, number>>,
): readonly (readonly RimHole[])[] {
  const holes = counts.left + counts.right;
  const pitch = (2 * Math.PI) / holes;
  const few: Side = counts.right < counts.left ? 'right' : 'left';
  const many: Side = few === 'left' ? 'right' : 'left';
  const share = counts[few] / holes;
  const period = 0 < share ? Math.round(1 / share) : 1;
  // A paired rim has the two holes of a pair nearer each other than evenly spaced ones.
  const narrower =
    rim.drilling === 'paired' && 0 < rim.pair
      ? pitch / 2 - Math.asin(Math.min(1, rim.pair / (2 * rim.seatRadius)))
      : 0;
  return Array.from({ length: period }, (_, start) =>
    Array.from({ length: holes }, (_, at): RimHole => {
      const k = at + start;
      const isFew = Math.floor((k + 1) * share + 1e-9) !== Math.floor(k * share + 1e-9);
      const turn = (at + 0.5) * pitch + (at % 2 === 0 ? narrower : -narrower);
      return { side: isFew ? few : many, turn };
    }),
  );
}
