import { type LocatedMark, marksOn, stateOf } from './fault-mark.ts';
import type { LengthDimension } from './length-dimension.ts';
import { placeInRows } from './rows.ts';
import { type Group, group, line, type Point, type Shape } from './scene.ts';
import type { Sheet } from './sheet.ts';
import { type Box, boxOf, lineHeight, textSize, textWidth, writing } from './text-width.ts';

/** Width of the number of a fault before a text, mm. */
export const badgeWidth = 5.4;
/** A line shorter than this has no room for two arrowheads: its ends are dots (ISO 129-1), mm. */
const arrowRoom = 7;

interface Laid {
  readonly dimension: LengthDimension;
  readonly marks: readonly LocatedMark[];
  readonly from: number;
  readonly to: number;
  readonly text: string;
  readonly inside: boolean;
}

/** Draws the lengths level by level from `top` downwards; says where the last one ends. */
export function drawLengths(
  levels: readonly (readonly LengthDimension[])[],
  sheet: Sheet,
  top: number,
  bounds: readonly [number, number],
  marks: readonly LocatedMark[],
): { readonly groups: readonly Group[]; readonly bottom: number } {
  const groups: Group[] = [];
  let y = top;
  for (const level of levels) {
    if (level.length === 0) continue;
    const laid = level.map((dimension) => lay(dimension, sheet, bounds[1] - bounds[0], marks));
    y += lineHeight + 1.5;
    const outside = laid.filter(({ inside }) => !inside);
    const rows = placeInRows(
      outside.map(({ from, to, text, marks: own }) => ({
        want: (from + to) / 2,
        width: fullWidth(text, own),
      })),
      bounds,
    );
    const farthest = rows.length === 0 ? -1 : Math.max(...rows.map(({ row }) => row));
    for (const item of laid) {
      const at = outside.indexOf(item);
      groups.push(draw(item, sheet, y, at === -1 ? null : (rows[at]?.centres ?? null)));
    }
    y += (farthest + 1) * lineHeight + (0 <= farthest ? 3.5 : 1);
  }
  return { groups: interrupted(groups), bottom: y };
}

function lay(dimension: LengthDimension, sheet: Sheet, room: number, marks: readonly LocatedMark[]): Laid {
  const [from, to] = [sheet.x(dimension.from), sheet.x(dimension.to)];
  const own = marksOn(marks, dimension.id);
  const text = shortened(dimension.text, room, own);
  return { dimension, marks: own, from, to, text, inside: fullWidth(text, own) + 2 <= to - from };
}

/** Leaves out what is said last where there is no room for it: the table beside the drawing says it too. */
function shortened(text: string, room: number, marks: readonly LocatedMark[]): string {
  const clauses = text.split(';  ');
  while (1 < clauses.length && room < fullWidth(clauses.join(';  '), marks)) clauses.pop();
  return clauses.join(';  ');
}

/** Extension lines give way to the texts of nearer dimensions: their continuation is plain (ISO 129-1). */
function interrupted(groups: readonly Group[]): readonly Group[] {
  const boxes = groups.map(({ shapes }) => shapes.flatMap((shape) => boxOf(shape) ?? []));
  return groups.map((item, at) => {
    const others = boxes.filter((_, index) => index !== at).flat();
    const shapes = item.shapes.flatMap((shape) => {
      if (shape.kind !== 'line' || shape.role !== 'dimension') return [shape];
      const [from, to] = shape.points;
      return from && to && from.x === to.x ? cutAround(from, to, others) : [shape];
    });
    return { ...item, shapes };
  });
}

function cutAround({ x, y }: Point, to: Point, boxes: readonly Box[]): readonly Shape[] {
  const inWay = boxes
    .filter(({ left, right, top, bottom }) => left - 0.6 < x && x < right + 0.6 && y < bottom && top < to.y)
    .sort((a, b) => a.top - b.top);
  const pieces: Shape[] = [];
  let start = y;
  for (const { top, bottom } of inWay) {
    if (start < top)
      pieces.push(
        line('dimension', [
          { x, y: start },
          { x, y: top },
        ]),
      );
    start = Math.max(start, bottom);
  }
  if (start < to.y) pieces.push(line('dimension', [{ x, y: start }, to]));
  return pieces;
}

/** Width of a text with the numbers of its faults, mm. */
export const fullWidth = (text: string, marks: readonly LocatedMark[], strong = false): number =>
  textWidth(text, textSize, strong) + marks.length * badgeWidth;

function draw(
  { dimension, marks, from, to, text, inside }: Laid,
  sheet: Sheet,
  y: number,
  centres: readonly number[] | null,
): Group {
  const start = (radius: number): number => sheet.point(0, radius, 1).y + 1;
  const extensions = [
    [
      { x: from, y: start(dimension.radii[0]) },
      { x: from, y: y + 1.5 },
    ],
    [
      { x: to, y: start(dimension.radii[1]) },
      { x: to, y: y + 1.5 },
    ],
  ] as const satisfies readonly (readonly [Point, Point])[];
  const ends: readonly Shape[] =
    arrowRoom <= to - from
      ? [
          { kind: 'arrow', tip: { x: from, y }, towards: 'left' },
          { kind: 'arrow', tip: { x: to, y }, towards: 'right' },
        ]
      : [
          { kind: 'dot', centre: { x: from, y }, radius: 0.45 },
          { kind: 'dot', centre: { x: to, y }, radius: 0.45 },
        ];
  const shapes: Shape[] = [
    ...extensions.map((points) => line('dimension', points)),
    line('dimension', [
      { x: from, y },
      { x: to, y },
    ]),
    ...ends,
  ];
  const middle = (from + to) / 2;
  if (inside || !centres) {
    shapes.push(...marked(text, { x: middle, y: y - 1.1 }, marks));
  } else {
    const { points, at } = leader({ x: middle, y }, centres, y);
    shapes.push(line('leader', points), ...marked(text, at, marks));
  }
  return group('dimension', shapes, {
    address: dimension.address,
    state: stateOf(marks),
    dimension: { from: { x: from, y }, to: { x: to, y }, extensions },
  });
}

/** The way from a dimension line down through the slots of nearer rows to the text. */
function leader(
  from: Point,
  centres: readonly number[],
  y: number,
): { readonly points: readonly Point[]; readonly at: Point } {
  const rowTop = (row: number): number => y + 3.5 + row * lineHeight;
  const points: Point[] = [from];
  for (const [row, x] of centres.entries()) {
    points.push({ x, y: rowTop(row) });
    if (row < centres.length - 1) points.push({ x, y: rowTop(row + 1) - 0.8 });
  }
  const last = centres.length - 1;
  return { points, at: { x: centres[last] ?? from.x, y: rowTop(last) + 3.1 } };
}

/** A text with the numbers of its faults before it, the whole centred at a place. */
export function marked(
  text: string,
  { x, y }: Point,
  marks: readonly LocatedMark[],
  strong = false,
): readonly Shape[] {
  const width = fullWidth(text, marks, strong);
  const left = x - width / 2;
  return [
    ...marks.map(
      ({ number }, index): Shape => ({
        kind: 'badge',
        centre: { x: left + index * badgeWidth + 2.3, y: y - 1.25 },
        number,
      }),
    ),
    writing(text, { x: left + marks.length * badgeWidth, y }, { anchor: 'start', strong }),
  ];
}
