import type { Detail } from './detail.ts';
import { marked } from './draw-lengths.ts';
import { hatch } from './hatch.ts';
import { type Group, group, line, type Point, type Shape } from './scene.ts';
import type { Sheet } from './sheet.ts';
import { lineHeight, textWidth, writing } from './text-width.ts';

/** Height of the faces shown, and width of the picture of a detail, mm. */
const [height, width] = [15, 46];
/** Height of a detail with its words and its dimension, mm. */
export const detailHeight = 1.5 + lineHeight * 2 + height + 8;
/** How wide the gap should come out, mm. */
const wantedGap = 6;

const magnifications: readonly number[] = [1000, 500, 200, 100, 50, 20, 10, 5, 2, 1, 0.5, 0.2, 0.1];

/** Rings each faulty spot with its letter. */
export function ringDetails(details: readonly Detail[], sheet: Sheet, middle: number): readonly Group[] {
  return details.map(({ at, radius, letter, state }, index) => {
    // One below the axis, the next above it: two spots near each other keep their letters apart.
    const half = index % 2 === 0 ? 1 : -1;
    const centre = sheet.point(at, radius, half);
    const out = at < middle ? -1 : 1;
    return group(
      'detail',
      [
        { kind: 'circle', role: 'leader', centre, radius: 3 },
        writing(
          letter,
          { x: centre.x + out * 3.6, y: centre.y + 1.2 },
          { anchor: out < 0 ? 'end' : 'start', strong: true },
        ),
      ],
      { state },
    );
  });
}

/** The faulty spots enlarged along the axle, side by side from `left`; says where they end. */
export function drawDetails(
  details: readonly Detail[],
  left: number,
  top: number,
  room: number,
): { readonly groups: readonly Group[]; readonly bottom: number } {
  if (details.length === 0) return { groups: [], bottom: top };

  const pitch = room / details.length;
  const groups = details.map((detail, index) =>
    group('detail', picture(detail, { x: left + index * pitch, y: top + 1.5 }, pitch - 4), {
      state: detail.state,
    }),
  );
  return { groups, bottom: top + detailHeight };
}

function picture(detail: Detail, { x, y }: Point, room: number): readonly Shape[] {
  const { gap, letter, limit } = detail;
  const magnified = magnifications.find((one) => Math.abs(gap) * one <= wantedGap * 1.4) ?? 0.1;
  const span = gap * magnified;
  const wide = Math.min(width, room);
  const top = y + lineHeight * 2 + 1;
  const bottom = top + height;
  const [from, to] = [x + wide / 2 - span / 2, x + wide / 2 + span / 2];
  const names = clip(`${detail.left} | ${detail.right}`, room);
  const block = (a: number, b: number): readonly Point[] => [
    { x: a, y: top },
    { x: b, y: top },
    { x: b, y: bottom },
    { x: a, y: bottom },
  ];
  const bodies: Shape[] = [
    hatch(block(x, from), { rising: true, spacing: 2.2 }),
    line('outline', [
      { x: from, y: top },
      { x: from, y: bottom },
    ]),
    ...(limit ? [] : [hatch(block(to, x + wide), { rising: false, spacing: 2.2 })]),
    line(limit ? 'centre' : 'outline', [
      { x: to, y: top - 1 },
      { x: to, y: bottom + 1 },
    ]),
    ...[top, bottom].map((edge) =>
      line(
        'thin',
        limit
          ? [
              { x, y: edge },
              { x: from, y: edge },
            ]
          : [
              { x, y: edge },
              { x: x + wide, y: edge },
            ],
      ),
    ),
  ];
  const [low, high] = [Math.min(from, to), Math.max(from, to)];
  const under = bottom + 4;
  const size: Shape[] = [
    ...[low, high].map((edge) =>
      line('dimension', [
        { x: edge, y: bottom + 1 },
        { x: edge, y: under + 1.5 },
      ]),
    ),
    line('dimension', [
      { x: low - 5, y: under },
      { x: high + 5, y: under },
    ]),
    { kind: 'arrow', tip: { x: low, y: under }, towards: 'right' },
    { kind: 'arrow', tip: { x: high, y: under }, towards: 'left' },
    writing(detail.text, { x: high + 6, y: under + 1.2 }, { anchor: 'start' }),
  ];
  const scale = 1 <= magnified ? `${magnified}:1` : `1:${1 / magnified}`;
  const caption = `${letter} (${scale} along the axle)`;
  return [
    ...marked(
      caption,
      { x: x + (textWidth(caption, 3.5, true) + detail.marks.length * 5.4) / 2, y: y + 3 },
      detail.marks,
      true,
    ),
    writing(names, { x, y: y + 3 + lineHeight }, { anchor: 'start' }),
    ...bodies,
    ...size,
  ];
}

function clip(text: string, room: number): string {
  let short = text;
  while (8 < short.length && room < textWidth(short)) short = `${short.slice(0, -2)}…`;
  return short;
}
