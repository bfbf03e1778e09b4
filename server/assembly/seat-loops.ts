import { depthTerm, type FilledHousing, type FilledSeat, stopTerms } from './housings.ts';
import { type GapLoop, gather, type SeatLoop, type TermOrMissing, term } from './loop.ts';
import { type SettlingRules, settle } from './settle.ts';

/** Depth of each filled seat against the outer rings in it. */
export function seatLoops(filled: FilledHousing, rules: SettlingRules): readonly SeatLoop[] {
  return filled.seats
    .filter((seat) => seat.bearings.length > 0 && seat.seat.values.depth && seat.stopSide !== seat.from)
    .map((seat) => ({
      kind: 'seat',
      seat: seat.address,
      bearings: seat.bearings.map((part) => part.address),
      wanted: null,
      ...gather([depthTerm(seat, rules), ...ringTerms(seat)]),
    }));
}

/**
 * The room a retaining ring has between the wall of its groove and the bearing.
 *
 *   end face │←── groove-from-face ──→│ring│ room │ bearing │ stop
 *            │←──────────────── depth ───────────────────→│
 *
 * Where the ring is the stop itself no room is left over.
 */
export function retainingRingLoops(filled: FilledHousing, rules: SettlingRules): readonly GapLoop[] {
  return filled.seats.flatMap((seat): readonly GapLoop[] => {
    const ring = seat.seat.ring;
    if (
      !ring ||
      ring.values.side?.value === 'blind' ||
      seat.stopSide === seat.from ||
      seat.bearings.length === 0
    )
      return [];
    const items: TermOrMissing[] = [depthTerm(seat, rules), ...ringTerms(seat)];
    for (const key of ['groove-from-face', 'thickness'] as const) {
      const placed = ring.values[key];
      const address = `${seat.address}.retaining-ring`;
      items.push(placed ? term(address, key, -1, settle(placed, rules)) : { address, key, path: ring.path });
    }
    const outermost = seat.from === 'left' ? seat.bearings[0] : seat.bearings.at(-1);
    const between = [`${seat.address}.retaining-ring`, outermost?.address ?? seat.address] as const;
    return [{ kind: 'gap', role: 'retaining-ring', between, wanted: null, ...gather(items) }];
  });
}

/** How far the outermost ring stands inside the end face: what the rings leave of the depth, or the stop in the mouth. */
export function recessOf(seat: FilledSeat, rules: SettlingRules): readonly TermOrMissing[] {
  return seat.stopSide === seat.from ? stopTerms(seat, rules) : [...ringTerms(seat), depthTerm(seat, rules)];
}

/** Outer rings that stand in a seat, each taking from its depth. */
export function ringTerms(seat: FilledSeat): readonly TermOrMissing[] {
  return seat.bearings.map((part) => {
    const width = part.bearing?.outerWidth;
    const key = part.part.values.width ? 'width' : 'code';
    return width ? term(part.address, key, -1, width) : { address: part.address, key, path: part.part.path };
  });
}
