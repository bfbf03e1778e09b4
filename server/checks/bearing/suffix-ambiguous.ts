import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import type { AmbiguousSuffix, DecodedBearing } from '../../engine/bearings/decode-bearing.ts';
import type { Placed, Span } from '../../spec/place.ts';
import type { Check, Draft } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
import { pageHub } from '../page-hub.ts';
import { ownCode } from './fitting.ts';
import { wetDuty } from './wet-duty.ts';
import { suffixesOf } from './with-basic.ts';

/** Makers give a suffix of the code different meanings. */
export const suffixAmbiguous: Check = {
  code: 'suffix-ambiguous',
  group: 'bearing',
  severity: 'information',
  summary: 'Makers give a suffix of the code different meanings.',
  page: {
    why: 'Suffixes are not standardised, and a few letters mean one thing with one maker and another with the next. A V can leave the cage out or put a seal in. The first meaning is taken here; look at the bearing, then write a suffix that says it plainly, or allow the finding with what was seen.',
    bad: pageHub(['code: 6803-2RS', 'code: 6803V']),
    good: pageHub(),
    sources: ['makers’ suffix lists'],
  },
  run: (analysis) => eachVariant(analysis, (variant) => ambiguous(analysis, variant)),
};

function* ambiguous(analysis: Analysis, variant: VariantAnalysis): Iterable<Draft> {
  for (const stacked of variant.assembly.bearings) {
    const { bearing } = stacked;
    const code = ownCode(stacked);
    if (!bearing || !code) continue;
    // In water the full complement is the finding, and it says how the letter is read.
    if (bearing.fullComplement && wetDuty(variant)) continue;
    for (const suffix of bearing.ambiguousSuffixes) {
      const span = suffixSpan(analysis, code, bearing, suffix.suffix);
      yield { path: code.path, ...(span ? { span } : {}), ...say(suffix, code.value, stacked.address) };
    }
  }
}

function say(
  { suffix, meanings }: AmbiguousSuffix,
  code: string,
  address: string,
): Pick<Draft, 'message' | 'data'> {
  const [first, ...others] = meanings;
  return {
    message: `${suffix} in ${code} means ${first} with some makers, ${others.join(' or ')} with others: the first is taken — look at ${address} and say which it is`,
    data: { suffix, meanings },
  };
}

/** The letters of the suffix in the text; null where the code is quoted or they cannot be told apart. */
function suffixSpan(
  analysis: Analysis,
  code: Placed<string>,
  bearing: DecodedBearing,
  suffix: string,
): Span | null {
  const whole = analysis.spec.span(code.path);
  if (analysis.spec.text.slice(whole.start, whole.end) !== code.value) return null;
  const { text, start } = suffixesOf(code.value, bearing);
  const at = text.toUpperCase().indexOf(suffix);
  if (at === -1) return null;
  return { start: whole.start + start + at, end: whole.start + start + at + suffix.length };
}
