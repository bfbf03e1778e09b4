import type { FilledHousing, FilledSeat } from './housings.ts';
import type { LinePart } from './line.ts';
import { type GapLoop, gather, negate, type TermOrMissing, term } from './loop.ts';
import { recessOf } from './seat-loops.ts';
import { type SettlingRules, settle } from './settle.ts';

/**
 * The gap between the wide part of an end cap and the face of the housing it stands before.
 *
 *    cap ▐████▌ outside
 *        ▐████▌│gap│┌── housing
 *        ▐███████nose▐ bearing      gap = nose + shims + rings − depth
 *
 * Only where the cap is wider than the bore of the seat; without a written nose the gap is unchecked.
 */
export function endCapGaps(
  filled: FilledHousing,
  line: readonly LinePart[],
  rules: SettlingRules,
  leastGap: number,
): readonly GapLoop[] {
  return filled.seats.flatMap((seat) => {
    const before = capBefore(seat, line);
    const { bore, depth } = seat.seat.values;
    const cap = before?.cap;
    const outside = cap?.part.values.outside?.value.nominal;
    if (!cap || !depth || !bore || outside === undefined || outside <= bore.value.nominal) return [];
    const { nose } = cap.part.values;
    const noseTerm: TermOrMissing = nose
      ? term(cap.address, 'nose', 1, settle(nose, rules))
      : { address: cap.address, key: 'nose', path: cap.part.path };
    const wanted = {
      nominal: leastGap,
      lo: leastGap,
      hi: Number.POSITIVE_INFINITY,
      path: nose?.path ?? cap.part.path,
      assumed: `at least ${leastGap}, the usual running gap`,
    };
    const shims = before.shims.map((part) => part.length);
    const items = [noseTerm, ...shims, ...recessOf(seat, rules).map(negate)];
    return [
      {
        kind: 'gap',
        role: 'end-cap',
        between: [cap.address, filled.housing.name],
        wanted,
        ...gather(items),
      } as const,
    ];
  });
}

/** The end cap before the open side of a seat, and what lies between it and the outermost bearing. */
function capBefore(
  seat: FilledSeat,
  line: readonly LinePart[],
): { readonly cap: LinePart; readonly shims: readonly LinePart[] } | null {
  const outermost = seat.from === 'left' ? seat.bearings[0] : seat.bearings.at(-1);
  if (!outermost) return null;
  const at = line.indexOf(outermost);
  const outwards = seat.from === 'left' ? line.slice(0, at).toReversed() : line.slice(at + 1);
  const index = outwards.findIndex(({ part }) => part.kind === 'end-cap' || part.kind === 'bearing');
  const cap = outwards[index];
  return cap?.part.kind === 'end-cap' ? { cap, shims: outwards.slice(0, index) } : null;
}
