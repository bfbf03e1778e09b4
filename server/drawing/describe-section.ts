import type { VariantAnalysis } from '../analysis/analyze.ts';
import { isWorked } from '../analysis/mechanics/pair-mechanics.ts';
import { playInBrief } from '../analysis/mechanics/play-in-brief.ts';
import type { Section } from '../assembly/section.ts';
import { micrometres, millimetres, plain } from '../engine/base/figures.ts';
import { dimensionText } from './dimension-text.ts';
import type { FaultMark } from './fault-mark.ts';
import { overshoot, wantedText } from './length-dimensions.ts';
import { sayScale } from './sheet.ts';

/** The drawing in words: parts from left to right, housings, loops with their results, faults, what was assumed. */
export function describeSection(about: {
  readonly variant: VariantAnalysis;
  readonly section: Section;
  readonly title: string;
  /** Null on a screen, where it has none. */
  readonly scale: number | null;
  readonly faults: readonly FaultMark[];
  readonly missing: readonly string[];
}): string {
  const { variant, section, title, scale, faults, missing } = about;
  const sentences = [
    `${title}: section along the axle${scale === null ? '' : ` at ${sayScale(scale)}`}, left is the non-drive side.`,
    `From left to right: ${variant.assembly.line.map((part) => partWords(part)).join('; ')}.`,
    ...housingWords(variant),
    ...widthWords(variant),
    ...pairWords(variant),
    ...variant.gaps.flatMap(({ loop, drawn }) =>
      drawn ? [`Gap between ${loop.between.join(' and ')}: ${millimetres(drawn.mean)} on average.`] : [],
    ),
    ...faults.map(({ message }, index) => `Fault ${index + 1}: ${message}.`),
    ...(faults.length === 0 ? [] : ['Faults are marked in the drawing by these numbers.']),
    ...missing.map((text) => `Assumed: ${text}.`),
  ];
  return section.parts.length === 0 ? `${title}: nothing to draw yet.` : sentences.join(' ');
}

function partWords({ part, bearing, address }: VariantAnalysis['assembly']['line'][number]): string {
  const { length, face, outside, inside, count, code } = part.values;
  const decoded = bearing?.bearing;
  if (part.kind === 'bearing') {
    const size = decoded
      ? `${plain(decoded.bore)} × ${plain(decoded.outside)} × ${plain(decoded.width)} mm`
      : 'size not known';
    return [address, ...(code ? [code.value] : []), size].join(' ');
  }
  const times = count && 1 < count.value ? `${plain(count.value)} × ` : '';
  const words = [
    length ? `${times}${dimensionText(length.value)} mm long` : 'length not written',
    ...(face ? [`face ⌀${dimensionText(face.value)}`] : []),
    ...(outside ? [`outside ⌀${dimensionText(outside.value)}`] : []),
    ...(inside ? [`inside ⌀${dimensionText(inside.value)}`] : []),
  ];
  return `${address} ${words.join(', ')}`;
}

function housingWords({ assembly }: VariantAnalysis): readonly string[] {
  return [assembly.shell, assembly.freehub].flatMap((filled) => {
    if (!filled) return [];
    const seats = filled.seats.map(({ address, seat, bearings }) => {
      const { bore, depth } = seat.values;
      const words = [
        ...(bore ? [`⌀${dimensionText(bore.value)}`] : []),
        ...(depth ? [`${dimensionText(depth.value)} deep`] : []),
        ...(bearings.length > 0
          ? [`holds ${bearings.map((part) => part.address).join(' and ')}`]
          : ['empty']),
        ...(seat.ring ? ['with a retaining ring'] : []),
      ];
      return `${address} ${words.join(', ')}`;
    });
    const between = filled.housing.values['between-shoulders'];
    const distance = between ? ` Between its shoulders: ${dimensionText(between.value)} mm.` : '';
    return [`Seats of the ${filled.housing.name}: ${seats.join('; ')}.${distance}`];
  });
}

function widthWords({ width }: VariantAnalysis): readonly string[] {
  const result = width.built ?? width.drawn;
  if (!result) return ['Clamped width: not all lengths are written.'];
  const { wanted } = width.loop;
  const off = wanted ? overshoot(result.mean, wanted) : null;
  const against = wanted
    ? `, wanted ${wantedText(wanted)} mm: ${off ? `${off}` : 'within its limits on average'}`
    : '';
  return [
    `Clamped width ${millimetres(result.nominal)} nominal, ${millimetres(result.mean)} on average${against}.`,
  ];
}

function pairWords({ pairs, mechanics }: VariantAnalysis): readonly string[] {
  const felt = mechanics('built');
  const together = felt.lines.map(
    ({ bearings, housing, playUnclamped }) =>
      `All ${bearings.length} bearings of the ${housing} together: ${playUnclamped < 0 ? `no play, ${micrometres(-playUnclamped)} missing` : `play ${micrometres(playUnclamped)}`} before clamping.`,
  );
  const each = pairs.flatMap(({ loop, drawn }, index) => {
    const [left, right] = loop.bearings;
    if (loop.located === 'spacer') return [`${left} and ${right} are held apart by the spacer alone.`];
    if (!drawn) return [];
    const what =
      loop.located === 'side-by-side'
        ? 'between the inner rings where the outer ones touch'
        : 'inner distance less outer distance';
    const pair = felt.pairs[index];
    const play = pair && isWorked(pair) ? `; ${playInBrief(pair, felt.clamp)}` : '';
    return [
      `${left} and ${right}: ${what}, δ ${micrometres(drawn.nominal)} nominal, ${micrometres(drawn.mean)} on average${play}.`,
    ];
  });
  return [...each, ...together];
}
