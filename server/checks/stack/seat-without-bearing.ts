import type { VariantAnalysis } from '../../analysis/analyze.ts';
import type { Check, Draft } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
import { emptySeats } from '../empty-seats.ts';
import { pageHub } from '../page-hub.ts';

/** A seat is written that no bearing stands in. */
export const seatWithoutBearing: Check = {
  code: 'seat-without-bearing',
  group: 'stack',
  severity: 'warning',
  summary: 'A seat is written that no bearing stands in.',
  page: {
    why: 'An empty seat is a bearing that nobody orders. Either the stack lacks a bearing, or a bearing names another seat than it should.',
    bad: pageHub(['  - bearing: right\n    code: 6803-2RS\n    seat: shell.right\n', '']),
    good: pageHub(),
    sources: ['common practice'],
  },
  run: (analysis) => eachVariant(analysis, withoutBearing),
};

function* withoutBearing(variant: VariantAnalysis): Iterable<Draft> {
  const { bearings } = variant.assembly;
  const count =
    bearings.length === 1
      ? 'one bearing, in another seat'
      : `${bearings.length} bearings, each in another seat`;
  for (const { seat, address } of emptySeats(variant)) {
    yield {
      path: seat.path,
      part: 'key',
      message: `no bearing stands in ${address}: the stack has ${count} — add the one that belongs here, or remove the seat`,
      related: bearings.map(({ part, address: bearing }) => ({
        path: part.values.seat?.path ?? part.path,
        message: `${bearing} stands in ${part.values.seat?.value}`,
      })),
      data: { seat: address, bearings: bearings.length },
    };
  }
}
