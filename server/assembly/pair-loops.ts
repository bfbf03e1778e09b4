import { depthTerm, type FilledHousing, type FilledSeat, housingTerm } from './housings.ts';
import type { LinePart } from './line.ts';
import { gather, isMissing, type LoopTerm, negate, type PairLoop, type TermOrMissing, term } from './loop.ts';
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
  const across = seats
    .slice(1)
    .map((right, index) => acrossPair(filled, seats[index] as FilledSeat, right, line, rules));
  const beside = seats.flatMap((seat) => sideBySide(seat, line));
  return [...across, ...beside];
}

function acrossPair(
  filled: FilledHousing,
  left: FilledSeat,
  right: FilledSeat,
  line: readonly LinePart[],
  rules: SettlingRules,
): PairLoop {
  const from = left.contact as LinePart;
  const to = right.contact as LinePart;
  const inner: TermOrMissing[] = between(line, from, to).map((part) => part.length);
  if (left.from === 'right') inner.unshift(from.length);
  if (right.from === 'left') inner.push(to.length);
  for (const part of [from, to]) {
    const offset = part.part.values['face-offset'];
    if (offset) inner.push(term(part.address, 'face-offset', 1, settle(offset, rules)));
  }
  const base = {
    kind: 'pair',
    housing: filled.housing.name,
    bearings: [from.address, to.address],
    wanted: null,
  } as const;
  const innerGathered = gather(inner);
  if (left.stop === 'spacer' || right.stop === 'spacer') {
    // The ring is pressed until it meets the spacer: the housing takes the distance the spacer has.
    return {
      ...base,
      located: 'spacer',
      terms: [],
      inner: innerGathered.terms,
      outer: [],
      missing: innerGathered.missing,
    };
  }
  const outer = gather(betweenStops(filled, left, right, rules));
  return {
    ...base,
    located: 'shoulders',
    inner: innerGathered.terms,
    outer: outer.terms,
    terms: [...innerGathered.terms, ...outer.terms.map((item) => negate(item) as LoopTerm)],
    missing: [...innerGathered.missing, ...outer.missing],
  };
}

/** S: written between the shoulders, or what the depths leave of the housing's length. */
function betweenStops(
  filled: FilledHousing,
  left: FilledSeat,
  right: FilledSeat,
  rules: SettlingRules,
): readonly TermOrMissing[] {
  const written = housingTerm(filled.housing, 'between-shoulders', rules);
  if (!isMissing(written)) return [written];
  const derived = [
    housingTerm(filled.housing, 'length', rules),
    depthTerm(left, rules, -1),
    depthTerm(right, rules, -1),
  ];
  const opposed = left.from === 'left' && right.from === 'right';
  return opposed && !derived.some(isMissing) ? derived : [written];
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
