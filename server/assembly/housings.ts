import type { Housing, HousingName, Seat, Side } from '../spec/model.ts';
import type { LinePart } from './line.ts';
import { gather, type LoopTerm, type TermOrMissing, term, termOf } from './loop.ts';
import { type SettlingRules, settle } from './settle.ts';

/** A seat with the bearings that stand in it, left to right. */
export interface FilledSeat {
  readonly seat: Seat;
  readonly address: string;
  readonly housing: HousingName;
  /** The side its bearings are pressed in from. */
  readonly from: Side;
  readonly fromAssumed: boolean;
  readonly stop: 'shoulder' | 'spacer' | 'ring';
  /** The side of its bearings the stop stands on: the bottom of the seat, or its open side for a ring there. */
  readonly stopSide: Side;
  readonly bearings: readonly LinePart[];
  /** The bearing that touches the stop. */
  readonly contact: LinePart | null;
}

export interface FilledHousing {
  readonly housing: Housing;
  readonly seats: readonly FilledSeat[];
  /** Nominal end faces along the axle, mm; null where the dimensions do not tell. */
  readonly ends: { readonly left: number | null; readonly right: number | null };
}

/** Puts the bearings of the line into the seats of a housing. */
export function fillHousing(
  housing: Housing,
  line: readonly LinePart[],
  rules: SettlingRules,
): FilledHousing {
  const seats = housing.seats.map((seat, index) => fillSeat(housing, seat, index, line));
  return { housing, seats, ends: endFaces(housing, seats, rules) };
}

function fillSeat(housing: Housing, seat: Seat, index: number, line: readonly LinePart[]): FilledSeat {
  const written = seat.values.from?.value;
  const from = written ?? nearerSide(seat, index, housing.seats.length);
  const bearings = line.filter(
    ({ part }) => part.kind === 'bearing' && part.values.seat?.value === seat.address,
  );
  const stop = seat.values.stop?.value ?? 'shoulder';
  const isInMouth = stop === 'ring' && seat.ring?.values.side?.value === 'open';
  const stopSide = (from === 'left') === isInMouth ? 'left' : 'right';
  const contact = (stopSide === 'right' ? bearings.at(-1) : bearings[0]) ?? null;
  return {
    seat,
    address: seat.address,
    housing: housing.name,
    from,
    fromAssumed: written === undefined,
    stop,
    stopSide,
    bearings,
    contact,
  };
}

/** A seat without `from` is pressed in from the side it is nearer to: by its name, else by its order. */
function nearerSide(seat: Seat, index: number, count: number): Side {
  if (seat.name === 'left' || seat.name === 'right') return seat.name;
  return index < count / 2 ? 'left' : 'right';
}

/** A dimension of a housing as a term of a loop. */
export function housingTerm(
  housing: Housing,
  key: 'between-shoulders' | 'length' | 'gap',
  rules: SettlingRules,
  sign: 1 | -1 = 1,
): TermOrMissing {
  const placed = housing.values[key];
  return termOf(
    placed,
    placed ? settle(placed, rules) : null,
    { address: `${housing.name}.${key}`, key, path: housing.path },
    sign,
  );
}

/** The depth of a seat as a term of a loop. */
export function depthTerm(filled: FilledSeat, rules: SettlingRules, sign: 1 | -1 = 1): TermOrMissing {
  const placed = filled.seat.values.depth;
  const at = { address: filled.address, key: 'depth', path: filled.seat.path };
  return termOf(placed, placed ? settle(placed, rules) : null, at, sign);
}

/**
 * From the end face of the housing to the stop: the depth of the seat; of a ring in its mouth, the far face of that
 * ring where its groove and thickness are written.
 */
export function stopTerms(
  filled: FilledSeat,
  rules: SettlingRules,
  sign: 1 | -1 = 1,
): readonly TermOrMissing[] {
  const { from, stopSide, seat, address } = filled;
  const groove = seat.ring?.values['groove-from-face'];
  const thickness = seat.ring?.values.thickness;
  if (stopSide !== from || !groove || !thickness) return [depthTerm(filled, rules, sign)];
  const ring = `${address}.retaining-ring`;
  return [
    term(ring, 'groove-from-face', sign, settle(groove, rules)),
    term(ring, 'thickness', sign, settle(thickness, rules)),
  ];
}

/** Nominal place of the stop a seat's contact bearing touches, mm from the left dropout face. */
export function stopFace(filled: FilledSeat): number | null {
  const at = filled.contact?.at;
  if (!at) return null;
  return filled.stopSide === 'right' ? at.right : at.left;
}

function endFaces(
  housing: Housing,
  seats: readonly FilledSeat[],
  rules: SettlingRules,
): FilledHousing['ends'] {
  const end = (side: Side): number | null => {
    const filled = seats.find((seat) => seat.from === side && seat.contact);
    const stop = filled ? stopFace(filled) : null;
    const { terms, missing } = gather(filled ? stopTerms(filled, rules) : []);
    if (stop === null || 0 < missing.length) return null;
    const depth = terms.reduce((sum, item) => sum + nominal(item), 0);
    return side === 'left' ? stop - depth : stop + depth;
  };
  const [left, right] = [end('left'), end('right')];
  const length = housingTerm(housing, 'length', rules);
  if (!length.settled) return { left, right };
  return {
    left: left ?? (right === null ? null : right - nominal(length)),
    right: right ?? (left === null ? null : left + nominal(length)),
  };
}

const nominal = (item: LoopTerm): number => item.settled.drawn.nominal;
