import { type Group, group, line, type Shape } from './scene.ts';
import { sayScale } from './sheet.ts';
import { lineHeight, textWidth, writing } from './text-width.ts';

const howToRead = [
  'lengths in mm',
  'left is the non-drive side',
  'dashed: assumed',
  '[ ]: as measured',
] as const;

/**
 * Under a drawing: a bar to measure it by, its scale where it is printed, and how to read it, in as many lines
 * as `right` leaves room for.
 */
export function foot(
  scale: number,
  { left, right }: { readonly left: number; readonly right: number },
  y: number,
  printed: boolean,
): { readonly groups: readonly Group[]; readonly bottom: number } {
  const length = scale <= 0.5 ? 50 : 10;
  const end = left + length * scale;
  const ticks = [0, 0.5, 1].map((share) => left + length * scale * share);
  const told = [
    `${length} mm`,
    ...(printed ? [`scale ${sayScale(scale)}, along and across`] : []),
    ...howToRead,
  ];
  const start = end + 2.5;
  const lines = wrapped(told, right - start);
  const shapes: Shape[] = [
    line('outline', [
      { x: left, y: y + 2 },
      { x: end, y: y + 2 },
    ]),
    ...ticks.map((x) =>
      line('dimension', [
        { x, y: y + 0.5 },
        { x, y: y + 3.5 },
      ]),
    ),
    ...lines.map((text, at) =>
      writing(text, { x: start, y: y + 3.2 + at * lineHeight }, { anchor: 'start' }),
    ),
  ];
  return { groups: [group('note', shapes)], bottom: y + 5 + (lines.length - 1) * lineHeight };
}

/** Puts as many of the phrases on a line as `room` mm hold, one at least. */
function wrapped(phrases: readonly string[], room: number): readonly string[] {
  const lines: string[] = [];
  for (const phrase of phrases) {
    const last = lines.at(-1);
    const longer = `${last} · ${phrase}`;
    if (last !== undefined && textWidth(longer) <= room) lines.splice(-1, 1, longer);
    else lines.push(phrase);
  }
  return lines;
}
