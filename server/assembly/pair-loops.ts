import { depthTerm, type FilledHousing, type FilledSeat, housingTerm } from './housings.ts';
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
  const beside = seats.flatMap((seat) => sideBySide(seat, line));
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
  if (left.from === 'right') inner.unshift(from.length);
  if (right.from === 'left') inner.push(to.length);
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
  inner.push(...faceOffset(from, rules), ...faceOffset(to, rules), ...unset(base.setBy));
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

/**
 * The inner face of a bearing against its outer face. Rings of one width are taken as flush where nothing is
 * written; of a ring that is wider than the other nobody knows on which side, and the pair waits for it.
 */
function faceOffset({ part, bearing, address }: LinePart, rules: SettlingRules): readonly TermOrMissing[] {
  const offset = part.values['face-offset'];
  if (offset) return [term(address, 'face-offset', 1, settle(offset, rules))];
  const { innerWidth, outerWidth } = bearing ?? {};
  if (!innerWidth || !outerWidth) return [];
  const extended = Math.abs(innerWidth.drawn.nominal - outerWidth.drawn.nominal);
  return extended <= sameWidth ? [] : [{ address, key: 'face-offset', path: part.path }];
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
  if (seat.from === 'left') return [depthTerm(seat, rules)];
  return [housingTerm(filled.housing, 'length', rules), depthTerm(seat, rules, -1)];
}

/** Bearings that share a seat: their outer rings touch, so whatever lies between the inner rings is δ. */
function sideBySide(seat: FilledSeat, line: readonly LinePart[]): readonly PairLoop[] {
  return seat.bearings.slice(1).map((right, index) => {
    const left = seat.bearings[index] as LinePart;
    const { terms, missing } = gather(between(line, left, right).map((part) => part.length));
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
