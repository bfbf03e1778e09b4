import {
  bearingFromSize,
  type DecodedBearing,
  decodeBearing,
  type NotDecoded,
} from '../engine/bearings/decode-bearing.ts';
import { internalClearance } from '../engine/bearings/internal-clearance.ts';
import { ringDeviations } from '../engine/bearings/ring-deviations.ts';
import { ringShoulders } from '../engine/bearings/ring-shoulders.ts';
import type { StackPart } from '../spec/model.ts';
import type { SpecPath } from '../spec/place.ts';
import type { Workshop } from '../spec/workshop-model.ts';
import { type Limits, type Settled, type SettlingRules, settle } from './settle.ts';

/** A bearing of the stack with everything its code, size and written keys say of it. */
export interface StackBearing {
  readonly part: StackPart;
  readonly address: string;
  /** Null where neither the code nor a size could be read. */
  readonly bearing: DecodedBearing | null;
  /** Why the code could not be read. */
  readonly failure: NotDecoded | null;
  /** Where the size came from: the path of `code`, `size` or `house-code`. */
  readonly from: SpecPath;
  /** The house code that stood for the bearing, when one did. */
  readonly houseCode: string | null;
  readonly bore: Settled | null;
  readonly outside: Settled | null;
  /** Width of the inner ring: what it adds to the clamped line. */
  readonly innerWidth: Settled | null;
  /** Width of the outer ring: what stands in the seat. */
  readonly outerWidth: Settled | null;
  /** Outside diameter of the inner ring at its shoulder, mm; estimated unless written. */
  readonly innerOutside: { readonly value: number; readonly estimated: boolean } | null;
  /** Inside diameter of the outer ring at its shoulder, mm; an estimate. */
  readonly outerInside: number | null;
}

/** Reads the bearing of one part. The size comes from `size`, else the code, else the house code. */
export function readStackBearing(
  part: StackPart,
  rules: SettlingRules,
  workshop: Workshop | null,
): StackBearing {
  const found = findBearing(part, workshop);
  const { bearing } = found;
  const base = { part, address: part.address, ...found };
  if (!bearing) {
    return {
      ...base,
      bore: null,
      outside: null,
      innerWidth: null,
      outerWidth: null,
      innerOutside: null,
      outerInside: null,
    };
  }
  const deviations = ringDeviations(bearing);
  const taken =
    deviations.class === bearing.toleranceClass
      ? ''
      : `, taken for class ${bearing.toleranceClass}, which the tables do not hold`;
  const ring = (nominal: number, by: { lower: number; upper: number }, what: string): Settled => ({
    drawn: { nominal, lower: by.lower, upper: by.upper },
    built: null,
    path: found.from,
    assumed: `${what} of ${part.address} varies by ISO 492, class ${deviations.class}${taken}`,
  });
  const shoulders = ringShoulders(bearing.bore, bearing.outside);
  const written = part.values['inner-outside']?.value.nominal;
  const width = ringWidth(part, 'width', ring(bearing.width, deviations.width, 'ring width'), rules);
  return {
    ...base,
    bore: ring(bearing.bore, deviations.bore, 'bore'),
    outside: ring(bearing.outside, deviations.outside, 'outside diameter'),
    innerWidth: ringWidth(part, 'inner-width', width, rules),
    outerWidth: width,
    innerOutside:
      written !== undefined
        ? { value: written, estimated: false }
        : { value: shoulders.innerOutside, estimated: true },
    outerInside: shoulders.outerInside,
  };
}

/** A written ring width keeps the ring's ISO 492 deviations unless it carries its own. */
function ringWidth(
  part: StackPart,
  key: 'width' | 'inner-width',
  ring: Settled,
  rules: SettlingRules,
): Settled {
  const written = part.values[key];
  if (!written) return ring;
  const settled = settle(written, rules);
  if (!written.value.drawn) {
    // Only a reading: the drawing is still the standard ring, the part as built is the reading.
    return { ...ring, built: settled.built, path: written.path };
  }
  if (written.value.tolerance.kind !== 'none') return settled;
  const drawn: Limits = { nominal: written.value.nominal, lower: ring.drawn.lower, upper: ring.drawn.upper };
  return { drawn, built: settled.built, path: written.path, assumed: ring.assumed };
}

interface Found {
  readonly bearing: DecodedBearing | null;
  readonly failure: NotDecoded | null;
  readonly from: SpecPath;
  readonly houseCode: string | null;
}

function findBearing(part: StackPart, workshop: Workshop | null): Found {
  const { code, size } = part.values;
  const house = part.values['house-code'];
  const houseName = [code, house].find((placed) => placed && workshop?.bearings[placed.value]) ?? null;
  const houseBearing = houseName ? workshop?.bearings[houseName.value]?.value : undefined;

  const written = houseName !== null && houseName === code ? undefined : code;
  const decoded = written ? decodeBearing(written.value) : null;
  const failure = decoded && 'failure' in decoded ? decoded.failure : null;
  const fromCode = decoded && 'bearing' in decoded ? decoded.bearing : null;

  if (size) {
    const { bore, outside, width } = size.value;
    const same =
      fromCode && fromCode.bore === bore && fromCode.outside === outside && fromCode.width === width;
    const bearing = same ? fromCode : keepSuffixes(bearingFromSize(bore, outside, width), fromCode);
    return { bearing, failure, from: same && written ? written.path : size.path, houseCode: null };
  }
  if (fromCode && written) return { bearing: fromCode, failure: null, from: written.path, houseCode: null };
  if (houseBearing && houseName) {
    const found = houseBearing.code !== null ? decodeBearing(houseBearing.code) : null;
    const bearing =
      found && 'bearing' in found
        ? found.bearing
        : houseBearing.size
          ? bearingFromSize(houseBearing.size.bore, houseBearing.size.outside, houseBearing.size.width)
          : null;
    return { bearing, failure, from: houseName.path, houseCode: houseName.value };
  }
  return { bearing: null, failure, from: written?.path ?? house?.path ?? part.path, houseCode: null };
}

/** Where `size` overrules the code, the code still tells seal, clearance and class. */
function keepSuffixes(sized: DecodedBearing, coded: DecodedBearing | null): DecodedBearing {
  if (!coded) return sized;
  const {
    closure,
    closedSides,
    rubs,
    clearance,
    toleranceClass,
    material,
    fullComplement,
    cage,
    contactAngle,
  } = coded;
  return {
    ...sized,
    kind: coded.kind,
    closure,
    closedSides,
    rubs,
    clearance: internalClearance(coded.kind, clearance.group, sized.bore).clearance,
    toleranceClass,
    material,
    fullComplement,
    cage,
    contactAngle,
  };
}
