import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import { millimetres } from '../../engine/base/figures.ts';
import type { SpecPath } from '../../spec/place.ts';
import type { Check, Draft } from '../check.ts';
import { type LengthChange, lengthChanges, lengthFixes, sayBest } from '../length-fixes.ts';
import { pageHub } from '../page-hub.ts';
import { widthDraft } from '../stack/width-off.ts';
import { lengthsInVariant } from './lengths-in-variant.ts';

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
  const how = draft.data?.asMeasured ? 'built' : 'drawn';
  const changes =
    draft.fixes?.length === 0 ? [] : sensible(lengthChanges(variant, variant.width.loop, middle, how));
  // Lengths the variant itself writes come first: they are what broke the width.
  const own = changes.filter(({ path }) => inside(path, hub.path));
  const others = changes.filter((change) => !own.includes(change));
  const result = `the width is then ${millimetres(middle)} on average`;
  const fixes = [
    ...lengthFixes(analysis, own, result),
    ...lengthsInVariant(analysis, variant, others, result),
  ];
  const told = draft.message.split(' — ')[0] ?? draft.message;
  const todo = sayBest(own.length > 0 ? own : others) ?? sayRemoved(analysis, variant);
  return {
    ...draft,
    path: placeOf(variant, own[0]),
    message: `${hub.name}: ${told}${todo ? ` — ${todo}` : ''}`,
    data: { ...draft.data, variant: hub.name },
    fixes: fixes.map((fix, index) => ({ ...fix, preferred: index === 0 })),
  };
}

/** A part is mended by less than its own length; more than that is another part. */
function sensible(changes: readonly LengthChange[]): readonly LengthChange[] {
  return changes.filter(({ from, to }) => Math.abs(to - from) < from);
}

function sayRemoved(analysis: Analysis, { name }: VariantAnalysis): string | null {
  const removed = analysis.spec.hub?.variants.find((variant) => variant.name === name)?.remove ?? [];
  const parts = removed.map(({ value }) => value).join(' and ');
  return parts === '' ? null : `it removes ${parts}: add what takes its place`;
}

const inside = (path: SpecPath, section: SpecPath): boolean =>
  section.every((step, index) => path[index] === step);

/** The variant's own value to change: a length it writes, else anything of the line it brings, its width, its name. */
function placeOf(variant: VariantAnalysis, own: LengthChange | undefined): SpecPath {
  const { hub } = variant.assembly;
  const brought = variant.width.loop.terms.map(({ path }) => path);
  const places = [
    ...(own ? [own.path] : []),
    ...brought,
    ...(hub.values.width ? [hub.values.width.path] : []),
  ];
  return places.find((path) => inside(path, hub.path)) ?? hub.path;
}
