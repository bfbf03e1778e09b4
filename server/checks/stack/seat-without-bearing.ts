import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import type { FilledSeat } from '../../assembly/housings.ts';
import type { LinePart } from '../../assembly/line.ts';
import { setValue } from '../../spec/edit.ts';
import type { Check, Draft } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
import { emptySeats } from '../empty-seats.ts';
import { pageHub } from '../page-hub.ts';
import { isSplit, seatsOf } from '../seat-of.ts';

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
  run: (analysis) => eachVariant(analysis, (variant) => withoutBearing(analysis, variant)),
};

function* withoutBearing(analysis: Analysis, variant: VariantAnalysis): Iterable<Draft> {
  const { bearings } = variant.assembly;
  const count =
    bearings.length === 1
      ? 'one bearing, in another seat'
      : `${bearings.length} bearings, each in another seat`;
  for (const empty of emptySeats(variant)) {
    const { seat, address } = empty;
    const strayed = strayedFrom(empty, variant);
    if (strayed) {
      yield inTheWrongSeat(analysis, strayed, address);
      continue;
    }
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

interface Strayed {
  readonly bearing: LinePart;
  readonly other: LinePart;
  readonly seat: FilledSeat;
}

/** The bearing that was meant for an empty seat: one of two in another seat with a part of the stack between them. */
function strayedFrom(empty: FilledSeat, variant: VariantAnalysis): Strayed | null {
  for (const seat of seatsOf(variant)) {
    const [first, second] = seat.bearings;
    if (seat.bearings.length !== 2 || !first || !second || !isSplit(seat, variant.assembly.line)) continue;
    const [bearing, other] = empty.from === 'left' ? [first, second] : [second, first];
    return { bearing, other, seat };
  }
  return null;
}

function inTheWrongSeat(analysis: Analysis, { bearing, other, seat }: Strayed, empty: string): Draft {
  const path = bearing.part.values.seat?.path ?? bearing.part.path;
  return {
    path,
    message: `${bearing.address} and ${other.address} both name ${seat.address} with parts between them, and no bearing stands in ${empty} — change the seat of ${bearing.address} to ${empty}`,
    related: [
      {
        path: other.part.values.seat?.path ?? other.part.path,
        message: `${other.address} stands in ${seat.address}`,
      },
      { path: seat.seat.path, part: 'key', message: `${seat.address} here` },
    ],
    data: { seat: empty, bearing: bearing.address },
    fixes: [
      {
        title: `Change the seat of ${bearing.address} to ${empty}`,
        changes: setValue(analysis.spec, path, empty),
        preferred: true,
      },
    ],
  };
}
