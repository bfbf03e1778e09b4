import type { VariantAnalysis } from '../../analysis/analyze.ts';
import type { Check, Draft } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
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
  run: (analysis) => eachVariant(analysis, emptySeats),
};

function* emptySeats(variant: VariantAnalysis): Iterable<Draft> {
  const { shell, freehub, bearings, hub } = variant.assembly;
  const known = new Set(
    [shell, freehub].flatMap((housing) => housing?.seats.map(({ address }) => address) ?? []),
  );
  // A bearing that names no seat, or one that is not there, is the cause; its own finding says so.
  if (bearings.some(({ part }) => !part.values.seat || !known.has(part.values.seat.value))) return;
  // A cup-and-cone hub, or a housing drawn before its bearings, has no cartridge bearings to seat.
  if (bearings.length === 0 || hub.stack.some(({ kind }) => kind === 'cone')) return;
  for (const housing of [shell, freehub]) {
    for (const seat of housing?.seats ?? []) {
      if (seat.bearings.length > 0) continue;
      yield {
        path: seat.seat.path,
        part: 'key',
        message: `no bearing stands in ${seat.address}: ${bearings.length} bearings are in the stack — add the one that belongs here, or remove the seat`,
        related: bearings.map(({ part, address }) => ({
          path: part.values.seat?.path ?? part.path,
          message: `${address} stands in ${part.values.seat?.value}`,
        })),
        data: { seat: seat.address, bearings: bearings.length },
      };
    }
  }
}
