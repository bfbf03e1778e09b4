import type { Dimension, StackPart } from '../spec/model.ts';
import type { Placed } from '../spec/place.ts';
import type { StackBearing } from './bearings.ts';
import { type LoopTerm, type TermOrMissing, term } from './loop.ts';
import { meanOf, type Settled, type SettlingRules, settle } from './settle.ts';

/** A part of the clamped line with what it adds to it. */
export interface LinePart {
  readonly part: StackPart;
  readonly address: string;
  readonly bearing: StackBearing | null;
  /** Its length along the axle, or what is missing to know it. */
  readonly length: TermOrMissing;
  /** Nominal left and right face from the left dropout face, mm; null behind a part of unknown length. */
  readonly at: { readonly left: number; readonly right: number } | null;
}

/**
 * Places the parts of the stack one after the other from the left dropout face. Cones are set by hand: the second
 * one and what lies outside of it end at `width`, mm, and stand nowhere where it or a length is not written.
 */
export function placeLine(
  stack: readonly StackPart[],
  bearings: ReadonlyMap<StackPart, StackBearing>,
  rules: SettlingRules,
  width: number | null,
): readonly LinePart[] {
  const lengths = new Map(stack.map((part) => [part, lengthTerm(part, bearings.get(part) ?? null, rules)]));
  const setByHand = secondRaceOfCones(stack);
  let face: number | null = 0;
  return stack.map((part, index) => {
    const bearing = bearings.get(part) ?? null;
    const length = lengths.get(part) as TermOrMissing;
    if (part === setByHand) {
      const rest = stack.slice(index).map((later) => lengths.get(later) as TermOrMissing);
      face =
        width === null
          ? null
          : rest.reduce(
              (at: number | null, term) => (at === null || !term.settled ? null : at - nominalOf(term)),
              width,
            );
    }
    const left: number | null = face;
    face = left === null || !length.settled ? null : left + nominalOf(length);
    return {
      part,
      address: part.address,
      bearing,
      length,
      at: left === null || face === null ? null : { left, right: face },
    };
  });
}

/** The right one of two inner races, one of them a cone: nothing but the width sets their distance. */
function secondRaceOfCones(stack: readonly StackPart[]): StackPart | null {
  const races = stack.filter(({ kind }) => kind === 'cone' || kind === 'bearing');
  return races.length === 2 && races.some(({ kind }) => kind === 'cone') ? (races[1] ?? null) : null;
}

/** What a part adds to the clamped line: a bearing its inner ring, anything else its length times its count. */
function lengthTerm(part: StackPart, bearing: StackBearing | null, rules: SettlingRules): TermOrMissing {
  if (part.kind === 'bearing') {
    const width = bearing?.innerWidth;
    const key = part.values['inner-width'] ? 'inner-width' : part.values.width ? 'width' : 'code';
    return width
      ? term(part.address, key, 1, width)
      : { address: part.address, key: 'code', path: part.path };
  }
  const { length, count } = part.values;
  if (!length) return { address: part.address, key: 'length', path: part.path };
  return term(part.address, 'length', 1, settle(length, rules), count?.value ?? 1);
}

/** Nominal contribution of a term as drawn, mm. */
export function nominalOf(item: LoopTerm): number {
  return item.sign * item.count * item.settled.drawn.nominal;
}

/** Mean contribution of a term as drawn, mm. */
export function meanContribution(item: LoopTerm): number {
  return item.sign * item.count * meanOf(item.settled.drawn);
}

/** Settles an optional dimension. */
export function settleMaybe(placed: Placed<Dimension> | undefined, rules: SettlingRules): Settled | null {
  return placed ? settle(placed, rules) : null;
}
