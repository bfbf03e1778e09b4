import { type Group, group, line, type Shape } from './scene.ts';
import { sayScale } from './sheet.ts';
import { writing } from './text-width.ts';

/** The line under a drawing: its scale, a bar to check it by, and how to read it. */
export function foot(
  scale: number,
  left: number,
  y: number,
): { readonly groups: readonly Group[]; readonly bottom: number } {
  const length = scale <= 0.5 ? 50 : 10;
  const end = left + length * scale;
  const ticks = [0, 0.5, 1].map((share) => left + length * scale * share);
  const text = `${length} mm · scale ${sayScale(scale)}, along and across · lengths in mm · left is the non-drive side · dashed: assumed · [ ]: as measured`;
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
    writing(text, { x: end + 2.5, y: y + 3.2 }, { anchor: 'start' }),
  ];
  return { groups: [group('note', shapes)], bottom: y + 5 };
}
