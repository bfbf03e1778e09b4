import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import { insertKey } from '../../spec/edit.ts';
import type { Fix, TextChange } from '../../spec/problem.ts';
import { withNominal } from '../../spec/with-nominal.ts';
import { capital, type LengthChange, lengthFixes, sayChange } from '../length-fixes.ts';

/** Fixes that change lengths of the hub as written in a variant only, equal end caps together first. */
export function lengthsInVariant(
  analysis: Analysis,
  variant: VariantAnalysis,
  changes: readonly LengthChange[],
  result: string,
): readonly Fix[] {
  return [
    ...sharedInVariant(analysis, variant, changes, result),
    ...changes.flatMap((change) => fixInVariant(analysis, variant, change, result)),
  ];
}

/** Two equal end caps of the hub as written, both changed in the variant, which keeps it centred. */
function sharedInVariant(
  analysis: Analysis,
  variant: VariantAnalysis,
  changes: readonly LengthChange[],
  result: string,
): readonly Fix[] {
  const [shared] = lengthFixes(analysis, changes, result);
  const [one, other] = changes.filter(({ address }) => address.startsWith('end-cap.'));
  if (!shared || !one || !other || shared.changes.length !== 2) return [];
  const to = Number(((one.from + one.to) / 2).toFixed(3));
  const first = lengthIn(analysis, variant, { ...one, to });
  const second = lengthIn(analysis, variant, { ...other, to });
  const together = joined(first, second, other.address);
  if (together.length === 0) return [];
  return [
    {
      title: shared.title.replace(/: (?=the width)/, ` in ${variant.assembly.hub.name} only: `),
      changes: together,
    },
  ];
}

/** Two insertions as one fix: where both would open the same section, the second goes into that of the first. */
function joined(
  first: readonly TextChange[],
  second: readonly TextChange[],
  address: string,
): readonly TextChange[] {
  const [a, b] = [first[0], second[0]];
  if (!a || !b || first.length !== 1 || second.length !== 1) return [];
  if (a.span.start !== b.span.start || !a.text.includes('change:')) return [...first, ...second];
  const line = b.text.lastIndexOf('\n', b.text.indexOf(address));
  return line === -1
    ? []
    : [{ span: a.span, text: a.text + b.text.slice(b.text[line - 1] === '\r' ? line - 1 : line) }];
}

/** A length of the hub as written, changed in the variant only. */
function fixInVariant(
  analysis: Analysis,
  variant: VariantAnalysis,
  change: LengthChange,
  result: string,
): readonly Fix[] {
  const changes = lengthIn(analysis, variant, change);
  if (changes.length === 0) return [];
  const side = change.sideEffect ? `; ${change.sideEffect}` : '';
  return [
    {
      title: `${capital(sayChange(change))} in ${variant.assembly.hub.name} only: ${result}${side}`,
      changes,
    },
  ];
}

/** As a change of its own, or as a key of one that is there. */
function lengthIn({ spec }: Analysis, variant: VariantAnalysis, change: LengthChange): readonly TextChange[] {
  const { hub } = variant.assembly;
  const text = withNominal(change.dimension, change.to);
  const part = [...hub.path, 'change', change.address];
  if (spec.has(part)) return insertKey(spec, part, 'length', text);
  return insertKey(spec, [...hub.path, 'change'], change.address, `{ length: ${text} }`);
}
