import type { VariantAnalysis } from '../analysis/analyze.ts';
import type { FilledSeat } from '../assembly/housings.ts';
import { seatsOf } from './seat-of.ts';

/**
 * Seats for which the stack lacks a bearing. None while a bearing names no seat, or one that is not there: that
 * bearing is then the cause, and said elsewhere. A cup-and-cone hub has no cartridge bearings to seat.
 */
export function emptySeats(variant: VariantAnalysis): readonly FilledSeat[] {
  const { bearings, hub } = variant.assembly;
  const seats = seatsOf(variant);
  const known = new Set(seats.map(({ address }) => address));
  if (bearings.some(({ part }) => !part.values.seat || !known.has(part.values.seat.value))) return [];
  if (bearings.length === 0 || hub.stack.some(({ kind }) => kind === 'cone')) return [];
  return seats.filter((seat) => seat.bearings.length === 0);
}
