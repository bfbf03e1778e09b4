import { ringDeviations } from '../../engine/bearings/ring-deviations.ts';
import type { BearingAnswer } from './bearing-answer.ts';

/** What `bearing --json` prints: a stable shape, documented in the README. Lengths in mm, ratings in N. */
export function bearingJson(code: string, answer: BearingAnswer) {
  if ('failure' in answer) {
    const { error, didYouMean } = answer.failure;
    return { code, error, didYouMean: didYouMean.map((other) => other.code) };
  }
  const { bearing } = answer;
  const { bore, outside, width, source } = ringDeviations(bearing);
  return {
    code,
    kind: bearing.kind,
    bore: bearing.bore,
    outside: bearing.outside,
    width: bearing.width,
    chamferMin: bearing.chamferMin,
    closure: bearing.closure,
    rubs: bearing.rubs,
    clearance: bearing.clearance,
    toleranceClass: bearing.toleranceClass,
    ...known('contactAngle', bearing.contactAngle),
    ...known('dynamicRating', bearing.dynamicRating),
    ...known('staticRating', bearing.staticRating),
    ...known('balls', bearing.balls),
    sources: bearing.sources,
    notes: bearing.notes,
    normalised: bearing.normalised,
    houseCode: answer.houseCode,
    standardEquivalent: bearing.standardEquivalent,
    basis: bearing.basis,
    widthOpen: bearing.widthOpen,
    widthClosed: bearing.widthClosed,
    closedSides: bearing.closedSides,
    material: bearing.material,
    fullComplement: bearing.fullComplement,
    cage: bearing.cage,
    ambiguousSuffixes: bearing.ambiguousSuffixes,
    deviations: { bore, outside, width, source },
  };
}

/** A key that is left out where no table has its value. */
function known<K extends string, V>(key: K, value: V | null): Partial<Record<K, V>> {
  return value === null ? {} : ({ [key]: value } as Record<K, V>);
}
