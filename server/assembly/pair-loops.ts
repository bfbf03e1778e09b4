import type { Side } from '../spec/model.ts';
import { type FilledHousing, type FilledSeat, housingTerm, stopTerms } from './housings.ts';
import type { LinePart } from './line.ts';
import { gather, isMissing, type LoopTerm, negate, type PairLoop, type TermOrMissing, term } from './loop.ts';
import { setByHand } from './set-by-hand.ts';
import { type SettlingRules, settle } from './settle.ts';

/**
 * The loops between neighbouring located bearings of one housing.
 *
 *      shoulder       shoulder
 *   ring ▐▌────── P ──────▐▌ ring      P: along the inner rings, face to face
 *        └──────── S ──────┘           S: along the housing, stop to stop
 *
 * δ = P − S. A stop on the far side of its ring brings that ring's width into P.
 */
export function pairLoops(
  filled: FilledHousing,
  line: readonly LinePart[],
  rules: SettlingRules,
): readonly PairLoop[] {
  const seats = filled.seats
    .filter((seat) => seat.contact)
    .sort((a, b) => line.indexOf(a.contact as LinePart) - line.indexOf(b.contact as LinePart));
  const located = seats.filter((seat) => seat.stop !== 'spacer');
  const alone = located.length === 2;
  const across = seats.flatMap((left, index) => {
    const next = seats[index + 1];
    const stopped = left.stop === 'spacer' ? undefined : located[located.indexOf(left) + 1];
    // A bearing that only the spacer locates lies between two that stops hold apart: both pairs count.
    return [next, ...(stopped === next ? [] : [stopped])]
      .filter((right) => right !== undefined)
      .map((right) => acrossPair(filled, left, right, line, rules, alone));
  });
  const beside = seats.flatMap((seat) => sideBySide(filled, seat, line, rules));
  return [...across, ...beside];
}

function acrossPair(
  filled: FilledHousing,
  left: FilledSeat,
  right: FilledSeat,
  line: readonly LinePart[],
  rules: SettlingRules,
  alone: boolean,
): PairLoop {
  const from = left.contact as LinePart;
  const to = right.contact as LinePart;
  const inner: TermOrMissing[] = between(line, from, to).map((part) => part.length);
  // A stop on the far side of its ring: the outer ring stands between it and the other bearing.
  if (left.stopSide === 'left') inner.unshift(...outerRing(from));
  if (right.stopSide === 'right') inner.push(...outerRing(to));
  const base = {
    kind: 'pair',
    housing: filled.housing.name,
    bearings: [from.address, to.address],
    wanted: null,
    setBy: setByHand(line, from, to),
  } as const;
  if (left.stop === 'spacer' || right.stop === 'spacer') {
    // The ring is pressed until it meets the spacer: the housing takes the distance the spacer has.
    const { terms, missing } = gather(inner);
    return { ...base, located: 'spacer', terms: [], inner: terms, outer: [], missing };
  }
  inner.push(
    ...faceOffset(from, 'right', filled, rules),
    ...faceOffset(to, 'left', filled, rules),
    ...unset(base.setBy),
  );
  const innerGathered = gather(inner);
  const outer = gather(betweenStops(filled, left, right, rules, alone));
  // Rings that are pushed together from outside have no distance of their own.
  const isPushed = base.setBy?.where === 'beside';
  return {
    ...base,
    located: 'shoulders',
    inner: innerGathered.terms,
    outer: outer.terms,
    terms: isPushed ? [] : [...innerGathered.terms, ...outer.terms.map((item) => negate(item) as LoopTerm)],
    missing: [...innerGathered.missing, ...outer.missing],
  };
}

/** Width of an outer ring as a term. */
function outerRing({ part, bearing, address, length }: LinePart): readonly TermOrMissing[] {
  const width = bearing?.outerWidth;
  return width ? [term(address, part.values.width ? 'width' : 'code', 1, width)] : [length];
}

/**
 * How far the inner face of a bearing stands out from its outer face on the side of the pair. `face-offset` counts
 * on one side; on the other the inner ring stands out by what the widths leave of it. Rings of one width are taken
 * as flush where nothing is written; of a ring that is wider than the other nobody knows on which side, and the pair
 * waits for it.
 */
function faceOffset(
  found: LinePart,
  side: Side,
  filled: FilledHousing,
  rules: SettlingRules,
): readonly TermOrMissing[] {
  const { part, bearing, address } = found;
  const offset = part.values['face-offset'];
  const { innerWidth, outerWidth } = bearing ?? {};
  if (offset && countedOn(found, filled) === side)
    return [term(address, 'face-offset', 1, settle(offset, rules))];
  const apart = innerWidth && outerWidth ? Math.abs(innerWidth.drawn.nominal - outerWidth.drawn.nominal) : 0;
  if (!offset) return apart <= sameWidth ? [] : [{ address, key: 'face-offset', path: part.path }];
  const rest = negate(term(address, 'face-offset', 1, settle(offset, rules)));
  if (!part.values['inner-width'] || !innerWidth) return [rest];
  return [term(address, 'inner-width', 1, innerWidth), ...outerRing(found).map(negate), rest];
}

/** The side `face-offset` counts on: that of the other bearing, of two neighbours that of the stop. */
function countedOn(found: LinePart, { seats }: FilledHousing): Side {
  const places = seats.flatMap(({ bearings }) => bearings).flatMap(({ at }) => (at ? [at.left] : []));
  const here = found.at?.left ?? 0;
  const isFirst = !places.some((place) => place < here);
  const isLast = !places.some((place) => here < place);
  if (isFirst !== isLast) return isFirst ? 'right' : 'left';
  return seats.find(({ bearings }) => bearings.includes(found))?.stopSide ?? 'right';
}

/** An adjuster nobody says the setting of: its length in mid position does not tell the distance. */
function unset(setBy: PairLoop['setBy']): readonly TermOrMissing[] {
  if (setBy?.kind !== 'adjuster' || setBy.part.values.set) return [];
  return [{ address: setBy.part.address, key: 'set', path: setBy.part.path }];
}

/** Nominal ring widths nearer than this, mm, are one width: a reading differs from the standard by more. */
const sameWidth = 0.15;

/**
 * S: written between the shoulders, or what length and depths come to. `between-shoulders` is the distance of two
 * stops: where a housing has more of them (`alone` is false) it does not say which two, and the depths tell.
 */
function betweenStops(
  filled: FilledHousing,
  left: FilledSeat,
  right: FilledSeat,
  rules: SettlingRules,
  alone: boolean,
): readonly TermOrMissing[] {
  const written = housingTerm(filled.housing, 'between-shoulders', rules);
  if (alone && !isMissing(written)) return [written];
  const derived = [...fromLeftEnd(filled, right, rules), ...fromLeftEnd(filled, left, rules).map(negate)];
  // The length enters once each way between two stops that are dimensioned from the same end.
  const length = derived.filter(({ key }) => key === 'length');
  const terms = length.length === 2 ? derived.filter(({ key }) => key !== 'length') : derived;
  return alone && terms.some(isMissing) ? [written] : terms;
}

/** From the left end of the housing to the stop of a seat. */
function fromLeftEnd(
  filled: FilledHousing,
  seat: FilledSeat,
  rules: SettlingRules,
): readonly TermOrMissing[] {
  if (seat.from === 'left') return stopTerms(seat, rules);
  return [housingTerm(filled.housing, 'length', rules), ...stopTerms(seat, rules, -1)];
}

/** Bearings that share a seat: their outer rings touch, so whatever lies between the inner rings is δ. */
function sideBySide(
  filled: FilledHousing,
  seat: FilledSeat,
  line: readonly LinePart[],
  rules: SettlingRules,
): readonly PairLoop[] {
  return seat.bearings.slice(1).map((right, index) => {
    const left = seat.bearings[index] as LinePart;
    const { terms, missing } = gather([
      ...between(line, left, right).map((part) => part.length),
      ...faceOffset(left, 'right', filled, rules),
      ...faceOffset(right, 'left', filled, rules),
    ]);
    return {
      kind: 'pair',
      housing: seat.housing,
      bearings: [left.address, right.address],
      located: 'side-by-side',
      wanted: null,
      setBy: null,
      inner: terms,
      outer: [],
      terms,
      missing,
    };
  });
}

function between(line: readonly LinePart[], left: LinePart, right: LinePart): readonly LinePart[] {
  return line.slice(line.indexOf(left) + 1, line.indexOf(right));
}
