import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import type { StackBearing } from '../../assembly/bearings.ts';
import { decodeBearing, type NotDecoded } from '../../engine/bearings/decode-bearing.ts';
import { renameKey, setValue } from '../../spec/edit.ts';
import { nearestOf } from '../../spec/nearest.ts';
import type { Placed, SpecPath } from '../../spec/place.ts';
import type { Fix } from '../../spec/problem.ts';
import type { Check, Draft } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
import { pageHub } from '../page-hub.ts';
import { codesThatFit, fits, relatedSurroundings, sayFits, saySize, surroundingsOf } from './fitting.ts';

/** A bearing code names no bearing. */
export const bearingNotDecoded: Check = {
  code: 'bearing-not-decoded',
  group: 'bearing',
  severity: 'error',
  summary: 'A bearing code names no bearing.',
  page: {
    why: 'Nobody can order a code that does not exist, and nothing that touches the bearing can be checked: fit, seat depth and clamped width all wait for its size. Usually a digit was misread on a worn seal. The codes offered first are those that fit the seat and the axle; a bearing of a maker’s own numbering is written with its size.',
    bad: pageHub(['code: 6803-2RS', 'code: 6893-2RS']),
    good: pageHub(),
    sources: ['ISO 15, dimension series', 'common practice: two digits of series, two of bore code'],
  },
  run: (analysis) => eachVariant(analysis, (variant) => undecoded(analysis, variant)),
};

function* undecoded(analysis: Analysis, variant: VariantAnalysis): Iterable<Draft> {
  for (const bearing of variant.assembly.bearings) {
    const house = houseFailure(analysis, bearing);
    if (house) yield house;
    const { failure, part } = bearing;
    const { code, size } = part.values;
    if (!failure || !code) continue;
    if (isSize(code.value)) {
      yield sizeAsCode(analysis, code, !size);
      continue;
    }
    const choices = choicesFor(variant, bearing, failure);
    const [best] = choices;
    const around = surroundingsOf(variant, part);
    const told = size ? `; its size ${size.value.written} is taken` : '';
    const todo = best
      ? `write ${best.code} (${best.size})${best.fit}`
      : 'check the engraving, or write its size';
    yield {
      path: code.path,
      // Beside a size, digits that are no bearing are still a slip; letters may be a maker's own code.
      severity: size ? (isNumber(failure) ? 'warning' : 'information') : 'error',
      message: `${failure.error.replace(/\.$/, '')}${told} — ${todo}`,
      related: relatedSurroundings(around),
      data: { code: code.value, at: failure.at, didYouMean: choices.map((choice) => choice.code) },
      fixes: [
        ...choices.map((choice, index) => changeTo(analysis, code.path, choice, index === 0)),
        ...houseFixes(analysis, code.value, code.path),
      ],
    };
  }
}

const isNumber = ({ code, at }: NotDecoded): boolean => /\d{3}/.test(code.slice(...at));

const isSize = (code: string): boolean => /^\s*[\d.]+\s*[x×*]\s*[\d.]+\s*[x×*]\s*[\d.]+\s*$/i.test(code);

/** `code: 17x26x5`: right but for its key. */
function sizeAsCode(analysis: Analysis, { value, path }: Placed<string>, free: boolean): Draft {
  return {
    path,
    message: `${value} is a size, not a code — ${free ? 'write it under size' : 'its size stands here already; write the code, or leave it out'}`,
    data: { code: value },
    fixes: free
      ? [
          {
            title: `Rename code to size: ${value}`,
            changes: renameKey(analysis.spec, path, 'size'),
            preferred: true,
          },
        ]
      : [],
  };
}

interface Choice {
  readonly code: string;
  readonly size: string;
  readonly fit: string;
}

/** The codes that may have been meant: those that fit seat and axle first, then by likeness. */
function choicesFor(
  variant: VariantAnalysis,
  { part }: StackBearing,
  failure: NotDecoded,
): readonly Choice[] {
  const around = surroundingsOf(variant, part);
  const sized = failure.didYouMean.flatMap(({ code, size }) => {
    const found = decodeBearing(code);
    if ('failure' in found) return [];
    return [{ code, size, fitting: fits(around, found.bearing), fit: sayFits(around, found.bearing) }];
  });
  if (sized.some(({ fitting }) => fitting !== false)) {
    return sized.sort((a, b) => Number(b.fitting === true) - Number(a.fitting === true));
  }
  // Nothing of the code can be read: a hub bearing is then sealed on both sides (common practice).
  const suffix = isNumber(failure) ? failure.code.slice(failure.at[1]) : '-2RS';
  const fitting = codesThatFit(around)
    .slice(0, 2)
    .map((other) => ({
      code: `${other.code}${suffix}`,
      size: saySize(other),
      fit: sayFits(around, other),
    }));
  return [...fitting.filter(({ code }) => 'bearing' in decodeBearing(code)), ...sized];
}

function changeTo(analysis: Analysis, path: SpecPath, { code, size, fit }: Choice, preferred: boolean): Fix {
  return {
    title: `Change to ${code} (${size})${fit}`,
    changes: setValue(analysis.spec, path, code),
    preferred,
  };
}

/** A house code that is nearly the one written. */
function houseFixes(analysis: Analysis, written: string, path: SpecPath): readonly Fix[] {
  const near = nearestOf(written, Object.keys(analysis.workshop?.bearings ?? {}));
  if (near === null || near === written) return [];
  return [{ title: `Change to ${near}, a code of the house`, changes: setValue(analysis.spec, path, near) }];
}

/** A code of the house that stands for another code, which is none. */
function houseFailure(analysis: Analysis, bearing: StackBearing): Draft | null {
  const { houseCode, from } = bearing;
  const behind = houseCode === null ? null : analysis.workshop?.bearings[houseCode]?.value.code;
  if (houseCode === null || !behind || bearing.bearing) return null;
  return {
    path: from,
    message: `${houseCode} stands for ${behind} in the workshop file, which names no bearing — mend it there, or write the size here`,
    data: { code: behind, houseCode },
  };
}
