import type { VariantAnalysis } from '../analysis/analyze.ts';
import { isWorked } from '../analysis/mechanics/pair-mechanics.ts';
import { playInBrief } from '../analysis/mechanics/play-in-brief.ts';
import type { FilledHousing } from '../assembly/housings.ts';
import type { Section } from '../assembly/section.ts';
import type { SectionPart } from '../assembly/section-shape.ts';
import { micrometres } from '../engine/base/figures.ts';
import { dimensionText, lengthText } from './dimension-text.ts';
import { type LengthDimension, radiusAt } from './length-dimension.ts';

/** Depths of the seats and the distance between the shoulders of one housing. */
export function housingLengths(
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
      text: [dimensionText(between.value), deltaText(housing.name, variant), playText(housing.name, variant)]
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

/** Play of the pair that stands between the shoulders, as built where something was measured. */
function playText(housing: string, variant: VariantAnalysis): string | null {
  const { pairs, clamp } = variant.mechanics('built');
  const pair = pairs
    .filter(isWorked)
    .find(({ loop }) => loop.housing === housing && loop.located === 'shoulders');
  return pair ? playInBrief(pair, clamp) : null;
}

export function runningGap(variant: VariantAnalysis, section: Section): readonly LengthDimension[] {
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
