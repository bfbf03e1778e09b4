import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import { millimetres } from '../../engine/base/figures.ts';
import { insertKey, setValue } from '../../spec/edit.ts';
import type { SpecPath } from '../../spec/place.ts';
import type { Fix, TextChange } from '../../spec/problem.ts';
import { withNominal } from '../../spec/with-nominal.ts';
import type { Check, Draft } from '../check.ts';
import { capital, type LengthChange, lengthChanges, sayChange } from '../length-fixes.ts';
import { pageHub } from '../page-hub.ts';
import { widthDraft } from '../stack/width-off.ts';

const variants = (length: string): string =>
  `${pageHub()}variants:\n  thru-12:\n    replace:\n      end-cap.right: { length: ${length}, face: 19.4, bore: 12.05 }\n`;

/** A variant takes the clamped width off, which is right in the hub as written. */
export const variantBreaksWidth: Check = {
  code: 'variant-breaks-width',
  group: 'variant',
  severity: 'error',
  summary: 'A variant takes the clamped width outside its limits.',
  page: {
    why: 'A set of end caps for another axle goes into the same shell and must close to the width of its frame. Caps drawn on another day, or a width changed without its caps, are the usual slips. The fix changes the parts this variant brings and leaves the hub as written alone.',
    bad: variants('14.33 ±0.02'),
    good: variants('14.03 ±0.02'),
    sources: ['ISO 492, deviation of ring width', 'common practice: statistics with ±3σ on the tolerance'],
  },
  *run(analysis) {
    const [written, ...others] = analysis.variants;
    if (!written || widthDraft(analysis, written)) return;
    for (const variant of others) {
      const draft = broken(analysis, variant);
      if (draft) yield draft;
    }
  },
};

function broken(analysis: Analysis, variant: VariantAnalysis): Draft | null {
  const draft = widthDraft(analysis, variant);
  const { hub } = variant.assembly;
  const { wanted } = variant.width.loop;
  if (!draft || !wanted || hub.missing.length > 0) return null;
  const middle = (wanted.lo + wanted.hi) / 2;
  const changes = ownFirst(
    lengthChanges(variant, variant.width.loop, middle, draft.data?.asMeasured ? 'built' : 'drawn'),
    hub.path,
  );
  const centred = draft.fixes?.length === 0;
  const [best] = centred ? [] : changes;
  const told = draft.message.split(' — ')[0] ?? draft.message;
  return {
    ...draft,
    path: placeOf(variant, best),
    message: `${hub.name}: ${told}${best ? ` — ${sayChange(best)}` : ''}`,
    data: { ...draft.data, variant: hub.name },
    fixes: centred
      ? []
      : changes.flatMap((change) => fixOf(analysis, variant, change, middle)).map(preferFirst),
  };
}

const inside = (path: SpecPath, section: SpecPath): boolean =>
  section.every((step, index) => path[index] === step);

/** Lengths the variant itself writes come first: they are what broke the width. */
function ownFirst(changes: readonly LengthChange[], variant: SpecPath): readonly LengthChange[] {
  const own = changes.filter(({ path }) => inside(path, variant));
  return [...own, ...changes.filter((change) => !own.includes(change))];
}

/** The variant's own value to change: a length it writes, else its width, else its name. */
function placeOf(variant: VariantAnalysis, best: LengthChange | undefined): SpecPath {
  const { hub } = variant.assembly;
  if (best && inside(best.path, hub.path)) return best.path;
  const { width } = hub.values;
  return width && inside(width.path, hub.path) ? width.path : hub.path;
}

function fixOf(
  analysis: Analysis,
  variant: VariantAnalysis,
  change: LengthChange,
  middle: number,
): readonly Fix[] {
  const changes = lengthIn(analysis, variant, change);
  if (changes.length === 0) return [];
  const only = inside(change.path, variant.assembly.hub.path) ? '' : ` in ${variant.assembly.hub.name} only`;
  const side = change.sideEffect ? `; ${change.sideEffect}` : '';
  return [
    {
      title: `${capital(sayChange(change))}${only}: the width is then ${millimetres(middle)} on average${side}`,
      changes,
    },
  ];
}

const preferFirst = (fix: Fix, index: number): Fix => ({ ...fix, preferred: index === 0 });

/** The new length in the variant: in place where it writes one, else as a change of its own. */
function lengthIn({ spec }: Analysis, variant: VariantAnalysis, change: LengthChange): readonly TextChange[] {
  const { hub } = variant.assembly;
  const text = withNominal(change.dimension, change.to);
  if (inside(change.path, hub.path)) return setValue(spec, change.path, text);
  const part = [...hub.path, 'change', change.address];
  if (spec.has(part)) return insertKey(spec, part, 'length', text);
  return insertKey(spec, [...hub.path, 'change'], change.address, `{ length: ${text} }`);
}
