import type { VariantAnalysis } from '../analysis/analyze.ts';
import type { FilledHousing } from '../assembly/housings.ts';
import type { Section } from '../assembly/section.ts';
import type { SectionPart } from '../assembly/section-shape.ts';
import { micrometres, plain, signed } from '../engine/base/figures.ts';
import { dimensionText, lengthText, limitsText } from './dimension-text.ts';
import { type LocatedMark, marksOn } from './fault-mark.ts';

/** A length measured under the section. Places in mm of the hub. */
export interface LengthDimension {
  /** `width`, `length:spacer.centre`, `depth:shell.left`, `between:shell`, `gap:freehub`. */
  readonly id: string;
  readonly address: string;
  readonly from: number;
  readonly to: number;
  /** Radius at which each extension line leaves the part, mm of the hub. */
  readonly radii: readonly [number, number];
  readonly text: string;
}

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

/** Radius of a part where it has a face, mm. */
function radiusAt(part: SectionPart, at: number): number {
  const there = part.steps.filter(({ left, right }) => left - 0.01 <= at && at <= right + 0.01);
  return Math.max(...there.map(({ outside }) => outside), 0) / 2;
}

/** Largest radius of a part, its outer ring included, mm. */
function outsideRadius(part: SectionPart): number {
  return Math.max(...part.steps.map(({ outside }) => outside), part.bearing?.outer.outside ?? 0) / 2;
}

/** Depths of the seats and the distance between the shoulders of one housing. */
function housingLengths(
  filled: FilledHousing,
  variant: VariantAnalysis,
  section: Section,
): readonly LengthDimension[] {
  const { housing } = filled;
  const body = section.parts.find(({ address }) => address === housing.name);
  if (!body) return [];
  const placed = filled.seats.flatMap((seat) => {
    const bearing = section.parts.find(({ address }) => address === seat.contact?.address)?.bearing;
    if (!bearing) return [];
    return [
      { seat, stop: nearestCut(body, seat.from === 'left' ? bearing.outer.right : bearing.outer.left) },
    ];
  });
  const radii = (from: number, to: number) => [radiusAt(body, from), radiusAt(body, to)] as const;
  const lengths: LengthDimension[] = placed.flatMap(({ seat, stop }): readonly LengthDimension[] => {
    const depth = seat.seat.values.depth;
    if (!depth) return [];
    const mouth = seat.from === 'left' ? body.left : body.right;
    const [from, to] = mouth < stop ? [mouth, stop] : [stop, mouth];
    const id = `depth:${seat.address}`;
    return [
      {
        id,
        address: seat.address,
        from,
        to,
        radii: radii(from, to),
        text: dimensionText(depth.value),
      },
    ];
  });
  const stops = placed.map(({ stop }) => stop).sort((a, b) => a - b);
  const [first, last] = [stops[0], stops.at(-1)];
  const between = housing.values['between-shoulders'];
  if (between && first !== undefined && last !== undefined && first < last) {
    lengths.push({
      id: `between:${housing.name}`,
      address: housing.name,
      from: first,
      to: last,
      radii: radii(first, last),
      text: [dimensionText(between.value), deltaText(housing.name, variant)]
        .filter((text) => text !== null)
        .join(';  '),
    });
  }
  return lengths.sort((a, b) => a.from - b.from);
}

/** The edge of the housing's profile at or next to a place, so that a dimension ends where a line is drawn. */
function nearestCut(body: SectionPart, at: number): number {
  const cuts = [body.left, ...body.steps.map(({ right }) => right)];
  return cuts.reduce((best, cut) => (Math.abs(cut - at) < Math.abs(best - at) ? cut : best), body.left);
}

/** δ of the pair that stands between the shoulders: `δ = P − S = +10 µm`. */
function deltaText(housing: string, variant: VariantAnalysis): string | null {
  const pair = variant.pairs.find(({ loop }) => loop.housing === housing && loop.located === 'shoulders');
  const drawn = pair?.drawn;
  if (!pair || !drawn) return null;
  const say = (value: number): string =>
    `${0 < Math.round(value * 1000) ? '+' : ''}${micrometres(value).replace('-', '−')}`;
  const mean = Math.abs(drawn.mean - drawn.nominal) < 0.0005 ? '' : `, ${say(drawn.mean)} on average`;
  const built = pair.built ? ` [${say(pair.built.mean)}]` : '';
  return `δ = P − S = ${say(drawn.nominal)}${mean}${built}`;
}

function runningGap(variant: VariantAnalysis, section: Section): readonly LengthDimension[] {
  const gap = variant.gaps.find(({ loop }) => loop.role === 'running');
  const shell = section.parts.find(({ address }) => address === 'shell');
  const freehub = section.parts.find(({ address }) => address === 'freehub');
  if (!gap?.drawn || !shell || !freehub) return [];
  const [from, to] = [Math.min(shell.right, freehub.left), Math.max(shell.right, freehub.left)];
  const text = `gap ${lengthText(gap.drawn.mean).replace('-', '−')}`;
  const radii =
    shell.right <= freehub.left
      ? ([radiusAt(shell, from), radiusAt(freehub, to)] as const)
      : ([radiusAt(freehub, from), radiusAt(shell, to)] as const);
  return [{ id: 'gap:freehub', address: 'freehub', from, to, radii, text }];
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
