import type { VariantAnalysis } from '../analysis/analyze.ts';
import type { Section } from '../assembly/section.ts';
import type { SectionPart } from '../assembly/section-shape.ts';
import { plain, signed } from '../engine/base/figures.ts';
import { dimensionText, lengthText, limitsText } from './dimension-text.ts';
import { type LocatedMark, marksOn } from './fault-mark.ts';
import { housingLengths, runningGap } from './housing-lengths.ts';
import { type LengthDimension, outsideRadius } from './length-dimension.ts';

/** Lengths in the order they are stacked under the section: the chain of parts, the housings, the whole. */
export function lengthDimensions(
  variant: VariantAnalysis,
  section: Section,
  marks: readonly LocatedMark[],
): readonly (readonly LengthDimension[])[] {
  const housings = [variant.assembly.shell, variant.assembly.freehub].flatMap((filled) =>
    filled ? housingLengths(filled, variant, section) : [],
  );
  const wanted = 0 < marksOn(marks, 'width').length ? wantedLength(variant, section) : null;
  return [
    chain(variant, section),
    ...packed([...housings, ...runningGap(variant, section)]),
    [width(variant, section, wanted === null)],
    ...(wanted ? [[wanted]] : []),
  ];
}

function chain(variant: VariantAnalysis, section: Section): readonly LengthDimension[] {
  const stack = variant.assembly.line.map((part) =>
    section.parts.find(({ address }) => address === part.address),
  );
  return variant.assembly.line.flatMap((part, index): readonly LengthDimension[] => {
    const drawn = stack[index];
    if (!drawn || drawn.right <= drawn.left) return [];
    const { count, length } = part.part.values;
    const bearing = part.bearing?.innerWidth;
    const own = bearing
      ? limitsText(bearing.drawn)
      : length
        ? dimensionText(length.value)
        : part.part.kind === 'bearing'
          ? 'width not known'
          : 'length not written';
    const text = count && 1 < count.value ? `${plain(count.value)} × ${own}` : own;
    const radius = (at: SectionPart | undefined): number => (at ? outsideRadius(at) : 0);
    const radii = [
      Math.max(radius(drawn), radius(stack[index - 1])),
      Math.max(radius(drawn), radius(stack[index + 1])),
    ] as const;
    return [
      {
        id: `length:${part.address}`,
        address: part.address,
        from: drawn.left,
        to: drawn.right,
        radii,
        text,
      },
    ];
  });
}

function width(variant: VariantAnalysis, section: Section, sayWanted: boolean): LengthDimension {
  const { drawn, built, loop } = variant.width;
  const ends = [
    section.parts.find(({ address }) => address === variant.assembly.line[0]?.address),
    section.parts.find(({ address }) => address === variant.assembly.line.at(-1)?.address),
  ];
  const radii = [ends[0] ? outsideRadius(ends[0]) : 0, ends[1] ? outsideRadius(ends[1]) : 0] as const;
  const computed = drawn
    ? Math.abs(drawn.mean - drawn.nominal) < 0.005
      ? lengthText(drawn.nominal)
      : `${lengthText(drawn.nominal)}, on average ${lengthText(drawn.mean)}`
    : loop.missing.length > 0 && loop.missing.every(({ key }) => key === 'position on the axle')
      ? 'set by the cones'
      : 'not all lengths written';
  const measured = built ? ` [${lengthText(built.mean)}]` : '';
  const wanted = sayWanted && loop.wanted ? `; wanted ${wantedText(loop.wanted)}` : '';
  return {
    id: 'width',
    address: 'width',
    from: 0,
    to: section.length,
    radii,
    text: `${computed}${measured}${wanted}`,
  };
}

/** The width wanted, drawn under the width there is where that lies outside of its limits. */
function wantedLength(variant: VariantAnalysis, section: Section): LengthDimension | null {
  const { wanted } = variant.width.loop;
  const result = variant.width.built ?? variant.width.drawn;
  const off = wanted && result ? overshoot(result.mean, wanted) : null;
  if (!wanted || off === null) return null;
  const radii = width(variant, section, false).radii;
  const text = `wanted ${wantedText(wanted)}: ${off}`;
  return { id: 'wanted', address: 'width', from: 0, to: wanted.nominal, radii, text };
}

/** `100 ±0.1` */
export function wantedText({
  nominal,
  lo,
  hi,
}: {
  readonly nominal: number;
  readonly lo: number;
  readonly hi: number;
}): string {
  return limitsText({ nominal, lower: lo - nominal, upper: hi - nominal });
}

/** How far outside its limits a mean lies: `0.02 over`; null within them. */
export function overshoot(
  mean: number,
  { lo, hi }: { readonly lo: number; readonly hi: number },
): string | null {
  if (hi + 1e-6 < mean) return `${signed(mean - hi).replace('+', '')} over the upper limit`;
  if (mean < lo - 1e-6) return `${signed(lo - mean).replace('+', '')} under the lower limit`;
  return null;
}

/** Dimensions on as few levels as they need, none over another on its level. */
function packed(list: readonly LengthDimension[]): readonly (readonly LengthDimension[])[] {
  const levels: LengthDimension[][] = [];
  for (const item of [...list].sort((a, b) => a.from - b.from || a.to - b.to)) {
    const free = levels.find((level) =>
      level.every((other) => other.to <= item.from + 0.01 || item.to <= other.from + 0.01),
    );
    if (free) free.push(item);
    else levels.push([item]);
  }
  return levels;
}
